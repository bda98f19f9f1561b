/**
 * How much a thread bears, and which part of it gives way first.
 *
 * <p>Loads are newtons, strengths megapascals, areas square millimetres, torques newton metres;
 * nothing is rounded. Shear areas are those of FED-STD-H28 for the form's own flank angle, at the
 * weakest sizes that the class allows: the least screw in the largest nut. A thread shears at the
 * material's printed shear strength, else at half its tensile strength, as FED-STD-H28 has it.
 * Nothing is said of bending, fatigue, heat, nuts that spread or the caution that pressure parts
 * need; whoever shows the figures shows the notes with them.
 *
 * <p>The suite offers {@code Materials} and {@code ThreadStrength}.
 *
 * <h2>Tables of kind {@code materials}</h2>
 *
 * <p>Columns {@code id} (unique in the file) and {@code name}; {@code tensile_mpa} or {@code
 * tensile_ksi}; where printed {@code yield_mpa} or {@code yield_ksi}, {@code proof_mpa} or {@code
 * proof_ksi}, {@code shear_mpa} or {@code shear_ksi}. Of two materials with one id the first
 * table's stands.
 */
@Export
@Version("1.0.0")
package org.fettlebench.threads.strength;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
