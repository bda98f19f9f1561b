package org.fettlebench.fits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Outline.Corner;
import org.fettlebench.fits.SeatAnswer.Governing.Kind;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** What every feature promises, and its room against distances of a library. */
class FeatureLawsTest {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();
  private static final Label LABEL = new Label(Kind.EDGE, "edge", "head");
  private static final Point FROM = new Point(2, -3);
  private static final Point TO = new Point(9, 4);

  /** Chords of arcs are within 0.0005 mm of them. */
  private static final double BROKEN = 0.001;

  /** A feature and the library's shape of what is kept off, with the need beyond that. */
  private record Case(Feature feature, Geometry shape, double needMm) {}

  private static Geometry line(List<Point> places) {
    return AllowedCentres.line(places);
  }

  private static Side bow(Outline outline) {
    Outline.Edge edge = outline.edges().get(0);
    return new Bow(LABEL, edge.arc().orElseThrow().points(), edge.arc().orElseThrow(), 1.2);
  }

  private static Outline arc(Point through) {
    return Outline.ofCorners(
        List.of(
            Corner.sharp(FROM).withThrough(through),
            Corner.sharp(TO),
            Corner.sharp(new Point(-9, 20))));
  }

  /** The centres at which a hexagon of 5 mm across flats, set at 10 degrees, touches the bar. */
  private static Geometry grown() {
    Geometry points = GEOMETRY.createGeometryCollection();
    for (int i = 0; i < 6; i++) {
      double angle = Math.toRadians(10 + 60 * i + 30 - 90);
      double x = 5 / Math.sqrt(3) * Math.cos(angle);
      double y = 5 / Math.sqrt(3) * Math.sin(angle);
      for (Point end : List.of(FROM, TO)) {
        points = points.union(GEOMETRY.createPoint(new Coordinate(end.xMm() - x, end.yMm() - y)));
      }
    }
    return points.convexHull();
  }

  static Stream<Arguments> cases() {
    Side out = bow(arc(new Point(8, -2)));
    Side in = bow(arc(new Point(4, 2)));
    Sweep hexagon = Sweep.head(Bench.hexagon(5).withFlatsAlong(10));
    return Stream.of(
            Named.of("bar", new Case(new Bar(LABEL, FROM, TO, 1.2), line(List.of(FROM, TO)), 1.2)),
            Named.of("point", new Case(new Bar(LABEL, FROM, FROM, 1.2), line(List.of(FROM)), 1.2)),
            Named.of("arc bulging out", new Case(out, line(out.line()), 1.2)),
            Named.of("arc bulging in", new Case(in, line(in.line()), 1.2)),
            Named.of("hull", new Case(hexagon.grown(LABEL, FROM, TO, 0.4), grown(), 0.4)))
        .map(Arguments::of);
  }

