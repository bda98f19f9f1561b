package org.fettlebench.threads.internal.identify;

/** Densities of readings, on a scale that does not vanish far from the middle. */
final class Likelihood {
  private static final double LOG_ROOT_TWO_PI = 0.5 * Math.log(2 * Math.PI);

  private Likelihood() {}

  /** Returns the logarithm of the density of a reading of an exactly known size. */
  static double ofPoint(double reading, double size, double uncertainty) {
    double off = (reading - size) / uncertainty;
    return -0.5 * off * off - LOG_ROOT_TWO_PI - Math.log(uncertainty);
  }

  /**
   * Returns the logarithm of the density of a reading of a size that lies anywhere from {@code
   * least} to {@code most}.
   */
  static double ofRange(double reading, double least, double most, double uncertainty) {
    double width = most - least;
    // Below a hundredth of the uncertainty the range is a point for all purposes.
    if (width < uncertainty / 100) {
      return ofPoint(reading, (least + most) / 2, uncertainty);
    }
    double above = (reading - least) / uncertainty;
    double below = (reading - most) / uncertainty;
    // Far outside, the difference of two tails is lost in rounding: its leading term is kept.
    if (above < -5) {
      return ofPoint(reading, least, uncertainty)
          - Math.log(-above)
          + Math.log(uncertainty / width);
    }
    if (below > 5) {
      return ofPoint(reading, most, uncertainty) - Math.log(below) + Math.log(uncertainty / width);
    }
    return Math.log((cumulative(above) - cumulative(below)) / width);
  }

  /** Returns the normal distribution function: Abramowitz and Stegun 26.2.17, error below 1e-7. */
  static double cumulative(double x) {
    double t = 1 / (1 + 0.2316419 * Math.abs(x));
    double series =
        t
            * (0.319381530
                + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
    double tail = Math.exp(-0.5 * x * x - LOG_ROOT_TWO_PI) * series;
    return x < 0 ? tail : 1 - tail;
  }
}
