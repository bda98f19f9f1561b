/** Heads, nuts and washers, and the room they take. */
@Export
@Version("1.0.0")
package org.fettlebench.fasteners;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
