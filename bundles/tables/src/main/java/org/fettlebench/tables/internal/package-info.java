/** Gathers the tables of all started bundles; the only way in is the service Tables. */
package org.fettlebench.tables.internal;
