package org.fettlebench.fits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Outline.Corner;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** The room on seats with everything on them. The number shown with a failure is the seed. */
class RoomTest {
  private static final double EXACT = 1e-9;
  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  static IntStream seeds() {
    return IntStream.range(0, 12);
  }

  private static Seat seat(Random random) {
    List<Corner> corners = new ArrayList<>();
    for (int i = 0; i < 9; i++) {
      double angle = 2 * Math.PI / 9 * (i + 0.4 * random.nextDouble());
      double radius = 8 + 8 * random.nextDouble();
      corners.add(Corner.sharp(new Point(radius * Math.cos(angle), radius * Math.sin(angle))));
    }
    Point a = corners.get(8).at();
    Point b = corners.get(0).at();
    corners.set(
        8,
        corners
            .get(8)
            .withThrough(new Point(0.55 * (a.xMm() + b.xMm()), 0.55 * (a.yMm() + b.yMm()))));
    return Bench.seat(Outline.ofCorners(corners), new Point(1, 1))
        .withWalls(List.of(new Seat.Wall("wall", corners.get(2).at(), corners.get(3).at(), 5, 1)))
        .withCavities(List.of(Outline.of(Bench.corners(-3, -3, -1, -3, -2, -1))))
        .withNeighbours(List.of(new Seat.Neighbour("stud", new Point(4, 3), 1)))
        .withUnderside(Optional.of(Outline.of(Bench.circle(9, 8))));
  }

  private static Room room(Random random, int seed) {
    SeatedHead head = Bench.hexagon(3);
    return new Plan(Bench.ask(seat(random), seed % 2 == 0 ? head : head.withFlatsAlong(10 * seed)))
        .room();
  }

  /**
   * The least of what each feature says; a slope of one at most. Off the flat a set head's need
   * changes from edge to edge, so there only a round one is held to the slope.
   */
  @ParameterizedTest
  @MethodSource("seeds")
  void isTheLeastOfAllTouches(int seed) {
    Random random = new Random(seed);
    Room room = room(random, seed);
    for (int i = 0; i < 300; i++) {
      double x = 40 * random.nextDouble() - 20;
      double y = 40 * random.nextDouble() - 20;
      double here = room.at(x, y);
      assertEquals(here, room.governing(x, y).roomMm(), EXACT, x + ", " + y);
      double dx = random.nextGaussian();
      double dy = random.nextGaussian();
      boolean held = seed % 2 == 0 || here >= 0 && room.at(x + dx, y + dy) >= 0;
      double change = Math.abs(room.at(x + dx, y + dy) - here);
      assertTrue(!held || change <= Math.hypot(dx, dy) + EXACT, x + ", " + y);
    }
  }

  /** Off the flat the way back is the shortest: straight to the edge that is told. */
  @ParameterizedTest
  @MethodSource("seeds")
  void offTheFlatItRisesTowardsTheNearestEdge(int seed) {
    Random random = new Random(300 + seed);
    Outline outline = seat(random).outline();
    Room room = new Plan(Bench.ask(Bench.seat(outline, new Point(1, 1)), Bench.round(2))).room();
    int off = 0;
    for (int i = 0; i < 300; i++) {
      double x = 50 * random.nextDouble() - 25;
      double y = 50 * random.nextDouble() - 25;
      Touch touch = room.governing(x, y);
      if (touch.distanceMm() >= -0.01) {
        continue;
      }
      off++;
      double away = -touch.distanceMm();
      assertEquals(1, Math.hypot(touch.riseX(), touch.riseY()), EXACT);
      assertEquals(touch.nearX(), x + away * touch.riseX(), 1e-9);
      assertEquals(touch.nearY(), y + away * touch.riseY(), 1e-9);
      assertEquals(-away - 1, touch.roomMm(), EXACT);
    }
    assertTrue(off > 100, "only " + off + " off the flat");
  }

  /**
   * What can never govern is left out; no figure would show if it were not. Held to what was kept
   * when this was written, a twentieth above.
   */
  @Test
  void closeToAPlaceLittleIsLookedAt() {
    Random random = new Random(9);
    int kept = 0;
    for (int seed = 0; seed < 12; seed++) {
      Room room = room(random, seed);
      for (int i = 0; i < 60; i++) {
        double x = 40 * random.nextDouble() - 20;
        double y = 40 * random.nextDouble() - 20;
        Room close = room.near(x, y, 0.1 + 3 * random.nextDouble());
        kept += close.sides();
      }
    }
    assertTrue(kept <= 5_500, kept + " sides and obstacles kept");
  }

  /** What is left out close to a place governs nowhere close to it. */
  @ParameterizedTest
  @MethodSource("seeds")
  void closeToAPlaceFewFeaturesSayTheSame(int seed) {
    Random random = new Random(100 + seed);
    Room room = room(random, seed);
    int fewer = 0;
    int all = room.touches(1, 1).size();
    for (int i = 0; i < 60; i++) {
      double x = 40 * random.nextDouble() - 20;
      double y = 40 * random.nextDouble() - 20;
      double reach = 0.1 + 4 * random.nextDouble();
      Room close = room.near(x, y, reach);
      fewer += close.touches(x, y).size() < all ? 1 : 0;
      for (int j = 0; j < 20; j++) {
        double angle = 2 * Math.PI * random.nextDouble();
        double way = reach * random.nextDouble();
        double thereX = x + way * Math.cos(angle);
        double thereY = y + way * Math.sin(angle);
        assertEquals(room.at(thereX, thereY), close.at(thereX, thereY), EXACT);
        assertEquals(
            room.governing(thereX, thereY).roomMm(),
            close.governing(thereX, thereY).roomMm(),
            EXACT);
      }
    }
    assertTrue(fewer > 30, "only " + fewer + " of 60 look at less");
  }

  /** Inside by crossings and arcs cut off, against a library's polygon of the broken line. */
  @ParameterizedTest
  @MethodSource("seeds")
  void insideIsWhereTheLibrarySaysSo(int seed) {
    Random random = new Random(200 + seed);
    Seat seat = seat(random);
    SeatQuestion question = Bench.ask(seat, Bench.round(2));
    Room room = new Plan(question.withSeat(Bench.seat(seat.outline(), seat.intended()))).room();
    Polygon polygon = AllowedCentres.polygon(seat.outline().points());
    for (int i = 0; i < 500; i++) {
      double x = 36 * random.nextDouble() - 18;
      double y = 36 * random.nextDouble() - 18;
      var point = GEOMETRY.createPoint(new Coordinate(x, y));
      double distance = polygon.getExteriorRing().distance(point);
      double signed = polygon.contains(point) ? distance : -distance;
      assertEquals(signed - 1, room.at(x, y), 0.001, x + ", " + y);
    }
  }
}
