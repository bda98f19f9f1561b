package org.fettlebench.holes.internal;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fettlebench.fits.Outline.Edge;
import org.fettlebench.holes.correct.Direction;
import org.fettlebench.holes.correct.HoleException;
import org.fettlebench.measure.Point;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** A closed line with its edges counted from 1: edge n runs from corner n to the next. */
public final class Outline {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private final org.fettlebench.fits.Outline line;
  private final Polygon polygon;

  private Outline(org.fettlebench.fits.Outline line, Polygon polygon) {
    this.line = line;
    this.polygon = polygon;
  }

  /**
   * Takes a closed line, either way round.
   *
   * @throws HoleException if there are fewer than three places on it or it crosses or touches
   *     itself
   */
  public static Outline of(String name, org.fettlebench.fits.Outline line) {
    List<Point> places = line.points();
    if (places.size() < 3) {
      throw new HoleException(
          name + ": " + places.size() + " corners given, at least 3 are needed");
    }
    Coordinate[] ring = new Coordinate[places.size() + 1];
    for (int i = 0; i < ring.length; i++) {
      Point corner = places.get(i % places.size());
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
    return new Outline(line, polygon);
  }

  /** Returns how many edges there are, straight or not. */
  public int edges() {
    return line.corners().size();
  }

  /** Returns the line as a polygon. */
  public List<Point> points() {
    return line.points();
  }

  /** Returns where a corner is, counted from 1. */
  public Point corner(int number) {
    return line.corners().get(number - 1).at();
  }

  /** Returns the straight part of an edge; empty when the edge is an arc or all rounded away. */
  public Optional<Edge> straight(int edge) {
    String name = name(edge);
    return line.edges().stream()
        .filter(piece -> piece.name().equals(name) && piece.arc().isEmpty())
        .findFirst();
  }

  /** Returns the name of an edge for people, as seats say it. */
  public String name(int edge) {
    return "edge from corner " + edge + " to corner " + (edge % edges() + 1);
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

  /** Returns the direction square to a straight edge, out of the outline. */
  public Direction outward(Edge edge) {
    double dx = edge.to().xMm() - edge.from().xMm();
    double dy = edge.to().yMm() - edge.from().yMm();
    boolean anticlockwise = Orientation.isCCW(polygon.getCoordinates());
    return anticlockwise ? Direction.of(dy, -dx) : Direction.of(-dy, dx);
  }

  /**
   * Returns the first place on the line that one meets in a direction; empty when there is none.
   */
  public Optional<Point> met(Point from, Direction way) {
    double nearest = Double.POSITIVE_INFINITY;
    List<Point> places = line.points();
    for (int i = 0; i < places.size(); i++) {
      double distance = along(from, way, places.get(i), places.get((i + 1) % places.size()));
      if (distance >= 0 && distance < nearest) {
        nearest = distance;
      }
    }
    return Double.isFinite(nearest)
        ? Optional.of(from.moved(nearest * way.dx(), nearest * way.dy()))
        : Optional.empty();
  }

  /** Returns the name of the piece of the line nearest to a place. */
  public String nameAt(Point place) {
    return line.edges().stream()
        .min(Comparator.comparingDouble(piece -> distanceMm(piece, place)))
        .map(Edge::name)
        .orElse("");
  }

  private static double distanceMm(Edge piece, Point place) {
    List<Point> places =
        piece.arc().map(arc -> arc.points()).orElseGet(() -> List.of(piece.from(), piece.to()));
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i + 1 < places.size(); i++) {
      LineSegment chord =
          new LineSegment(
              places.get(i).xMm(),
              places.get(i).yMm(),
              places.get(i + 1).xMm(),
              places.get(i + 1).yMm());
      nearest = Math.min(nearest, chord.distance(new Coordinate(place.xMm(), place.yMm())));
    }
    return nearest;
  }

  /** Returns how far a ray goes until it meets a chord; not a number when it does not. */
  private static double along(Point from, Direction way, Point a, Point b) {
    double ex = b.xMm() - a.xMm();
    double ey = b.yMm() - a.yMm();
    double cross = way.dx() * ey - way.dy() * ex;
    double ax = a.xMm() - from.xMm();
    double ay = a.yMm() - from.yMm();
    double share = (ax * way.dy() - ay * way.dx()) / cross;
    return share >= 0 && share <= 1 ? (ax * ey - ay * ex) / cross : Double.NaN;
  }
}
