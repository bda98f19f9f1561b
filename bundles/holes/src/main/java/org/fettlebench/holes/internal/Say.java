package org.fettlebench.holes.internal;

import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;

/** Figures in sentences, in one place: millimetres first, inches behind. */
public final class Say {
  private Say() {}

  /** Returns a size: {@code 3.97 mm (0.156 in)}. */
  public static String size(double mm) {
    return LengthFormat.showBoth(Length.ofMillimetres(mm), LengthUnit.MILLIMETRE);
  }

  /** Returns an error or an allowance: {@code 0.24 mm (0.009 in)}. */
  public static String small(double mm) {
    return LengthFormat.allowanceBoth(Length.ofMillimetres(mm), LengthUnit.MILLIMETRE);
  }

  /** Returns a small figure in one unit, for a drawing. */
  public static String figure(double mm, LengthUnit unit) {
    return LengthFormat.allowance(Length.ofMillimetres(mm), unit);
  }

  /** Returns a size in one unit, for a drawing. */
  public static String size(double mm, LengthUnit unit) {
    return LengthFormat.show(Length.ofMillimetres(mm), unit);
  }
}
