/** A page of the desktop, as a bundle contributes it, and what the window offers to it. */
@Export
@Version("1.0.0")
package org.fettlebench.desktop;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
