package org.fettlebench.fits.internal;

import org.fettlebench.measure.Point;

/**
 * A convex thing that a centre must keep away from. Its room is a convex function of the centre
 * with slope 1 at most; the searches rest on both.
 */
interface Feature {
  Label label();

  Point from();

  Point to();

  /** Returns distance less need, in millimetres. */
  double room(double x, double y);

  /** Returns how it stands to a centre on its right side. */
  Touch touch(double x, double y);
}
