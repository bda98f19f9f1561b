package org.fettlebench.desktop.kits.internal;

import org.fettlebench.desktop.widgets.VerdictMark;
import org.fettlebench.fits.Verdict;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.JointReport;

/** The shape that goes with each word of a report, the same in every list of the page. */
final class Marks {
  private Marks() {}

  static VerdictMark of(Verdict verdict) {
    return switch (verdict) {
      case CLEARS -> VerdictMark.TICK;
      case TIGHT -> VerdictMark.HALF;
      case FOULS -> VerdictMark.STRUCK;
    };
  }

  static VerdictMark of(JointReport.Supply supply) {
    return switch (supply) {
      case COMPLETE -> VerdictMark.TICK;
      case BETTER_FROM_STOCK -> VerdictMark.HALF;
      case SHORT, WRONG -> VerdictMark.STRUCK;
    };
  }

  static VerdictMark of(Finding.Weight weight) {
    return switch (weight) {
      case NOTE -> VerdictMark.OPEN;
      case CAUTION -> VerdictMark.HALF;
      case FAULT -> VerdictMark.STRUCK;
    };
  }

  static VerdictMark of(JointReport.Fetch.State state) {
    return switch (state) {
      case IN, IN_BAG -> VerdictMark.TICK;
      case OUT, WORN -> VerdictMark.HALF;
      case NOT_HELD -> VerdictMark.STRUCK;
    };
  }
}
