package org.fettlebench.measure;

/**
 * A place on a face: x to the right, y away from the reader.
 *
 * @param xMm millimetres to the right; finite
 * @param yMm millimetres away from the reader; finite
 */
public record Point(double xMm, double yMm) {
  /** Refuses what is not a number. */
  public Point {
    if (!(Double.isFinite(xMm) && Double.isFinite(yMm))) {
      throw new MeasureException("a point needs two finite co-ordinates, not " + xMm + ", " + yMm);
    }
  }

  /** Returns the distance to another point, in millimetres. */
  public double distanceMm(Point other) {
    return Math.hypot(xMm - other.xMm, yMm - other.yMm);
  }

  /** Returns this point moved by the given millimetres. */
  public Point moved(double dxMm, double dyMm) {
    return new Point(xMm + dxMm, yMm + dyMm);
  }
}
