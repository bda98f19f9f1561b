package org.fettlebench.tooling.speed;

import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.Source;

/**
 * The speed that one source allows at the rim of a cutter.
 *
 * @param leastFeetPerMinute slower end of its range, above 0
 * @param mostFeetPerMinute faster end, not below the slower
 * @param forWhat the material in the source's words, and how the figure was come by, such as {@code
 *     "Brass"; halved for carbon steel}
 * @param source of the figures
 */
public record SurfaceSpeed(
    double leastFeetPerMinute, double mostFeetPerMinute, String forWhat, Source source) {
  private static final double METRES_PER_FOOT = 0.3048;
  private static final double INCHES_PER_FOOT = 12;

  /**
   * Checks the range.
   *
   * @throws MeasureException if an end is not above 0 or they do not rise
   */
  public SurfaceSpeed {
    if (!(leastFeetPerMinute > 0 && leastFeetPerMinute <= mostFeetPerMinute)) {
      throw new MeasureException(
          "surface speed %s to %s ft/min must rise and be above 0"
              .formatted(leastFeetPerMinute, mostFeetPerMinute));
    }
  }

  /** Returns the slower end in metres a minute. */
  public double leastMetresPerMinute() {
    return leastFeetPerMinute * METRES_PER_FOOT;
  }

  /** Returns the faster end in metres a minute. */
  public double mostMetresPerMinute() {
    return mostFeetPerMinute * METRES_PER_FOOT;
  }

  /**
   * Returns the turns a minute at which a cutter's rim runs at a speed: 12 v / (π d).
   *
   * @param feetPerMinute v
   * @param diameterInches d
   */
  public static double rpm(double feetPerMinute, double diameterInches) {
    return INCHES_PER_FOOT * feetPerMinute / (Math.PI * diameterInches);
  }
}
