/** Screw threads: form, series, basic geometry and designations. */
@Export
@Version("1.0.0")
package org.fettlebench.threads;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
