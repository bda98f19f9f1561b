/**
 * Kits and their joints, the kit check and its report, and the rules that add findings: which
 * joints of this kit can be made with what the club holds?
 *
 * <p>The way through: a text is read by {@link org.fettlebench.kits.KitFiles} into a {@link
 * org.fettlebench.kits.Kit}, wholly or not at all ({@link org.fettlebench.kits.FaultyFileException}
 * names every fault with line and column). {@link org.fettlebench.kits.KitCheck} puts the kit
 * against the {@link org.fettlebench.kits.Holdings} and returns a {@link
 * org.fettlebench.kits.KitReport}: for each joint a verdict on its seat, the supply of its
 * fasteners, findings (gravest first), cures and substitutes (each re-checked, best first) and what
 * to fetch; for the whole kit the shortages and the cautions. {@link
 * org.fettlebench.kits.KitReports} puts a report into words and data. {@link
 * org.fettlebench.kits.StockFiles} reads and writes stock lists, and goods as people say them.
 * {@link org.fettlebench.kits.DemoClub} loads the invented club.
 *
 * <p>Units: sizes are {@link org.fettlebench.measure.Length}, exact; results of geometry are
 * millimetres in {@code double}, and a figure's name ends in its unit ({@code allowanceMm}, {@code
 * percentOfThread}). All allowances are radii of position error. Nothing is rounded before it is
 * put into words.
 *
 * <p>Input: constructors refuse what a kit cannot be (blank names, counts below 1, lengths not
 * above 0, figures that are no numbers) with an {@link java.lang.IllegalArgumentException} that
 * names the value and the range. The check itself never throws for what a joint is like.
 *
 * <p>Results: records, immutable, in file order; the same kit and holdings give an equal report.
 * Absent things are empty, never null.
 *
 * <p>To extend: register a {@link org.fettlebench.kits.JointRule}. It is given a {@link
 * org.fettlebench.kits.JointCase} for each joint and returns findings. The suite's own findings
 * come from rules of the same kind. All other interfaces here are implemented by the suite only.
 */
@Export
@Version("1.4.0")
package org.fettlebench.kits;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;
