package org.fettlebench.fits.internal;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Sketch;
import org.fettlebench.drawing.Tone;
import org.fettlebench.fits.Seat;
import org.fettlebench.measure.Point;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/** A wall as cut just above the flat: a hatched band behind its foot, and its fillet's edge. */
final class WallShape {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private final Seat.Wall wall;
  private final Point behind;
  private final double thicknessMm;

  /**
   * Makes the shape.
   *
   * @param wall the wall
   * @param front a point in front of it, where the head is
   * @param thicknessMm how thick to draw it, as its true thickness is not known
   */
  WallShape(Seat.Wall wall, Point front, double thicknessMm) {
    this.wall = wall;
    this.thicknessMm = thicknessMm;
    double length = wall.from().distanceMm(wall.to());
    double nx = -(wall.to().yMm() - wall.from().yMm()) / length;
    double ny = (wall.to().xMm() - wall.from().xMm()) / length;
    double side = (front.xMm() - wall.from().xMm()) * nx + (front.yMm() - wall.from().yMm()) * ny;
    double way = side > 0 ? -1 : 1;
    this.behind = new Point(nx * way, ny * way);
  }

  void draw(Sketch sketch, Seat seat) {
    List<Point> band = band();
    sketch.area(Tone.WALL, band, List.of());
    sketch.line(LineKind.OUTLINE, wall.from(), wall.to());
    sketch.path(LineKind.OUTLINE, List.of(wall.from(), band.get(3), band.get(2), wall.to()), false);
    double reach = Tiers.filletReachMm(wall, 0);
    if (reach > 0) {
      fillet(sketch, seat, reach);
    }
  }

  /** Returns the corners of what is drawn of the wall. */
  List<Point> band() {
    return List.of(
        wall.from(), wall.to(), off(wall.to(), thicknessMm), off(wall.from(), thicknessMm));
  }

  /** Returns where the wall's name stands. */
  Point nameAt() {
    Point middle = middle(wall.from(), wall.to());
    return off(middle, thicknessMm);
  }

  Item.Side nameSide() {
    return side(behind.xMm(), behind.yMm());
  }

  /** Returns the side of a point towards which a direction goes most. */
  static Item.Side side(double dx, double dy) {
    if (Math.abs(dx) > Math.abs(dy)) {
      return dx > 0 ? Item.Side.RIGHT : Item.Side.LEFT;
    }
    return dy > 0 ? Item.Side.ABOVE : Item.Side.BELOW;
  }

  static Point middle(Point a, Point b) {
    return new Point((a.xMm() + b.xMm()) / 2, (a.yMm() + b.yMm()) / 2);
  }

  private Point off(Point point, double mm) {
    return point.moved(behind.xMm() * mm, behind.yMm() * mm);
  }

  private void fillet(Sketch sketch, Seat seat, double reach) {
    Geometry line =
        GEOMETRY
            .createLineString(
                new Coordinate[] {
                  coordinate(off(wall.from(), -reach)), coordinate(off(wall.to(), -reach))
                })
            .intersection(AllowedCentres.polygon(seat.outline().points()));
    lines(sketch, LineKind.THIN, line);
  }

  private static void lines(Sketch sketch, LineKind kind, Geometry geometry) {
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      if (geometry.getGeometryN(i) instanceof LineString line && line.getLength() > 0) {
        List<Point> points = new ArrayList<>();
        for (Coordinate at : line.getCoordinates()) {
          points.add(new Point(at.x, at.y));
        }
        sketch.path(kind, points, false);
      }
    }
  }

  private static Coordinate coordinate(Point point) {
    return new Coordinate(point.xMm(), point.yMm());
  }
}
