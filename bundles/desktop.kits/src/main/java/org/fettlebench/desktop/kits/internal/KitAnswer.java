package org.fettlebench.desktop.kits.internal;

import org.fettlebench.desktop.widgets.VerdictMark;
import org.fettlebench.fits.Verdict;
import org.fettlebench.kits.KitReport;

/**
 * Whether the kit can be built, in the fewest words.
 *
 * @param mark shape beside the word
 * @param word yes, not yet ...
 */
record KitAnswer(VerdictMark mark, String word) {
  /** For a kit whose file cannot be used. */
  static final KitAnswer UNREADABLE = new KitAnswer(VerdictMark.OPEN, "Not known");

  static KitAnswer of(KitReport report) {
    if (report.wanting()) {
      return new KitAnswer(VerdictMark.STRUCK, "Not yet");
    }
    return report.count(Verdict.TIGHT) > 0
        ? new KitAnswer(VerdictMark.HALF, "Yes, with care")
        : new KitAnswer(VerdictMark.TICK, "Yes");
  }
}
