package org.fettlebench.fits.internal;

import java.util.OptionalDouble;
import org.fettlebench.measure.Point;

/**
 * Walks from a centre in one direction until allowed and not allowed change over. As the room has
 * slope 1 at most, a step as long as the room, or its lack, never passes a change.
 */
final class Ray {
  private static final int MOST_STEPS = 5000;

  private final Room room;
  private final Point centre;
  private final double alongX;
  private final double alongY;
  private final double farthest;

  Ray(Room room, Point centre, double radians, Box box) {
    this.room = room;
    this.centre = centre;
    this.alongX = Math.cos(radians);
    this.alongY = Math.sin(radians);
    this.farthest = box.farthestFrom(centre);
  }

  /** Returns the way to the boundary; negative to where it begins to be allowed; or never. */
  OptionalDouble allowanceMm() {
    double first = room.at(centre.xMm(), centre.yMm());
    boolean allowed = first >= 0;
    double way = 0;
    double left = Math.abs(first);
    for (int i = 0; i < MOST_STEPS && way <= farthest; i++) {
      way += Math.max(left, Tolerances.SAME_MM);
      double there = room.at(centre.xMm() + way * alongX, centre.yMm() + way * alongY);
      if (there >= 0 != allowed || Math.abs(there) < Tolerances.SAME_MM && allowed) {
        return OptionalDouble.of(allowed ? way : -way);
      }
      left = Math.abs(there);
    }
    return allowed ? OptionalDouble.of(way) : OptionalDouble.empty();
  }
}
