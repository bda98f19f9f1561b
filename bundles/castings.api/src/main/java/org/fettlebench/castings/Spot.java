package org.fettlebench.castings;

/**
 * A point measured in space, in millimetres of its frame.
 *
 * @param xMm to the right
 * @param yMm away from the reader
 * @param zMm up
 */
public record Spot(double xMm, double yMm, double zMm) {
  /**
   * Checks the figures.
   *
   * @throws CastingException if one is no number or beyond 100 000 mm
   */
  public Spot {
    Require.place("x", xMm);
    Require.place("y", yMm);
    Require.place("z", zMm);
  }

  /** Returns the co-ordinate along an axis. */
  public double alongMm(Axis axis) {
    return switch (axis) {
      case X -> xMm;
      case Y -> yMm;
      case Z -> zMm;
    };
  }
}
