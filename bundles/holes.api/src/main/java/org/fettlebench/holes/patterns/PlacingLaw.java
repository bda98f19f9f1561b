package org.fettlebench.holes.patterns;

/**
 * How the holes of a part land round where they should be; each hole on its own, x and y alike.
 *
 * @param shape of the error along each axis
 * @param spreadMm standard deviation per axis when normal, half the width per axis when even; 0 for
 *     holes that are exactly where they should be
 * @param means what it is and how far to trust it, in words, such as "drill through a jig (common
 *     practice, no source)"
 */
public record PlacingLaw(Shape shape, double spreadMm, String means) {
  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if the spread is below 0 or beyond 100 m
   */
  public PlacingLaw {
    Require.notNegative("spread of the placing", spreadMm);
  }

  /** Returns the standard deviation along each axis, in millimetres. */
  public double sigmaPerAxisMm() {
    return shape == Shape.NORMAL ? spreadMm : spreadMm / Math.sqrt(3);
  }

  /** Shapes of the error along one axis. */
  public enum Shape {
    /** Normal, round in the plane. */
    NORMAL,
    /** Any error within bounds as likely as any other: a square in the plane. */
    EVEN
  }
}
