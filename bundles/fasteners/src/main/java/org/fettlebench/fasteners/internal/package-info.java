/** Makes heads out of tables of kind {@code heads}; reached through the service {@code Heads}. */
package org.fettlebench.fasteners.internal;
