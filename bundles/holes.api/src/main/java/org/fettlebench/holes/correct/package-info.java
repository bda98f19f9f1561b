/**
 * Pilot and correct: which drill first, where did the hole land, and what to do about it?
 *
 * <p>{@link org.fettlebench.holes.correct.Pilots} chooses the pilot before drilling, {@link
 * org.fettlebench.holes.correct.HoleMeasuring} turns readings at the real hole into its centre, and
 * {@link org.fettlebench.holes.correct.Corrections} says what to do then. All three are found as
 * services.
 *
 * <p>Which side and how much. A pilot of diameter d1 with its centre out by e from the target T
 * reaches e + d1/2 from T on the side of the error, and d1/2 - e on the opposite side. Metal can
 * only be taken off, so the far reach stays and the near one must become equal to it: 2e comes off
 * the side <em>opposite</em> the error. The round hole about T with the radius e + d1/2 touches the
 * pilot from outside at the end of the error; the crescent between both is 2e deep opposite the
 * error, e deep a quarter of a turn about T to each side (e + d1/2 less the square root of (d1/2)²
 * - e², which is e to first order), and nothing at the error. Filed so, the hole is centred on T
 * with the diameter d1 + 2e, and a drill of the finished diameter d2 cuts (d2 - d1)/2 - e on every
 * side. That must be at least the clean-up margin m, so e is curable when e is at most (d2 - d1)/2
 * - m. A drill follows a hole in which it cuts evenly all round (common practice, no source).
 *
 * <p>Figures are {@code double} millimetres. Errors and allowances are radii of position error,
 * never diameters of a zone. What was measured carries its uncertainty at 95 per cent. x runs to
 * the right and y away from the reader on the face that is looked at; a {@link
 * org.fettlebench.holes.correct.Direction} is as seen from there. Nothing is rounded but in
 * sentences, which give millimetres with inches behind, as {@code LengthFormat.turned} understands.
 *
 * <p>Inputs: lengths from 0 to 100 000 mm; what is outside is refused with a {@link
 * org.fettlebench.holes.correct.HoleException} that says the remedy. Everything is immutable and
 * may be used from any thread. No null is taken or returned.
 */
@Export
@Version("1.0.0")
package org.fettlebench.holes.correct;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
