package org.fettlebench.fits.internal;

import java.util.List;
import org.fettlebench.fits.SeatException;
import org.fettlebench.measure.Point;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/** Refuses a closed line that crosses or touches itself, or has no area. */
final class Crossings {
  private Crossings() {}

  static void refuse(String name, List<Point> corners) {
    Coordinate[] places = new Coordinate[corners.size()];
    for (int i = 0; i < places.length; i++) {
      places[i] = new Coordinate(corners.get(i).xMm(), corners.get(i).yMm());
    }
    STRtree edges = new STRtree();
    for (int i = 0; i < places.length; i++) {
      edges.insert(new Envelope(places[i], places[(i + 1) % places.length]), i);
    }
    for (int i = 0; i < places.length; i++) {
      for (Object other : edges.query(new Envelope(places[i], places[(i + 1) % places.length]))) {
        if ((Integer) other > i) {
          pair(name, places, i, (Integer) other);
        }
      }
    }
    double area = Math.abs(Plan.areaMm2(corners));
    if (!(area > Tolerances.SMALLEST_MM * Tolerances.SMALLEST_MM)) {
      throw new SeatException(
          name + ": the corners lie on one line and enclose nothing; check corner 2 and corner 3");
    }
  }

  private static void pair(String name, Coordinate[] places, int first, int second) {
    int count = places.length;
    RobustLineIntersector meeting = new RobustLineIntersector();
    meeting.computeIntersection(
        places[first], places[(first + 1) % count], places[second], places[(second + 1) % count]);
    boolean neighbours = second == first + 1 || first == 0 && second == count - 1;
    // Edges that follow each other meet at their corner, and nowhere else.
    boolean wrong =
        neighbours ? meeting.getIntersectionNum() > 1 && count > 2 : meeting.hasIntersection();
    if (wrong) {
      Coordinate at = meeting.getIntersection(0);
      throw new SeatException(
          name
              + ": the edge from corner "
              + edge(first, count)
              + (neighbours ? " runs back over" : " meets")
              + " the edge from corner "
              + edge(second, count)
              + " at "
              + SeatGuard.at(new Point(at.x, at.y))
              + "; give the corners in order around the flat");
    }
  }

  private static String edge(int index, int count) {
    return index + 1 + " to corner " + ((index + 1) % count + 1);
  }
}
