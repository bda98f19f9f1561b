/**
 * Screw threads: which are there, how they are written, how large they are.
 *
 * <p>All sizes are {@link org.fettlebench.measure.Length}s, exact to 1 nm. Sizes that follow from a
 * form are calculated from the exact pitch and rounded once, to 1 nm; sizes that a standard prints
 * rounded (BA, G) are those printed. Nothing here rounds further: that is for whoever shows them.
 * Records check themselves and throw {@link org.fettlebench.measure.MeasureException} naming the
 * value and what is allowed. Lists never change. Absence is an empty {@code Optional} or list.
 *
 * <p>{@code ThreadClasses} gives the limits of all diameters of screw and nut in the classes of ISO
 * 965-1, ASME B1.1, BS 84, BS 93 and ISO 228-1, rounded as each standard rounds: ISO to 0.001 mm,
 * ASME and BS 84 to 0.0001 in (nuts' minor diameters from #6 up to 0.001 in), BS 93 by its formulas
 * unrounded. {@code ThreadLimits} gives the nut's minor diameter in the usual class, unrounded.
 *
 * <p>{@code Threads}, {@code ThreadClasses} and {@code ThreadLimits} are offered by the suite. A
 * club adds threads with a table file, without code: see {@code docs/extending.md}.
 *
 * <h2>Tables of kind {@code thread-series}</h2>
 *
 * <p>One file, one series. Besides what every table file has, the header holds:
 *
 * <ul>
 *   <li>{@code form}: {@code iso}, {@code unified}, {@code whitworth} or {@code
 *       british-association};
 *   <li>{@code designation}: how a thread is written, from <code>{size}</code>, <code>{tpi}</code>
 *       and <code>{pitch}</code> (mm), such as <code>{size} BA</code>; must hold <code>{size}
 *       </code>;
 *   <li>{@code aliases}, may be left out: other names of the series, parted by commas;
 *   <li>{@code limits}, may be left out: the rule for the limits, one of {@code ISO 965-1 6H},
 *       {@code ASME B1.1 2B}, {@code BS 84}, {@code BS 93}, {@code ISO 228-1} or the id of a table
 *       of kind {@code thread-limits}, which has the nut's minor diameter alone;
 *   <li>{@code order}, may be left out: whole number by which the suite's own series are sorted.
 * </ul>
 *
 * <p>Columns:
 *
 * <ul>
 *   <li>{@code size}: as the series calls it, unique in the file;
 *   <li>{@code major_mm} or {@code major_in}: major diameter;
 *   <li>{@code pitch_mm} or {@code tpi} (threads per inch, such as 26 or 4.5);
 *   <li>{@code effective_mm} or {@code effective_in}, {@code minor_mm} or {@code minor_in}: only
 *       where the standard prints them rounded; else they follow from the form. A given minor
 *       diameter stands for screw and nut.
 * </ul>
 *
 * <pre>
 * # kind: thread-series
 * # id: FINE32
 * # title: Our 32 threads per inch
 * # source: club drawing 14
 * # standing: measured by the club
 * # form: whitworth
 * # designation: {size} x {tpi} FINE32
 * # limits: BS 84
 * size,major_in,tpi
 * 1/4,1/4,32
 * 5/16,5/16,32
 * </pre>
 *
 * <p>A series with a fault is left out as a whole and reported with its module; the others stay.
 *
 * <h2>Tables of kind {@code thread-limits}</h2>
 *
 * <p>Columns {@code class}, {@code pitch_mm} and {@code tolerance_mm}: by how much the nut's minor
 * diameter may be above its basic size. A pitch that is not listed has no limits. The table {@code
 * ISO 228-1} also has {@code effective_mm}, {@code effective_b_mm}, {@code major_mm} and {@code
 * major_over_mm}, from which diameter a row goes.
 *
 * <h2>Tables of kinds {@code thread-tolerances}, {@code thread-deviations} and {@code
 * thread-printed-tolerances}</h2>
 *
 * <p>The figures that ISO 965-1 prints and that depart from its formulas, and those of ASME B1.1
 * that do; one table of each is used, with the standard as its id. Their headers tell the columns.
 */
@Export
@Version("1.1.0")
package org.fettlebench.threads;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
