/** A command of the command line, as a bundle contributes it. */
@Export
@Version("1.0.0")
package org.fettlebench.command;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
