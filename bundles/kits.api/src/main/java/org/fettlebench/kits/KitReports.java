package org.fettlebench.kits;

import java.util.Map;
import org.fettlebench.measure.LengthUnit;
import org.osgi.annotation.versioning.ProviderType;

/** Puts a kit report into words and into data, the same for every page, command and paper. */
@ProviderType
public interface KitReports {
  /**
   * Returns the sentence that sums up a kit: how many joints clear, are tight, foul or have no
   * measured seat, and what is missing to begin.
   */
  String summary(KitReport report);

  /**
   * Returns the whole report as lines for people, the summary first, without a last line end.
   *
   * @param unit shown first where both are shown
   */
  String text(KitReport report, LengthUnit unit);

  /**
   * Returns the report with the asked unit first wherever a sentence says a length both ways;
   * figures, verdicts and order stay.
   */
  KitReport inUnit(KitReport report, LengthUnit first);

  /**
   * Returns the whole report for machines: maps in fixed order, lists, texts, finite numbers, truth
   * values. Every number's unit stands in its key, such as {@code allowanceMm}; what is not known
   * is left out.
   */
  Map<String, Object> data(KitReport report);
}
