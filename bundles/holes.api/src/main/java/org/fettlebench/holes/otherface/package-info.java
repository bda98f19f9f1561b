/**
 * From the other face: a hole that is drilled from below and must be right on top.
 *
 * <p>{@link org.fettlebench.holes.otherface.OtherFaces} takes both faces as seen from above before
 * the part is turned, and gives the mark as seen with the far face towards the person, who has
 * turned the part as {@link org.fettlebench.holes.otherface.Turn} says. Seen so, the face is the
 * mirror image of what was seen through the part from above: a corner list that ran anticlockwise
 * runs clockwise. Both ways of turning show the same face, half a turn apart.
 *
 * <p>The drill goes in square to the far face, which counts as parallel to the upper one; so the
 * mark stands plumb under the target, whatever the sides do. Its distances are taken square to
 * edges of the far face itself, since the edges of the upper one lie elsewhere when sides taper. An
 * edge serves when the foot of that distance lies on it.
 *
 * <p>What is to be expected above is the radius of position error of the marking plus the drill's
 * wander over the depth, added plainly: the drill may lead off the same way. All are radii, never
 * diameters of a zone. Figures are {@code double} millimetres; nothing is rounded. Everything is
 * immutable and may be used from any thread. No null is taken or returned.
 */
@Export
@Version("1.0.0")
package org.fettlebench.holes.otherface;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
