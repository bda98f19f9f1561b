package org.fettlebench.holes.internal.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.fettlebench.fits.SeatAnswer.Region;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;

class InsideTest {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  static IntStream seeds() {
    return IntStream.range(0, 25);
  }

  private static List<Point> star(Random random, int corners, double least, double most) {
    List<Point> star = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * i / corners;
      double radius = least + (most - least) * random.nextDouble();
      star.add(new Point(radius * Math.cos(angle), radius * Math.sin(angle)));
    }
    return star;
  }

  private static LinearRing ring(List<Point> points) {
    List<Coordinate> ring = new ArrayList<>();
    points.forEach(each -> ring.add(new Coordinate(each.xMm(), each.yMm())));
    ring.add(ring.get(0));
    return GEOMETRY.createLinearRing(ring.toArray(Coordinate[]::new));
  }

  /** The library looks at every edge, this class at those of a band. */
  @ParameterizedTest
  @MethodSource("seeds")
  void agreesWithTheLibrary(int seed) {
    Random random = new Random(seed);
    List<Point> shell = star(random, 3 + random.nextInt(150), 3, 9);
    List<Point> hole = star(random, 3 + random.nextInt(9), 0.2, 1.5);
    Inside inside = new Inside(List.of(new Region(shell, List.of(hole))));
    Geometry area = GEOMETRY.createPolygon(ring(shell), new LinearRing[] {ring(hole)});

    int held = 0;
    for (int i = 0; i < 4_000; i++) {
      double x = 20 * random.nextDouble() - 10;
      double y = 20 * random.nextDouble() - 10;
      boolean expected =
          SimplePointInAreaLocator.locate(new Coordinate(x, y), area) == Location.INTERIOR;
      assertEquals(expected, inside.holds(x, y), x + ", " + y);
      held += expected ? 1 : 0;
    }
    assertTrue(held > 100 && held < 3_900, held + " inside");
  }

  /** Parts that share edges and corners leave no gap and nothing twice. */
  @Test
  void everyPlaceOfATiledFloorIsInJustOneTile() {
    List<Inside> tiles = new ArrayList<>();
    for (int column = 0; column < 3; column++) {
      for (int row = 0; row < 3; row++) {
        Point low = new Point(column, row);
        Point right = low.moved(1, 0);
        Point up = low.moved(0, 1);
        tiles.add(new Inside(List.of(new Region(List.of(low, right, up), List.of()))));
        tiles.add(new Inside(List.of(new Region(List.of(up, right, low.moved(1, 1)), List.of()))));
      }
    }
    for (int i = 1; i < 24; i++) {
      for (int j = 1; j < 24; j++) {
        double x = i / 8.0;
        double y = j / 8.0;
        assertEquals(1, tiles.stream().filter(tile -> tile.holds(x, y)).count(), x + ", " + y);
      }
    }
  }

  @Test
  void nothingIsInsideOfNothing() {
    assertFalse(new Inside(List.of()).holds(0, 0));
    Inside square =
        new Inside(
            List.of(
                new Region(
                    List.of(new Point(-1, -1), new Point(1, -1), new Point(1, 1), new Point(-1, 1)),
                    List.of())));
    assertTrue(square.holds(0, 0));
    for (double far : new double[] {1.001, 7, 1e9, Double.POSITIVE_INFINITY}) {
      assertFalse(square.holds(far, 0));
      assertFalse(square.holds(-far, 0));
      assertFalse(square.holds(0, far));
      assertFalse(square.holds(0, -far));
    }
    assertFalse(square.holds(0, Double.NaN));
    assertFalse(square.holds(Double.NaN, 0));
  }
}
