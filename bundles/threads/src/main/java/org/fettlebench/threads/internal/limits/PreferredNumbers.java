package org.fettlebench.threads.internal.limits;

/** The R40 series of preferred numbers (ISO 3), as ISO 965-1 rounds tolerances to it. */
final class PreferredNumbers {
  private static final int[] R40 = {
    100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236, 250, 265, 280,
    300, 315, 335, 355, 375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850,
    900, 950, 1000
  };

  /** The last of the list is the first of the next decade. */
  private static final int STEPS_PER_DECADE = R40.length - 1;

  private PreferredNumbers() {}

  /**
   * Returns the number of the series nearest by ratio, or one some steps from it; below 100 as
   * whole numbers, halves to the even one, which is how ISO 965-1 prints 42.5 and 47.5.
   *
   * @param value above 0
   * @param steps up the series from the nearest; below 0 down
   */
  static long r40(double value, int steps) {
    int decade = (int) Math.floor(Math.log10(value));
    double within = value / Math.pow(10, decade - 2);
    int nearest = 0;
    for (int i = 1; i < R40.length; i++) {
      if (distance(R40[i], within) < distance(R40[nearest], within)) {
        nearest = i;
      }
    }
    int at = nearest + steps + decade * STEPS_PER_DECADE;
    double number = R40[Math.floorMod(at, STEPS_PER_DECADE)];
    return (long) Math.rint(number * Math.pow(10, Math.floorDiv(at, STEPS_PER_DECADE) - 2));
  }

  private static double distance(double one, double value) {
    return Math.abs(Math.log(one / value));
  }
}
