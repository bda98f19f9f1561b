package org.fettlebench.holes.internal;

import java.util.List;
import java.util.OptionalInt;
import org.fettlebench.holes.correct.Direction;
import org.fettlebench.holes.correct.HoleException;
import org.fettlebench.measure.Point;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** A closed outline with its edges counted from 1: edge n runs from corner n to the next. */
public final class Outline {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private final List<Point> corners;
  private final Polygon polygon;

  private Outline(List<Point> corners, Polygon polygon) {
    this.corners = corners;
    this.polygon = polygon;
  }

  /**
   * Takes corners in order, either way round.
   *
   * @throws HoleException if there are fewer than three or the outline crosses or touches itself
   */
  public static Outline of(String name, List<Point> corners) {
    if (corners.size() < 3) {
      throw new HoleException(
          name + ": " + corners.size() + " corners given, at least 3 are needed");
    }
    Coordinate[] ring = new Coordinate[corners.size() + 1];
    for (int i = 0; i < ring.length; i++) {
      Point corner = corners.get(i % corners.size());
      ring[i] = new Coordinate(corner.xMm(), corner.yMm());
    }
    Polygon polygon = FACTORY.createPolygon(ring);
    TopologyValidationError error = new IsValidOp(polygon).getValidationError();
    if (error != null) {
      throw new HoleException(
          name
              + " crosses or touches itself near x "
              + error.getCoordinate().x
              + " mm, y "
              + error.getCoordinate().y
              + " mm; list the corners in the order in which one meets them going round");
    }
    return new Outline(List.copyOf(corners), polygon);
  }

  /** Returns how many edges there are. */
  public int edges() {
    return corners.size();
  }

  /** Returns the first corner of an edge. */
  public Point start(int edge) {
    return corners.get(edge - 1);
  }

  /** Returns the second corner of an edge. */
  public Point end(int edge) {
    return corners.get(edge % corners.size());
  }

  /** Returns the name of an edge for people, as seats say it. */
  public String name(int edge) {
    return "edge from corner " + edge + " to corner " + (edge % corners.size() + 1);
  }

  /** Returns whether a place lies inside or on the outline. */
  public boolean covers(Point at) {
    return polygon.covers(FACTORY.createPoint(new Coordinate(at.xMm(), at.yMm())));
  }

  /** Returns whether the straight line between two places stays inside, but for rounding. */
  public boolean sees(Point from, Point to, double slackMm) {
    LineString line =
        FACTORY.createLineString(
            new Coordinate[] {
              new Coordinate(from.xMm(), from.yMm()), new Coordinate(to.xMm(), to.yMm())
            });
    return line.difference(polygon).getLength() <= slackMm;
  }

  /** Returns the distance from a place to the nearest edge. */
  public double toEdgeMm(Point at) {
    return polygon
        .getExteriorRing()
        .distance(FACTORY.createPoint(new Coordinate(at.xMm(), at.yMm())));
  }

  /** Returns the box around it. */
  public Envelope box() {
    return polygon.getEnvelopeInternal();
  }

  /** Returns the direction square to an edge, out of the outline. */
  public Direction outward(int edge) {
    double dx = end(edge).xMm() - start(edge).xMm();
    double dy = end(edge).yMm() - start(edge).yMm();
    boolean anticlockwise =
        org.locationtech.jts.algorithm.Orientation.isCCW(polygon.getCoordinates());
    return anticlockwise ? Direction.of(dy, -dx) : Direction.of(-dy, dx);
  }

  /**
   * Returns the first edge that one meets from a place in a direction; empty when there is none.
   */
  public OptionalInt met(Point from, Direction way) {
    double nearest = Double.POSITIVE_INFINITY;
    OptionalInt met = OptionalInt.empty();
    for (int edge = 1; edge <= edges(); edge++) {
      double distance = along(from, way, edge);
      if (distance >= 0 && distance < nearest) {
        nearest = distance;
        met = OptionalInt.of(edge);
      }
    }
    return met;
  }

  /** Returns how far a ray goes until it meets an edge; not a number when it does not. */
  private double along(Point from, Direction way, int edge) {
    Point a = start(edge);
    double ex = end(edge).xMm() - a.xMm();
    double ey = end(edge).yMm() - a.yMm();
    double cross = way.dx() * ey - way.dy() * ex;
    double ax = a.xMm() - from.xMm();
    double ay = a.yMm() - from.yMm();
    double share = (ax * way.dy() - ay * way.dx()) / cross;
    return share >= 0 && share <= 1 ? (ax * ey - ay * ex) / cross : Double.NaN;
  }
}
