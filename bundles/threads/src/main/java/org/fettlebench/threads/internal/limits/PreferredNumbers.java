package org.fettlebench.threads.internal.limits;

/** The R40 series of preferred numbers (ISO 3), as ISO 965-1 rounds tolerances to it. */
final class PreferredNumbers {
  private static final int[] R40 = {
    100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236, 250, 265, 280,
    300, 315, 335, 355, 375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850,
    900, 950, 1000
  };

  private PreferredNumbers() {}

  /**
   * Returns the number of the series nearest by ratio; below 100 as whole numbers.
   *
   * @param value 10 to 9500
   */
  static long r40(double value) {
    double decade = Math.pow(10, Math.floor(Math.log10(value)) - 2);
    double nearest = R40[0];
    for (int one : R40) {
      if (distance(one, value / decade) < distance(nearest, value / decade)) {
        nearest = one;
      }
    }
    return Math.round(nearest * decade);
  }

  private static double distance(double one, double value) {
    return Math.abs(Math.log(one / value));
  }
}
