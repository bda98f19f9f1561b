package org.fettlebench.threads.internal.limits;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;

/** Rounds as printed tables do. */
final class Rounding {
  private Rounding() {}

  /** Rounds half up, after what doubles add behind the ninth place is taken off. */
  static double halfUp(double value, int places) {
    return clean(value).setScale(places, RoundingMode.HALF_UP).doubleValue();
  }

  /** Rounds half to the even digit. */
  static double halfEven(double value, int places) {
    return clean(value).setScale(places, RoundingMode.HALF_EVEN).doubleValue();
  }

  private static BigDecimal clean(double value) {
    return new BigDecimal(value, MathContext.DECIMAL64).setScale(9, RoundingMode.HALF_UP);
  }

  /** Returns a number of inches that was rounded to some places, without the error of doubles. */
  static Length inches(double value) {
    return Length.of(clean(value), LengthUnit.INCH);
  }

  /** Returns a number of millimetres, without the error of doubles. */
  static Length millimetres(double value) {
    return Length.of(clean(value), LengthUnit.MILLIMETRE);
  }
}
