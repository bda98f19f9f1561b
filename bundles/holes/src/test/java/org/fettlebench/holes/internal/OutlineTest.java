package org.fettlebench.holes.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.fettlebench.holes.correct.Direction;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

class OutlineTest {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  static IntStream seeds() {
    return IntStream.range(0, 30);
  }

  private static List<Point> star(Random random) {
    List<Point> corners = new ArrayList<>();
    int count = 3 + random.nextInt(9);
    for (int i = 0; i < count; i++) {
      double angle = 2 * Math.PI * (i + 0.5 * random.nextDouble()) / count;
      double radius = 4 + 9 * random.nextDouble();
      corners.add(new Point(radius * Math.cos(angle), radius * Math.sin(angle)));
    }
    return corners;
  }

  private static Outline outline(List<Point> corners) {
    return Outline.of("face", org.fettlebench.fits.Outline.of(corners));
  }

  /** The first place met in a direction, against the library's crossings of a long line. */
  @ParameterizedTest
  @MethodSource("seeds")
  void theFirstPlaceMetIsTheNearestCrossingOfTheLibrary(int seed) {
    Random random = new Random(seed);
    List<Point> corners = star(random);
    Outline outline = outline(corners);
    List<Coordinate> ring = new ArrayList<>();
    corners.forEach(at -> ring.add(new Coordinate(at.xMm(), at.yMm())));
    ring.add(ring.get(0));
    Geometry line = GEOMETRY.createLineString(ring.toArray(Coordinate[]::new));
    for (int i = 0; i < 40; i++) {
      Point from = new Point(24 * random.nextDouble() - 12, 24 * random.nextDouble() - 12);
      Direction way = new Direction(359.99 * random.nextDouble());
      Coordinate start = new Coordinate(from.xMm(), from.yMm());
      Coordinate end = new Coordinate(from.xMm() + 99 * way.dx(), from.yMm() + 99 * way.dy());
      Geometry met = GEOMETRY.createLineString(new Coordinate[] {start, end}).intersection(line);
      Optional<Point> found = outline.met(from, way);
      assertEquals(!met.isEmpty(), found.isPresent());
      if (found.isPresent()) {
        Geometry point = GEOMETRY.createPoint(start);
        assertEquals(met.distance(point), found.get().distanceMm(from), 1e-9);
        assertEquals(
            0,
            line.distance(
                GEOMETRY.createPoint(new Coordinate(found.get().xMm(), found.get().yMm()))),
            1e-9);
      }
    }
  }

  /** Edges look outwards whichever way round the corners run. */
  @ParameterizedTest
  @MethodSource("seeds")
  void edgesLookOutwards(int seed) {
    List<Point> corners = star(new Random(seed));
    if (seed % 2 == 0) {
      java.util.Collections.reverse(corners);
    }
    Outline outline = outline(corners);
    for (int edge = 1; edge <= outline.edges(); edge++) {
      var straight = outline.straight(edge).orElseThrow();
      Direction out = outline.outward(straight);
      Point middle =
          new Point(
              (straight.from().xMm() + straight.to().xMm()) / 2,
              (straight.from().yMm() + straight.to().yMm()) / 2);
      assertTrue(!outline.covers(middle.moved(1e-3 * out.dx(), 1e-3 * out.dy())));
      assertTrue(outline.covers(middle.moved(-1e-3 * out.dx(), -1e-3 * out.dy())));
      assertEquals(outline.name(edge), outline.nameAt(middle));
    }
  }

  @Test
  void whatStandsBetweenHidesTheOther() {
    Outline notched =
        outline(
            List.of(
                new Point(0, 0),
                new Point(10, 0),
                new Point(10, 10),
                new Point(5, 4),
                new Point(0, 10)));
    assertTrue(notched.sees(new Point(1, 3), new Point(9, 3), 1e-6));
    assertTrue(!notched.sees(new Point(1, 7), new Point(9, 7), 1e-6));
    // Of the line 2 is outside, between the notch's sides at 5 - 5/6 and 5 + 5/6 it is 1.67.
    assertTrue(notched.sees(new Point(3, 5), new Point(7, 5), 1.7));
    assertTrue(!notched.sees(new Point(3, 5), new Point(7, 5), 1.6));
  }
}
