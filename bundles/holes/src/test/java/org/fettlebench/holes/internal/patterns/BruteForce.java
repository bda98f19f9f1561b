package org.fettlebench.holes.internal.patterns;

import java.util.function.DoubleUnaryOperator;

/**
 * The least greatest lack by search alone: golden sections over the turn, in it over the shift
 * along x, in it along y. It knows nothing of how {@link Motion} goes about it.
 */
final class BruteForce {
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
  private static final int SECTIONS = 42;

  private BruteForce() {}

  /**
   * Returns the least lack found.
   *
   * @param holes rows of upper x, upper y, lower x, lower y, play
   */
  static double least(double[][] holes, double shiftMm, double turn) {
    return least(
        -turn,
        turn,
        angle ->
            least(-shiftMm, shiftMm, x -> least(-shiftMm, shiftMm, y -> lack(holes, x, y, angle))));
  }

  private static double least(double from, double to, DoubleUnaryOperator figure) {
    double low = from;
    double high = to;
    double one = high - GOLDEN * (high - low);
    double other = low + GOLDEN * (high - low);
    double atOne = figure.applyAsDouble(one);
    double atOther = figure.applyAsDouble(other);
    for (int i = 0; i < SECTIONS; i++) {
      if (atOne < atOther) {
        high = other;
        other = one;
        atOther = atOne;
        one = high - GOLDEN * (high - low);
        atOne = figure.applyAsDouble(one);
      } else {
        low = one;
        one = other;
        atOne = atOther;
        other = low + GOLDEN * (high - low);
        atOther = figure.applyAsDouble(other);
      }
    }
    return Math.min(atOne, atOther);
  }

  /** Lower holes are turned about zero, then shifted. */
  private static double lack(double[][] holes, double x, double y, double angle) {
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    double worst = Double.NEGATIVE_INFINITY;
    for (double[] hole : holes) {
      double dx = hole[0] - x - cos * hole[2] + sin * hole[3];
      double dy = hole[1] - y - sin * hole[2] - cos * hole[3];
      worst = Math.max(worst, Math.sqrt(dx * dx + dy * dy) - hole[4]);
    }
    return worst;
  }
}
