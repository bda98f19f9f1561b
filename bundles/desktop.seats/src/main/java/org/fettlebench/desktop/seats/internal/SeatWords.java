package org.fettlebench.desktop.seats.internal;

import java.util.Locale;
import org.fettlebench.desktop.widgets.VerdictMark;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatAnswer.Governing;
import org.fettlebench.fits.Verdict;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** Says what an answer means at the bench. */
final class SeatWords {
  private SeatWords() {}

  static VerdictMark mark(Verdict verdict) {
    return switch (verdict) {
      case CLEARS -> VerdictMark.TICK;
      case TIGHT -> VerdictMark.HALF;
      case FOULS -> VerdictMark.STRUCK;
    };
  }

  /** Returns how far the hole may be out. */
  static String allowance(SeatAnswer answer, LengthUnit unit) {
    double allowance = answer.allowanceAtIntendedMm();
    return allowance >= 0
        ? "The hole may be out " + both(allowance, unit) + "."
        : "Lacks " + both(-allowance, unit) + " even with the hole just right.";
  }

  /** Returns what is to be expected, with where that comes from. */
  static String expected(SeatAnswer answer, LengthUnit unit) {
    return "Expected within "
        + both(answer.question().expectedErrorMm(), unit)
        + " (radius): "
        + answer.question().errorMeans()
        + ".";
  }

  /** Returns what governs, with its figures. */
  static String governs(SeatAnswer answer, LengthUnit unit) {
    Governing governing = answer.governing();
    return upper(governing.name())
        + " governs: "
        + LengthFormat.show(Length.ofMillimetres(governing.distanceMm()), unit)
        + " away, "
        + LengthFormat.show(Length.ofMillimetres(governing.neededMm()), unit)
        + " needed"
        + switch (governing.kind()) {
          case EDGE, WALL, NEIGHBOUR -> " by the head";
          case METAL -> " for metal round the hole";
          case METAL_BELOW -> " for metal round the hole on the far face";
          case CAVITY -> " for metal over the hollow";
        }
        + ".";
  }

  /** Returns what comes of a change, such as {@code then clears, 0.63 mm}. */
  static String then(SeatAnswer after, LengthUnit unit) {
    return "then "
        + after.verdict().word()
        + ", "
        + LengthFormat.allowance(Length.ofMillimetres(after.allowanceAtIntendedMm()), unit);
  }

  static String both(double millimetres, LengthUnit unit) {
    return LengthFormat.allowanceBoth(Length.ofMillimetres(millimetres), unit);
  }

  static String place(Point at, LengthUnit unit) {
    return "x "
        + LengthFormat.show(Length.ofMillimetres(at.xMm()), unit)
        + ", y "
        + LengthFormat.show(Length.ofMillimetres(at.yMm()), unit);
  }

  static String upper(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** Returns a chance as a person says it, never more sure than it is: 0.9997 is not 100 %. */
  static String percent(double chance) {
    double percent = 100 * chance;
    if (percent > 99.95) {
      return "above 99.9 %";
    }
    if (percent < 0.05) {
      return "below 0.1 %";
    }
    return String.format(
        Locale.ROOT, percent >= 99 || percent < 1 ? "%.1f %%" : "%.0f %%", percent);
  }
}
