/**
 * How a drilled hole comes out, and what is drilled where a reamer follows.
 *
 * <p>Lengths are exact to 1 nm and are not rounded for show. A figure that no table has is absent,
 * never made up; every figure comes with its {@link org.fettlebench.tables.Source}. A size or depth
 * that cannot be is refused with a {@link org.fettlebench.measure.MeasureException}.
 *
 * <p>The suite offers {@code DrilledHoles}; a module uses it. How much larger than the drill a hole
 * comes out is told by tables of kind {@code drill-oversize}, which the package {@code
 * org.fettlebench.tooling} lays down; their columns {@code oversize_least} and {@code
 * oversize_most} in {@code _in} or {@code _mm} may be left out.
 *
 * <h2>Tables of kind {@code drill-tolerances}</h2>
 *
 * <p>Columns {@code from_mm} and {@code to_mm} or the same in {@code _in}: drills from a size to a
 * size; {@code above_mm} and {@code below_mm} or the same in {@code _in}: how far the hole may be
 * above and below the drill. A club's table goes before the suite's own.
 *
 * <h2>Tables of kind {@code reaming}</h2>
 *
 * <p>Columns {@code over_mm} and {@code to_mm}, which may be blank: the reamed size; {@code
 * materials}: ids of worked materials parted by blanks, blank for all that no row names; {@code
 * undersize_least_mm} and {@code undersize_most_mm}: metal left for the reamer, on the diameter;
 * {@code drill_oversize_mm}: how much larger than the drill the hole is counted to come out. A
 * club's table goes before the suite's own.
 */
@Export
@Version("1.0.0")
package org.fettlebench.tooling.drilled;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
