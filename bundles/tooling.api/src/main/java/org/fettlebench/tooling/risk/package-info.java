/**
 * How near does tapping come to breaking the tap?
 *
 * <p>The cutting torque is that of the triangle of metal that the tap takes out, times the
 * material's cutting resistance, at the triangle's own lever: {@code T = tan(θ/2) · kc · K · (D −
 * d)² · (D + 2d) / 24000} newton metres, with the thread's major diameter D and the hole d in
 * millimetres, its included angle θ, the resistance kc in newtons to the square millimetre and the
 * tap's coefficient K (Yamawa general catalogue 2021, page on tapping torque). In metal thinner
 * than the tap's lead only a part of the lead cuts at once. The breaking torque is {@code π / 16 ·
 * c³ · τ} of a core of diameter c. Torques are newton metres, lengths {@link
 * org.fettlebench.measure.Length}s, ratios plain numbers; nothing is rounded.
 *
 * <p>Each uncertain figure has a range, and the answer has the ratio by the middle, the kindest and
 * the hardest ends of all. No answer says that a tap will hold. Whoever shows it shows the
 * assumptions, the notes and the usual caution with it.
 *
 * <p>{@code TapRisks} is offered by the suite. Everything is immutable and may be used from any
 * thread; no null is taken or returned.
 *
 * <h2>Tables of kind {@code tap-resistance}</h2>
 *
 * <p>Columns {@code material} (id of a work material), {@code kc_least_mpa} and {@code
 * kc_most_mpa}; {@code group}: {@code steel}, {@code iron} or {@code brass}, by which the tap's
 * coefficient is found. A club's table goes before the suite's own.
 *
 * <h2>Tables of kind {@code tap-coefficients}</h2>
 *
 * <p>Columns {@code tap} (words of {@link org.fettlebench.tooling.risk.TapSort}), {@code group},
 * {@code coarse} and {@code fine}: the coefficient K.
 *
 * <h2>Tables of kind {@code tap-cores}</h2>
 *
 * <p>Columns {@code what}: {@code core of 3 flutes} and the like in parts of the major diameter,
 * {@code strength} in MPa, {@code usual flutes to 6 mm} and the like as a number; {@code least},
 * {@code most}.
 */
@Export
@Version("1.0.0")
package org.fettlebench.tooling.risk;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
