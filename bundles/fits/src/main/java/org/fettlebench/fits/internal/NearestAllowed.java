package org.fettlebench.fits.internal;

import java.util.List;
import org.fettlebench.measure.Point;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.distance.DistanceOp;

/** Finds the allowed centre nearest to one that fails. */
final class NearestAllowed {
  private NearestAllowed() {}

  /**
   * Returns it, exact to rounding although the region's arcs are broken into chords.
   *
   * @param room the room of any centre
   * @param allowed where the centre may be, arcs broken; may be empty when {@code best} is the only
   *     place
   * @param best a centre known to be allowed
   * @param failing the centre that is not
   */
  static Point find(Room room, Geometry allowed, Point best, Point failing) {
    Point nearest = best;
    if (!allowed.isEmpty()) {
      Geometry from =
          allowed.getFactory().createPoint(new Coordinate(failing.xMm(), failing.yMm()));
      Coordinate found = DistanceOp.nearestPoints(allowed, from)[0];
      Point improved = improve(room, new Point(found.x, found.y), failing);
      boolean holds = room.at(improved.xMm(), improved.yMm()) > -1e-7;
      if (holds && improved.distanceMm(failing) < nearest.distanceMm(failing)) {
        nearest = improved;
      }
    }
    return nearest.equals(best) ? improve(room, best, failing) : nearest;
  }

  private static Point improve(Room room, Point start, Point failing) {
    Point here = start;
    for (int i = 0; i < 40; i++) {
      List<Touch> touches = room.touches(here.xMm(), here.yMm());
      Steps.Step step =
          Steps.approach(touches, failing.xMm() - here.xMm(), failing.yMm() - here.yMm());
      here = here.moved(step.dx(), step.dy());
      if (step.length() < Tolerances.SAME_MM / 10) {
        break;
      }
    }
    return here;
  }
}
