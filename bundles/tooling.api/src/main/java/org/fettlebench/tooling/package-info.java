/** Drills, and the choice of a hole from what is held. */
@Export
@Version("1.0.0")
package org.fettlebench.tooling;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
