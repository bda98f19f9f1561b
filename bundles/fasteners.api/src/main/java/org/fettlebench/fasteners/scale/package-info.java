/**
 * Does a fastener look right on a model at 1:n?
 *
 * <p>{@link org.fettlebench.fasteners.scale.ScaleLook} holds a model's hexagon against the hexagon
 * of the full-size fastener that it stands for. Lengths are exact to 1 nm; a per cent above 0 is
 * over scale. Everything is immutable; no null is taken or returned.
 */
@Export
@Version("1.0.0")
package org.fettlebench.fasteners.scale;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
