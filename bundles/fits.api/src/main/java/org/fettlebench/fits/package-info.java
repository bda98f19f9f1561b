/** Seats, walls, heads and holes: will the head sit where the hole must go? */
@Export
@Version("1.0.0")
package org.fettlebench.fits;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
