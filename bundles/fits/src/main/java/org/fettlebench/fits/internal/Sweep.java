package org.fettlebench.fits.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatAnswer.Governing.Kind;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.measure.Point;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** The room a head takes about its centre: a circle, or a hexagon when it is set. */
final class Sweep {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private static final Label NO_LABEL = new Label(Kind.EDGE, "");

  private final double radiusMm;
  private final List<Point> corners;

  private Sweep(double radiusMm, List<Point> corners) {
    this.radiusMm = radiusMm;
    this.corners = corners;
  }

  static Sweep of(SeatedHead head) {
    double radius = head.sweepDiameterMm() / 2;
    OptionalDouble flats = head.acrossFlatsMm();
    if (flats.isEmpty() || head.flatsAlongDegrees().isEmpty()) {
      return new Sweep(radius, List.of());
    }
    return new Sweep(
        radius, hexagon(flats.getAsDouble(), radius, head.flatsAlongDegrees().getAsDouble()));
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

  double radiusMm() {
    return radiusMm;
  }

  /** Returns how far the head reaches in every direction at least. */
  double leastReachMm() {
    if (round()) {
      return radiusMm;
    }
    double least = radiusMm;
    for (int i = 0; i < corners.size(); i++) {
      Point next = corners.get((i + 1) % corners.size());
      least = Math.min(least, new Bar(NO_LABEL, corners.get(i), next, 0).distance(0, 0));
    }
    return least;
  }

  /** Returns a straight feature that the head, and something more, must keep off. */
  Feature grown(Label label, Point from, Point to, double extraMm) {
    if (round()) {
      return new Bar(label, from, to, radiusMm + extraMm);
    }
    return new Hull(new Bar(label, from, to, 0), hull(from, to), extraMm, radiusMm);
  }

  /** Returns the same as an area of centres that fail. */
  Geometry forbidden(Point from, Point to, double extraMm) {
    if (round()) {
      return line(from, to).buffer(radiusMm + extraMm, Tolerances.ARC_SEGMENTS);
    }
    return new ConvexHull(sums(from, to), GEOMETRY)
        .getConvexHull()
        .buffer(extraMm, Tolerances.ARC_SEGMENTS);
  }

  /** Returns the same for many features at once that all need as much. */
  Geometry forbidden(List<Seat.Wall> walls, double extraMm) {
    List<Geometry> areas = new ArrayList<>();
    for (Seat.Wall wall : walls) {
      areas.add(
          round() ? line(wall.from(), wall.to()) : forbidden(wall.from(), wall.to(), extraMm));
    }
    Geometry all = GEOMETRY.buildGeometry(areas);
    return round() ? all.buffer(radiusMm + extraMm, Tolerances.ARC_SEGMENTS) : all.union();
  }

  private static Geometry line(Point from, Point to) {
    Coordinate a = new Coordinate(from.xMm(), from.yMm());
    Coordinate b = new Coordinate(to.xMm(), to.yMm());
    return a.equals2D(b)
        ? GEOMETRY.createPoint(a)
        : GEOMETRY.createLineString(new Coordinate[] {a, b});
  }

  private List<Point> hull(Point from, Point to) {
    Coordinate[] ring = new ConvexHull(sums(from, to), GEOMETRY).getConvexHull().getCoordinates();
    List<Point> points = new ArrayList<>();
    // Library hulls run clockwise and close on themselves.
    for (int i = ring.length - 1; i > 0; i--) {
      points.add(new Point(ring[i].x, ring[i].y));
    }
    return points;
  }

  private Coordinate[] sums(Point from, Point to) {
    Coordinate[] sums = new Coordinate[2 * corners.size()];
    for (int i = 0; i < corners.size(); i++) {
      Point corner = corners.get(i);
      sums[2 * i] = new Coordinate(from.xMm() + corner.xMm(), from.yMm() + corner.yMm());
      sums[2 * i + 1] = new Coordinate(to.xMm() + corner.xMm(), to.yMm() + corner.yMm());
    }
    return sums;
  }
}
