/**
 * What the suite puts on paper: what does a person take to the bench, and to the club's evening?
 *
 * <p>{@link org.fettlebench.paper.BenchCards} writes PDF of the size A4 (210 x 297 mm), upright,
 * from a {@link org.fettlebench.kits.KitReport}; it computes nothing and rounds only in words.
 * Drawings stand at a scale of ISO 5455 that is written beside them, with a line of known length to
 * measure after printing, since printers like to fit pages to their paper. The same report gives
 * the same pages, but for the date of the file. May be called from any thread. No argument is null;
 * streams are written to and left open.
 *
 * <p>{@link org.fettlebench.paper.WallCharts} draws charts of threads and drills for the wall, on
 * A4 or A3. They take their figures from the services of the suite and show each with its standing.
 *
 * <p>{@link org.fettlebench.paper.HoleCards} writes cards of one page about a single hole: how to
 * correct one that is out, and how to mark one out that is drilled from the other face. {@link
 * org.fettlebench.paper.SeatCards} writes the card of a seat: will the head sit, and with how much
 * to spare.
 *
 * <p>Implemented by the suite only.
 */
@Export
@Version("1.3.0")
package org.fettlebench.paper;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
