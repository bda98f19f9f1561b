/**
 * Drawings in millimetres of the real thing, with the lines of ISO 128, independent of where they
 * are shown.
 */
@Export
@Version("1.0.0")
package org.fettlebench.drawing;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
