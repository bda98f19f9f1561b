/** Published tables with their sources: the table file format, its reader and the registry. */
@Export
@Version("1.0.0")
package org.fettlebench.tables;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
