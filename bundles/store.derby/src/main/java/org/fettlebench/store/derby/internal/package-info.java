/**
 * The store engine over embedded Apache Derby. The only way in is the service {@link
 * org.fettlebench.store.StoreEngine}.
 */
package org.fettlebench.store.derby.internal;
