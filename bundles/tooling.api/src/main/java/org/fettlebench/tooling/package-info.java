/**
 * Drills, and the choice of a hole from what is held.
 *
 * <p>Diameters and depths are {@link org.fettlebench.measure.Length}s, exact to 1 nm; per cents of
 * thread are plain numbers by the convention of the thread's form. Nothing is rounded for show.
 * Lists never change; drills come smallest first, tapping drills best first. Absence is an empty
 * {@code Optional} or list; a figure outside its range is refused with a {@link
 * org.fettlebench.measure.MeasureException}. Every habit and every listed figure comes with its
 * {@link org.fettlebench.tables.Source}.
 *
 * <p>{@code Drills} and {@code HoleChooser} are offered by the suite. A club adds to them with
 * table files, without code; a faulty table is left out as a whole and reported with its module.
 *
 * <h2>Tables of kind {@code drills}</h2>
 *
 * <p>Columns {@code name} and {@code diameter_mm} or {@code diameter_in}; header {@code order}, may
 * be left out: whole number by which the names of one size are sorted. A name is found without
 * regard to capitals and spaces; it must not be a bare number.
 *
 * <h2>Tables of kind {@code clearance-holes}</h2>
 *
 * <p>Header {@code series}: ids of the thread series it is for, parted by commas. Columns {@code
 * major_mm} or {@code major_in}: the major diameter that tells the size (within 0.005 mm); {@code
 * close_mm}, {@code medium_mm}, {@code free_mm} or the same in {@code _in}: the holes, any may be
 * blank. A club's table goes before the suite's own.
 *
 * <h2>Tables of kind {@code thread-percent}</h2>
 *
 * <p>Columns {@code material} ({@code general} for all that are not named, {@code none told} where
 * nobody says what is cut; a table without the latter takes {@code general} for both), {@code
 * depth} ({@code deep}, {@code usual} or {@code thin}), {@code percent_from} and {@code
 * percent_to}. A club's table goes before the suite's own.
 *
 * <h2>Tables of kind {@code tapping-drills}</h2>
 *
 * <p>What lists name, one row for each list, thread and drill: columns {@code thread} (the
 * designation as the suite shows it, such as {@code 2 BA} or {@code M6 x 0.75}) and {@code drill}
 * ({@code No 22}, {@code F}, {@code 5/32 in}, {@code 4.0 mm}); {@code source} names the list. All
 * tables count together.
 *
 * <h2>Tables of kind {@code drill-oversize}</h2>
 *
 * <p>Columns {@code diameter_in} or {@code diameter_mm}, rising, and {@code oversize_mean_in} or
 * {@code oversize_mean_mm}. Between two rows the oversize is taken in proportion; outside them
 * there is none. A club's table goes before the suite's own.
 *
 * <h2>Tables of kind {@code blind-holes}</h2>
 *
 * <p>Columns {@code allowance} ({@code taper lead}, {@code second lead}, {@code bottoming lead},
 * {@code chip room}, all in {@code pitches}; {@code thin floor} in {@code drill diameters}), {@code
 * value} and {@code unit}. A club's table goes before the suite's own.
 *
 * <pre>
 * # kind: drills
 * # id: gas-jets
 * # title: Our jet drills
 * # source: club tool list
 * # standing: measured by the club
 * name,diameter_mm
 * Jet 5,0.25
 * Jet 8,0.36
 * </pre>
 */
@Export
@Version("1.0.0")
package org.fettlebench.tooling;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
