package org.fettlebench.fits.internal;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.measure.Point;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * The room that something takes about the hole's centre: a circle, or a convex shape that does not
 * turn.
 */
final class Sweep {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  /** How finely the shape of an open spanner is broken: its circles are overrated by 0.1 %. */
  private static final int SPANNER_PARTS = 72;

  /**
   * How far to each side of square the open spanner's head reaches as it swings: half of the 30
   * degrees between one grip and the next when it is turned over each time (a hexagon repeats every
   * 60 degrees, and its jaws stand at 15 degrees to its handle; geometry).
   */
  private static final double HALF_SWING = Math.toRadians(15);

  private final double radiusMm;
  private final List<Point> corners;

  private Sweep(double radiusMm, List<Point> corners) {
    this.radiusMm = radiusMm;
    this.corners = corners;
  }

  static Sweep circle(double radiusMm) {
    return new Sweep(radiusMm, List.of());
  }

  /** Returns the head itself: a circle when it may be turned anywhere, a hexagon when it is set. */
  static Sweep head(SeatedHead head) {
    double radius = head.sweepDiameterMm() / 2;
    if (head.acrossFlatsMm().isEmpty() || head.flatsAlongDegrees().isEmpty()) {
      return circle(radius);
    }
    double flats = head.acrossFlatsMm().getAsDouble();
    return new Sweep(radius, hexagon(flats, radius, head.flatsAlongDegrees().getAsDouble()));
  }

  /**
   * Returns an open spanner that comes from one side and swings from grip to grip: its head on that
   * side, and the hexagon alone on the other.
   *
   * @param headRadiusMm half the width of its head
   * @param hexagonRadiusMm half the hexagon across corners
   * @param fromRadians the direction in which its handle lies
   */
  static Sweep openSpanner(double headRadiusMm, double hexagonRadiusMm, double fromRadians) {
    double step = 2 * Math.PI / SPANNER_PARTS;
    double outer = Math.max(headRadiusMm, hexagonRadiusMm) / Math.cos(step / 2);
    double inner = hexagonRadiusMm / Math.cos(step / 2);
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < SPANNER_PARTS; i++) {
      double off = (i + 0.5) * step - Math.PI;
      boolean head = Math.abs(off) < Math.PI / 2 + HALF_SWING + step / 2;
      points.add(onCircle(head ? outer : inner, fromRadians + off));
    }
    return new Sweep(outer, ring(points.stream().map(Sweep::coordinate).toList()));
  }

  /**
   * Returns the corners, anticlockwise about the origin, of a hexagon with flats along a direction;
   * corners that reach beyond the circle it sweeps are cut off at it, as chamfering does.
   */
  static List<Point> hexagon(double acrossFlatsMm, double sweepRadiusMm, double degrees) {
    double half = acrossFlatsMm / 2;
    double radius = Math.min(sweepRadiusMm, acrossFlatsMm / Math.sqrt(3));
    double reach = Math.acos(Math.min(1, half / radius));
    boolean sharp = reach > Math.PI / 6 - 1e-9;
    List<Point> corners = new ArrayList<>();
    for (int flat = 0; flat < 6; flat++) {
      double normal = Math.toRadians(degrees - 90) + flat * Math.PI / 3;
      if (!sharp) {
        corners.add(onCircle(radius, normal - reach));
      }
      corners.add(onCircle(radius, normal + (sharp ? Math.PI / 6 : reach)));
    }
    return corners;
  }

  private static Point onCircle(double radius, double angle) {
    return new Point(radius * Math.cos(angle), radius * Math.sin(angle));
  }

  boolean round() {
    return corners.isEmpty();
  }

  /** Returns its corners about the centre; none when it is round. */
  List<Point> corners() {
    return corners;
  }

  double radiusMm() {
    return radiusMm;
  }

  /** Returns how far it reaches in every direction at least. */
  double leastReachMm() {
    double least = radiusMm;
    for (int i = 0; i < corners.size(); i++) {
      Point next = corners.get((i + 1) % corners.size());
      least = Math.min(least, new Bar(null, corners.get(i), next, 0).distance(0, 0));
    }
    return least;
  }

  /** Returns a straight feature, or a point, that this and something more must keep off. */
  Feature grown(Label label, Point from, Point to, double extraMm) {
    if (round()) {
      return new Bar(label, from, to, radiusMm + extraMm);
    }
    List<Coordinate> sums = new ArrayList<>(2 * corners.size());
    for (Point corner : corners) {
      // What stands at an offset from the centre touches when the centre stands at the negative.
      sums.add(new Coordinate(from.xMm() - corner.xMm(), from.yMm() - corner.yMm()));
      sums.add(new Coordinate(to.xMm() - corner.xMm(), to.yMm() - corner.yMm()));
    }
    return new Hull(new Bar(label, from, to, 0), ring(sums), extraMm, radiusMm);
  }

  private static Coordinate coordinate(Point point) {
    return new Coordinate(point.xMm(), point.yMm());
  }

  /** Returns the convex hull's corners, anticlockwise. */
  private static List<Point> ring(List<Coordinate> places) {
    Coordinate[] ring =
        new ConvexHull(places.toArray(new Coordinate[0]), GEOMETRY)
            .getConvexHull()
            .getCoordinates();
    List<Point> points = new ArrayList<>();
    // Library hulls run clockwise and close on themselves.
    for (int i = ring.length - 1; i > 0; i--) {
      points.add(new Point(ring[i].x, ring[i].y));
    }
    return points;
  }
}
