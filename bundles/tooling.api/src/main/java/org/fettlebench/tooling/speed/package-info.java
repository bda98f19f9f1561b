/**
 * How fast should the spindle turn?
 *
 * <p>Spindle speeds are turns a minute (rpm), surface speeds feet a minute with metres a minute
 * beside them, diameters {@link org.fettlebench.measure.Length}s; nothing is rounded. Sources
 * differ by half and more: all that know the material are told, the range goes from the most
 * careful to the boldest, and one begins at the careful end.
 *
 * <p>Where a table gives no speed for an operation, it is worked out from that for drilling by a
 * table of factors. {@code SpindleSpeeds} is offered by the suite. Everything is immutable and may
 * be used from any thread; no null is taken or returned.
 *
 * <h2>Tables of kind {@code surface-speeds}</h2>
 *
 * <p>Header {@code operation}: word of {@link org.fettlebench.tooling.speed.CuttingOperation}.
 * Columns {@code material} (id of a work material), {@code least_ft_per_min}, {@code
 * most_ft_per_min}, for cutters of high-speed steel; {@code as_printed}: the material in the
 * source's words.
 *
 * <h2>Tables of kind {@code speed-factors}</h2>
 *
 * <p>Columns {@code operation} or {@code carbon steel}, {@code least} and {@code most}: the part of
 * the surface speed for drilling with high-speed steel.
 */
@Export
@Version("1.0.0")
package org.fettlebench.tooling.speed;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
