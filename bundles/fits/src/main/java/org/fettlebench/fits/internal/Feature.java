package org.fettlebench.fits.internal;

import java.util.List;
import org.fettlebench.measure.Point;
import org.locationtech.jts.geom.Geometry;

/**
 * Something that a centre must keep away from. Its room has slope 1 at most, and is a convex
 * function of the centre unless it is hollow; the searches rest on both.
 */
interface Feature {
  Label label();

  /** Returns the feature from one end to the other, arcs broken. */
  List<Point> line();

  /** Returns distance less need, in millimetres. */
  double room(double x, double y);

  /** Returns a room that the true one never falls below; cheap. */
  default double leastRoom(double x, double y) {
    return room(x, y);
  }

  /** Returns how it stands to a centre on its right side. */
  Touch touch(double x, double y);

  /**
   * Returns whether its room bends the other way, as inside an arc: a straight step overrates it.
   */
  default boolean hollow() {
    return false;
  }

  /** Returns whether it does so at a centre, where then {@link #inwards} holds. */
  default boolean hollowAt(double x, double y) {
    return false;
  }

  /**
   * Returns how it stands to a centre when its bend is followed all round, negative beyond: never
   * more room than there is.
   */
  default Touch inwards(double x, double y) {
    return touch(x, y);
  }

  /** Returns the centres that fail, arcs broken. */
  Geometry forbidden();
}
