/** The engine behind the store: data source, dialect, backup. */
@Export
@Version("1.0.0")
package org.fettlebench.store;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
