/** What is installed, what each module adds, and what went wrong with it. */
@Export
@Version("1.0.0")
package org.fettlebench.modules;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
