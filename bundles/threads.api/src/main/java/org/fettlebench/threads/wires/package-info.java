/**
 * Measuring the effective diameter over wires, for threads of any flank angle.
 *
 * <p>With half angle a, pitch p, wire w, effective diameter E and measurement over wires M:
 *
 * <ul>
 *   <li>three wires, or two on one side of a plug against one on the other: M = E - (p/2) cot a + w
 *       (1 + cosec a);
 *   <li>best wire, which touches at the effective diameter: p / (2 cos a); the smallest that stands
 *       above the crests and the largest that still touches the flanks bound the choice;
 *   <li>helix correction, added to M: (w/2) tan^2 s cos a cot a, with s the angle of the thread's
 *       lead at the effective diameter (BS 919 and National Physical Laboratory practice, from
 *       memory).
 * </ul>
 *
 * <p>{@code over} and {@code effective} correct nothing for the pressure of the anvils and say so
 * in their notes; {@code give} tells that correction apart. A wire of radius w/2 lies across a
 * flank that is curved round the screw with the radius E / (2 sin a); of the force P each flank of
 * the one wire carries P / (2 sin a), each of the two opposite half of that; Hertz's contact of
 * crossed bars gives the approach, of which 1 / sin a comes to the measurement.
 *
 * <p>Lengths in and out are {@link org.fettlebench.measure.Length}s; what is calculated is rounded
 * once, to 1 nm.
 */
@Export
@Version("1.1.0")
package org.fettlebench.threads.wires;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
