package org.fettlebench.fits.internal;

/** A feature that is a bare line, kept at the same distance everywhere. */
interface Side extends Feature {
  /** Returns the square of the distance to a place, in square millimetres. */
  double squaredDistance(double x, double y);

  double nearestX(double x, double y);

  double nearestY(double x, double y);

  double needMm();

  default double distance(double x, double y) {
    return Math.sqrt(squaredDistance(x, y));
  }

  @Override
  default double room(double x, double y) {
    return distance(x, y) - needMm();
  }
}
