package org.fettlebench.desktop.seats.internal;

import org.fettlebench.desktop.widgets.VerdictMark;
import org.fettlebench.fits.Verdict;

/** Shapes that go with the words of a verdict. */
final class SeatMarks {
  private SeatMarks() {}

  static VerdictMark of(Verdict verdict) {
    return switch (verdict) {
      case CLEARS -> VerdictMark.TICK;
      case TIGHT -> VerdictMark.HALF;
      case FOULS -> VerdictMark.STRUCK;
    };
  }
}
