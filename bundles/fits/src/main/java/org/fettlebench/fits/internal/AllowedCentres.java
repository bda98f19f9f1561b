package org.fettlebench.fits.internal;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.fits.Arc;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatAnswer.Region;
import org.fettlebench.measure.Point;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/** The region of allowed centres as polygons, arcs broken finely; figures do not come from here. */
final class AllowedCentres {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  private AllowedCentres() {}

  static Polygon polygon(List<Point> corners) {
    Coordinate[] ring = new Coordinate[corners.size() + 1];
    for (int i = 0; i < ring.length; i++) {
      Point corner = corners.get(i % corners.size());
      ring[i] = new Coordinate(corner.xMm(), corner.yMm());
    }
    return GEOMETRY.createPolygon(ring);
  }

  /**
   * Returns the polygon of an outline, its arcs as tangents rather than chords: shrunk, tangents
   * stay tangents, so that even what little is left of a round flat is round.
   */
  private static Polygon polygon(Outline outline) {
    List<Point> corners = new ArrayList<>();
    for (Outline.Edge edge : outline.edges()) {
      corners.add(edge.from());
      edge.arc().ifPresent(arc -> corners.addAll(tangents(arc)));
    }
    return polygon(corners);
  }

  /** Returns where the tangents of an arc meet, at places so near that none is far off it. */
  private static List<Point> tangents(Arc arc) {
    double quarter = Math.PI / 2 / Tolerances.arcSegments(arc.radiusMm());
    int count = (int) Math.ceil(Math.abs(arc.sweepRadians()) / quarter);
    double reach = arc.radiusMm() / Math.cos(arc.sweepRadians() / count / 2);
    Arc outer = new Arc(arc.centre(), reach, arc.fromRadians(), arc.sweepRadians());
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      corners.add(outer.at((i + 0.5) / count));
    }
    return corners;
  }

  /** Returns a line, or the point that both its ends are. */
  static Geometry line(List<Point> places) {
    Coordinate[] line = new Coordinate[places.size()];
    for (int i = 0; i < line.length; i++) {
      line[i] = new Coordinate(places.get(i).xMm(), places.get(i).yMm());
    }
    return line[0].equals2D(line[line.length - 1])
        ? GEOMETRY.createPoint(line[0])
        : GEOMETRY.createLineString(line);
  }

  static Geometry of(Seat seat, Plan plan) {
    Geometry allowed = shrunk(seat, plan);
    List<Geometry> taken = new ArrayList<>();
    plan.obstacles().forEach(obstacle -> taken.add(obstacle.forbidden()));
    for (Outline cavity : seat.cavities()) {
      taken.add(grown(polygon(cavity), plan.holeNeedMm()));
    }
    return taken.isEmpty() ? allowed : allowed.difference(UnaryUnionOp.union(taken));
  }

  private static Geometry shrunk(Seat seat, Plan plan) {
    Outline outline = seat.outline();
    Geometry allowed;
    if (plan.bearing().round()) {
      allowed = within(outline, Math.max(plan.bearing().radiusMm(), plan.holeNeedMm()));
    } else {
      allowed = within(outline, plan.holeNeedMm()).difference(touched(plan));
    }
    if (seat.underside().isPresent()) {
      Geometry below = within(seat.underside().get(), plan.holeNeedMm());
      allowed = allowed.intersection(below);
    }
    return allowed;
  }

  private static Geometry within(Outline outline, double needMm) {
    Geometry left = grown(polygon(outline), -needMm);
    List<Geometry> exact =
        BluntCorners.edges(outline, needMm).stream()
            .map(edge -> grown(line(List.of(edge.from(), edge.to())), needMm))
            .toList();
    return exact.isEmpty() ? left : left.difference(UnaryUnionOp.union(exact));
  }

  /**
   * Returns a geometry grown all round, or shrunk by a negative figure. The library would first
   * leave out whatever strays less than a hundredth of that figure, which takes an arc's chords for
   * one straight side; here only as much as a boundary may be off.
   */
  static Geometry grown(Geometry geometry, double byMm) {
    double by = Math.abs(byMm);
    BufferParameters how = new BufferParameters(Tolerances.arcSegments(by));
    how.setSimplifyFactor(SeatAnswer.REGION_ERROR_MM / Math.max(by, SeatAnswer.REGION_ERROR_MM));
    return BufferOp.bufferOp(geometry, byMm, how);
  }

  private static Geometry touched(Plan plan) {
    List<Geometry> touched = new ArrayList<>();
    for (Feature edge : plan.bearingRing().features()) {
      touched.add(edge.forbidden());
    }
    return UnaryUnionOp.union(touched);
  }

  /** Returns the polygons of a geometry as plain points. */
  static List<Region> regions(Geometry geometry) {
    List<Region> regions = new ArrayList<>();
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      if (geometry.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
        List<List<Point>> holes = new ArrayList<>();
        for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
          holes.add(points(polygon.getInteriorRingN(hole)));
        }
        regions.add(new Region(points(polygon.getExteriorRing()), holes));
      }
    }
    return regions;
  }

  private static List<Point> points(LinearRing ring) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < ring.getNumPoints() - 1; i++) {
      points.add(new Point(ring.getCoordinateN(i).x, ring.getCoordinateN(i).y));
    }
    return points;
  }
}
