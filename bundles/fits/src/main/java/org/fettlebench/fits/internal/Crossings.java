package org.fettlebench.fits.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.SeatException;
import org.fettlebench.measure.Point;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;

/** Refuses a closed line that crosses or touches itself, or has no area. */
final class Crossings {
  private final String name;
  private final Coordinate[] places;
  private final List<String> names = new ArrayList<>();
  private final double[] leastX;
  private final double[] mostX;
  private final double[] leastY;
  private final double[] mostY;

  private Crossings(String name, Outline outline) {
    this.name = name;
    List<Point> points = new ArrayList<>();
    for (Outline.Edge edge : outline.edges()) {
      List<Point> line =
          edge.arc().map(arc -> arc.points()).orElse(List.of(edge.from(), edge.to()));
      for (int i = 0; i < line.size() - 1; i++) {
        points.add(i == 0 ? edge.from() : line.get(i));
        names.add(edge.name());
      }
    }
    int count = points.size();
    places = new Coordinate[count + 1];
    for (int i = 0; i <= count; i++) {
      places[i] = new Coordinate(points.get(i % count).xMm(), points.get(i % count).yMm());
    }
    leastX = new double[count];
    mostX = new double[count];
    leastY = new double[count];
    mostY = new double[count];
    for (int i = 0; i < count; i++) {
      leastX[i] = Math.min(places[i].x, places[i + 1].x);
      mostX[i] = Math.max(places[i].x, places[i + 1].x);
      leastY[i] = Math.min(places[i].y, places[i + 1].y);
      mostY[i] = Math.max(places[i].y, places[i + 1].y);
    }
  }

  static void refuse(String name, Outline outline) {
    if (!(widthMm(outline.points()) > Tolerances.SMALLEST_MM)) {
      throw new SeatException(
          name
              + ": its "
              + outline.corners().size()
              + " corners lie on one line, from "
              + SeatGuard.at(outline.points().get(0))
              + ", and enclose nothing; give a corner that lies off it");
    }
    new Crossings(name, outline).sweep();
  }

  /** Returns how far places stray to both sides of the line from the first to the farthest one. */
  private static double widthMm(List<Point> points) {
    Point first = points.get(0);
    Point far = points.stream().max(Comparator.comparingDouble(first::distanceMm)).orElse(first);
    double length = first.distanceMm(far);
    double least = 0;
    double most = 0;
    for (Point each : points) {
      double off =
          ((far.xMm() - first.xMm()) * (each.yMm() - first.yMm())
                  - (far.yMm() - first.yMm()) * (each.xMm() - first.xMm()))
              / length;
      least = Math.min(least, off);
      most = Math.max(most, off);
    }
    return most - least;
  }

  /** Goes from left to right with the sides that reach so far, and looks at pairs of them. */
  private void sweep() {
    int count = leastX.length;
    Integer[] order = new Integer[count];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, Comparator.comparingDouble(i -> leastX[i]));
    int[] open = new int[count];
    int opened = 0;
    for (int next : order) {
      int kept = 0;
      for (int i = 0; i < opened; i++) {
        int side = open[i];
        if (mostX[side] >= leastX[next]) {
          open[kept++] = side;
          if (mostY[side] >= leastY[next] && leastY[side] <= mostY[next]) {
            pair(Math.min(side, next), Math.max(side, next));
          }
        }
      }
      open[kept] = next;
      opened = kept + 1;
    }
  }

  private void pair(int first, int second) {
    int count = leastX.length;
    boolean following = second == first + 1;
    if (following || first == 0 && second == count - 1) {
      // Sides that follow each other meet at their corner, and nowhere else unless they fold back.
      int corner = following ? second : first;
      if (count > 2 && !forksClearly(corner)) {
        throw wrong(first, " runs back over", second, places[corner]);
      }
      return;
    }
    RobustLineIntersector meeting = new RobustLineIntersector();
    meeting.computeIntersection(
        places[first], places[first + 1], places[second], places[second + 1]);
    if (meeting.hasIntersection()) {
      throw wrong(first, " meets", second, meeting.getIntersection(0));
    }
  }

  private SeatException wrong(int first, String how, int second, Coordinate at) {
    return new SeatException(
        name
            + ": the "
            + names.get(first)
            + how
            + " the "
            + names.get(second)
            + " at "
            + SeatGuard.at(new Point(at.x, at.y))
            + "; give the corners in order around the flat");
  }

  /** Returns whether the sides at a corner plainly do not lie on one line. */
  private boolean forksClearly(int corner) {
    Coordinate at = places[corner];
    Coordinate before = places[corner == 0 ? leastX.length - 1 : corner - 1];
    Coordinate after = places[corner + 1];
    double ax = at.x - before.x;
    double ay = at.y - before.y;
    double bx = after.x - at.x;
    double by = after.y - at.y;
    boolean goesOn = ax * bx + ay * by > 0;
    return goesOn || Math.abs(ax * by - ay * bx) > 1e-6 * Math.hypot(ax, ay) * Math.hypot(bx, by);
  }
}
