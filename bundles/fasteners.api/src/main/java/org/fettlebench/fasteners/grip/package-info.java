/**
 * How far does a screw reach through what it passes and into what it screws into?
 *
 * <p>{@link org.fettlebench.fasteners.grip.ScrewReach} takes the length under the head, the
 * thickness passed (washers among it) and a tapped hole or a nut, and says what is engaged, what
 * stands beyond and whether that will do. {@link org.fettlebench.fasteners.grip.LengthWanted} says
 * the same the other way round: the lengths that will do. Lengths are exact to 1 nm. Everything is
 * immutable; no null is taken or returned.
 *
 * <p>One diameter of thread engaged as the least that is usual, and one pitch as the least that
 * holds at all: common practice, no source; what strips first is told by thread strength.
 */
@Export
@Version("1.0.0")
package org.fettlebench.fasteners.grip;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
