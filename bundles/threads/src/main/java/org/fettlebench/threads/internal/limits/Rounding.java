package org.fettlebench.threads.internal.limits;

import org.fettlebench.measure.Length;

/** Rounds as printed tables do, after what doubles add behind the ninth place is taken off. */
final class Rounding {
  private static final int CLEAN_PLACES = 9;
  private static final long[] TENS = {
    1L, 10L, 100L, 1_000L, 10_000L, 100_000L, 1_000_000L, 10_000_000L, 100_000_000L, 1_000_000_000L
  };

  private Rounding() {}

  /**
   * Rounds half up.
   *
   * @param value from nought to a million
   * @param places 0 to 8
   */
  static double halfUp(double value, int places) {
    long step = TENS[CLEAN_PLACES - places];
    return (double) Math.floorDiv(clean(value) + step / 2, step) / TENS[places];
  }

  /** Rounds half to the even digit; values as {@link #halfUp}. */
  static double halfEven(double value, int places) {
    return (double) halfEven(clean(value), TENS[CLEAN_PLACES - places]) / TENS[places];
  }

  /** Returns a number of inches that was rounded to some places, without the error of doubles. */
  static Length inches(double value) {
    // 1 in = 25,400,000 nm: of a thousand-millionth of an inch, 254 / 10,000 nm.
    return Length.ofNanometres(halfEven(Math.multiplyExact(clean(value), 254L), 10_000L));
  }

  /** Returns a number of millimetres, without the error of doubles. */
  static Length millimetres(double value) {
    return Length.ofNanometres(halfEven(clean(value), 1_000L));
  }

  private static long clean(double value) {
    return Math.round(value * TENS[CLEAN_PLACES]);
  }

  private static long halfEven(long value, long step) {
    long below = Math.floorDiv(value, step);
    long twice = 2 * (value - below * step);
    return twice > step || twice == step && below % 2 != 0 ? below + 1 : below;
  }
}
