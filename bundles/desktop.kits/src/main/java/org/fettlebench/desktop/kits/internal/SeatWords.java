package org.fettlebench.desktop.kits.internal;

import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;

/** Says what a seat's answer means at the bench. */
final class SeatWords {
  private SeatWords() {}

  /** Returns how far the hole may be out, against what is to be expected. */
  static String room(SeatAnswer answer, LengthUnit first) {
    double allowance = answer.allowanceAtIntendedMm();
    String within = both(answer.question().expectedErrorMm(), first);
    return allowance >= 0
        ? "The hole may be out "
            + both(allowance, first)
            + "; the method is expected within "
            + within
            + "."
        : "Even with the hole just right it lacks "
            + both(-allowance, first)
            + "; the method is expected within "
            + within
            + ".";
  }

  /** Returns what comes of a change, such as {@code then clears, 0.63 mm}. */
  static String then(SeatAnswer after, LengthUnit unit) {
    Length allowance = Length.ofMillimetres(after.allowanceAtIntendedMm());
    return "then " + after.verdict().word() + ", " + LengthFormat.allowance(allowance, unit);
  }

  private static String both(double millimetres, LengthUnit first) {
    return LengthFormat.allowanceBoth(Length.ofMillimetres(millimetres), first);
  }
}
