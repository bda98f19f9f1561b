/**
 * The club's stock and kit shelf over SQL, with the migrations of their schema. The only ways in
 * are the services {@link org.fettlebench.club.Stock} and {@link org.fettlebench.club.KitShelf}.
 */
package org.fettlebench.club.store.internal;