  private static double away(Geometry shape, double x, double y) {
    Geometry point = GEOMETRY.createPoint(new Coordinate(x, y));
    double outside = shape.distance(point);
    return outside > 0 || shape.getDimension() < 2 ? outside : -shape.getBoundary().distance(point);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void roomIsTheLibrarysDistanceLessTheNeed(Case kind) {
    Random random = new Random(1);
    for (int i = 0; i < 400; i++) {
      double x = 30 * random.nextDouble() - 10;
      double y = 30 * random.nextDouble() - 14;
      double room = kind.feature().room(x, y);
      assertEquals(away(kind.shape(), x, y) - kind.needMm(), room, BROKEN, x + ", " + y);
      assertTrue(kind.feature().leastRoom(x, y) <= room + 1e-9);
      boolean fails =
          kind.feature().forbidden().contains(GEOMETRY.createPoint(new Coordinate(x, y)));
      if (Math.abs(room) > 0.01) {
        assertEquals(room < 0, fails, x + ", " + y);
      }
    }
  }

  /** The rise is a step of one towards more room; the nearest point lies at the distance told. */
  @ParameterizedTest
  @MethodSource("cases")
  void touchesTellTheRoomAndWhichWayItRises(Case kind) {
    Random random = new Random(2);
    double step = 1e-6;
    for (int i = 0; i < 400; i++) {
      double x = 30 * random.nextDouble() - 10;
      double y = 30 * random.nextDouble() - 14;
      Touch touch = kind.feature().touch(x, y);
      assertEquals(kind.feature().room(x, y), touch.roomMm(), 1e-9);
      assertEquals(1, Math.hypot(touch.riseX(), touch.riseY()), 1e-9);
      double up = kind.feature().room(x + step * touch.riseX(), y + step * touch.riseY());
      double aside = kind.feature().room(x - step * touch.riseY(), y + step * touch.riseX());
      if (Math.abs(touch.distanceMm()) > 0.05) {
        assertEquals(1, (up - touch.roomMm()) / step, 1e-3, x + ", " + y);
        assertEquals(0, (aside - touch.roomMm()) / step, 1e-3, x + ", " + y);
        assertEquals(touch.distanceMm(), Math.hypot(x - touch.nearX(), y - touch.nearY()), 1e-9);
      }
      assertEquals(
          0,
          line(kind.feature().line())
              .distance(GEOMETRY.createPoint(new Coordinate(touch.nearX(), touch.nearY()))),
          BROKEN);
    }
  }

  /** On the bar itself away from it is to its left, which is inwards for an outline. */
  @Test
  void onAFeatureItRisesInwards() {
    Touch touch = new Bar(LABEL, FROM, TO, 1).touch(5.5, 0.5);
    assertEquals(-Math.sqrt(0.5), touch.riseX(), 1e-9);
    assertEquals(Math.sqrt(0.5), touch.riseY(), 1e-9);
    assertEquals(-1, touch.roomMm(), 1e-9);
    assertEquals(1, new Bar(LABEL, FROM, FROM, 1).touch(2, -3).riseX());
    for (Point through : List.of(new Point(8, -2), new Point(4, 2))) {
      Touch on = bow(arc(through)).touch(through.xMm(), through.yMm());
      // The middle of the arc lies on the line square to its chord; the outline is to its left.
      assertTrue(on.riseX() < 0 && on.riseY() > 0, on.toString());
      assertEquals(-1.2, on.roomMm(), 1e-6);
    }
  }

  /** Inside an arc that bulges out a straight step overrates; followed round it never does. */
  @Test
  void insideAnArcTheBendIsFollowedRound() {
    Bow bow = (Bow) bow(arc(new Point(8, -2)));
    Bow bulgesIn = (Bow) bow(arc(new Point(4, 2)));
    assertTrue(bow.hollow() && !bulgesIn.hollow());
    Random random = new Random(3);
    int inside = 0;
    for (int i = 0; i < 500; i++) {
      double x = 12 * random.nextDouble();
      double y = 12 * random.nextDouble() - 6;
      Touch round = bow.inwards(x, y);
      assertTrue(round.roomMm() <= bow.room(x, y) + 1e-9, x + ", " + y);
      if (bow.hollowAt(x, y)) {
        inside++;
        assertEquals(bow.room(x, y), round.roomMm(), 1e-9);
        assertEquals(bow.touch(x, y).riseX(), round.riseX(), 1e-6);
        assertEquals(bow.touch(x, y).riseY(), round.riseY(), 1e-6);
        assertEquals(round.nearX(), bow.nearestX(x, y), 1e-9);
        assertEquals(round.nearY(), bow.nearestY(x, y), 1e-9);
        Touch there = bow.touch(x, y).shifted(0.1, -0.2);
        assertEquals(bow.inwards(x + 0.1, y - 0.2).roomMm(), there.roomMm(), 1e-9);
      }
      assertTrue(!bulgesIn.hollowAt(x, y));
    }
    assertTrue(inside > 50 && inside < 450, inside + " inside");
  }
}
