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
 * <p>Nothing is corrected for the pressure of the anvils; {@code MeasuringWires} says so in its
 * notes. Lengths in and out are {@link org.fettlebench.measure.Length}s; what is calculated is
 * rounded once, to 1 nm.
 */
@Export
@Version("1.0.0")
package org.fettlebench.threads.wires;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
