package org.fettlebench.fits.internal;

import java.util.Locale;
import org.fettlebench.fits.Eighths;
import org.fettlebench.fits.Spanner;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;

/** The wording of cures and figures, in one place. */
final class Words {
  /** Half of the last digit in which a shift is written: less would read 0.00 mm. */
  private static final double LEAST_PRINTED_MM = 0.005;

  private Words() {}

  static String both(double mm) {
    return LengthFormat.allowanceBoth(Length.ofMillimetres(mm), LengthUnit.MILLIMETRE);
  }

  /** Says a shift as seen on the drawing: "1.20 mm (0.047 in) right, ...". */
  static String shift(double dxMm, double dyMm) {
    String across = part(dxMm, "right", "left");
    String along = part(dyMm, "away", "near");
    return across.isEmpty() || along.isEmpty() ? across + along : across + ", " + along;
  }

  private static boolean printsAsNothing(double mm) {
    return Math.abs(mm) < LEAST_PRINTED_MM;
  }

  private static String part(double mm, String positive, String negative) {
    if (printsAsNothing(mm)) {
      return "";
    }
    return LengthFormat.showBoth(Length.ofMillimetres(Math.abs(mm)), LengthUnit.MILLIMETRE)
        + " "
        + (mm > 0 ? positive : negative);
  }

  static String move(double dx, double dy) {
    return "move the hole "
        + both(Math.hypot(dx, dy))
        + " "
        + Eighths.words(dx, dy)
        + (printsAsNothing(dx) || printsAsNothing(dy) ? "" : ": " + shift(dx, dy));
  }

  static String otherHead(String title, String caveat) {
    return "use " + title + (caveat.isEmpty() ? "" : " (figures " + caveat + ")");
  }

  static String washerOff(String title) {
    return "leave the " + title + " off";
  }

  static String otherSpanner(Spanner spanner) {
    return "turn it with " + spanner.spoken() + " (figures " + spanner.standing() + ")";
  }

  static String turnWasherDown(String title, double diameterMm) {
    return "turn the "
        + title
        + " down to "
        + LengthFormat.showBoth(Length.ofMillimetres(diameterMm), LengthUnit.MILLIMETRE);
  }

  static String turnDown(double diameterMm) {
    return "turn the corners of the head down to a circle of "
        + LengthFormat.showBoth(Length.ofMillimetres(diameterMm), LengthUnit.MILLIMETRE);
  }

  static String setSquare(String feature) {
    return "set the head with its flats square to the " + feature + ", and keep it so when tight";
  }

  static String method(String title, double errorMm, double confidence, String standing) {
    return String.format(
        Locale.ROOT,
        "place the hole by %s: within %s at %s %% (%s)",
        title,
        both(errorMm),
        percent(confidence),
        standing);
  }

  static String errorMeans(String title, double confidence, String standing) {
    return title + ", " + percent(confidence) + " % of holes; " + standing;
  }

  private static String percent(double confidence) {
    double percent = confidence * 100;
    return percent == Math.rint(percent)
        ? Integer.toString((int) percent)
        : String.format(Locale.ROOT, "%.1f", percent);
  }

  /** Says what came of it: "then it clears with 0.64 mm (0.025 in) to spare". */
  static String outcome(org.fettlebench.fits.SeatAnswer after) {
    return "then it "
        + switch (after.verdict()) {
          case CLEARS -> "clears, allowance ";
          case TIGHT -> "is tight, allowance ";
          case FOULS -> "still fouls by ";
        }
        + both(Math.abs(after.allowanceAtIntendedMm()));
  }
}
