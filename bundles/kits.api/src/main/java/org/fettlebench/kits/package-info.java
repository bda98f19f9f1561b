/** Kits and their joints, the kit check and its report, and the rules that add findings. */
@Export
@Version("1.0.0")
package org.fettlebench.kits;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
