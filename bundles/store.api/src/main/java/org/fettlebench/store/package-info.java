/**
 * The engine behind the store: where the club's records lie, and how to reach them.
 *
 * <p>One {@link org.fettlebench.store.StoreEngine} is registered as a service. It opens and closes
 * the database, gives connections, copies the whole store while it is in use, and has a {@link
 * org.fettlebench.store.Dialect} for the little in which engines differ. It knows neither tables
 * nor records: whoever owns a schema brings its own migrations and takes a backup before them.
 *
 * <p>What an engine promises: transactions are atomic and, once committed, on disk; DDL is part of
 * the transaction; foreign keys and checks are enforced; BIGINT holds 64 bits, so that lengths in
 * nanometres come back exactly. Any method may be called on any thread. No null goes in or comes
 * out.
 *
 * <p>What cannot be done ends in a {@link org.fettlebench.store.StoreException} whose message names
 * the place and the remedy, and leaves the store as it was.
 *
 * <p>Everything here is implemented by an engine bundle and used by bundles that own tables.
 */
@Export
@Version("1.0.0")
package org.fettlebench.store;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
