package org.fettlebench.holes.chance;

import java.util.Optional;
import org.fettlebench.fits.HoleMethod;

/**
 * What measured errors say of a method.
 *
 * @param before the method as it was known before: as the tables have it, or as others measured it
 * @param now the method with the estimate as its law; the same as before when nothing was measured
 * @param holes how many measured holes count
 * @param priorHoles how many holes the figures known before count for
 * @param x spread along x
 * @param y spread along y; the same as along x when both were taken together
 * @param together whether both axes were taken together as one spread
 * @param offset what the holes are always out by, where that is no luck
 */
public record MethodEstimate(
    HoleMethod before,
    HoleMethod now,
    int holes,
    double priorHoles,
    Spread x,
    Spread y,
    boolean together,
    Optional<Offset> offset) {
  /** The share of belief that the intervals hold. */
  public static final double CREDIBILITY = 0.95;

  /**
   * A standard deviation and its credible interval.
   *
   * @param sigmaMm the estimate: root of the weighted mean of the variances known before and
   *     measured
   * @param lowMm lower end of the interval
   * @param highMm upper end of the interval
   */
  public record Spread(double sigmaMm, double lowMm, double highMm) {}

  /**
   * A systematic offset.
   *
   * @param xMm mean error along x
   * @param yMm mean error along y
   * @param luck the chance of means this far out when there is no offset; below 0.05
   */
  public record Offset(double xMm, double yMm, double luck) {}
}
