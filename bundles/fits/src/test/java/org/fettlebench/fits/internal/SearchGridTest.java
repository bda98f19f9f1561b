package org.fettlebench.fits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Outline.Corner;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;

/**
 * The searches against plain grids over the whole plane of the seat. The room has slope 1 at most,
 * so a grid of step s says what it is anywhere within s / sqrt 2: the searches must find no less
 * than the grid and cannot find more than that beyond it.
 */
class SearchGridTest {
  private static final double STEP = 0.5;
  private static final double HALF_DIAGONAL = STEP / Math.sqrt(2);
  private static final double EXACT = 1e-6;

  private static List<Point> grid() {
    List<Point> places = new ArrayList<>();
    for (double x = -21; x <= 21; x += STEP) {
      for (double y = -21; y <= 21; y += STEP) {
        places.add(new Point(x, y));
      }
    }
    return places;
  }

  /** A star of many bays, some corners of it rounded, with studs on it. */
  private static SeatQuestion star(Random random) {
    int count = 5 + random.nextInt(20);
    List<Point> outline = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double angle = 2 * Math.PI * (i + 0.6 * random.nextDouble()) / count;
      double radius = 8 + 12 * random.nextDouble();
      outline.add(new Point(radius * Math.cos(angle), radius * Math.sin(angle)));
    }
    List<Corner> corners = outline.stream().map(Corner::sharp).toList();
    Outline flat =
        random.nextBoolean()
            ? Outline.of(outline)
            : Outline.ofCorners(corners).withCorner(0, corners.get(0).withRounded(0.3));
    List<Seat.Neighbour> studs = new ArrayList<>();
    for (int i = random.nextInt(6); i > 0; i--) {
      Point at = new Point(14 * random.nextDouble() - 7, 14 * random.nextDouble() - 7);
      studs.add(new Seat.Neighbour("stud " + i, at, 0.5 + random.nextDouble()));
    }
    Point intended = new Point(36 * random.nextDouble() - 18, 36 * random.nextDouble() - 18);
    Seat seat = Bench.seat(flat, intended).withNeighbours(studs);
    return Bench.ask(seat, Bench.hexagon(1 + 3 * random.nextDouble()));
  }

  private static BestCentre.Spot best(SeatQuestion question, Room room) {
    Seat seat = question.seat();
    return new BestCentre(room, Box.of(seat.outline().points()), seat.intended()).find();
  }

  @Test
  void noPlaceHasMoreRoomThanTheBest() {
    Random random = new Random(11);
    for (int trial = 0; trial < 120; trial++) {
      SeatQuestion question = star(random);
      Room room = new Plan(question).room();
      BestCentre.Spot found = best(question, room);
      double most = Double.NEGATIVE_INFINITY;
      for (Point at : grid()) {
        most = Math.max(most, room.at(at.xMm(), at.yMm()));
      }
      assertTrue(found.roomMm() >= most - EXACT, found + " against " + most);
      assertTrue(found.roomMm() <= most + HALF_DIAGONAL, found + " against " + most);
      assertEquals(room.at(found.x(), found.y()), found.roomMm(), EXACT);
    }
  }

  @Test
  void noPlaceNearTheBestHasMoreRoom() {
    Random random = new Random(12);
    for (int trial = 0; trial < 120; trial++) {
      SeatQuestion question = star(random);
      Room room = new Plan(question).room();
      BestCentre.Spot found = best(question, room);
      for (double away = 1e-4; away < 2; away *= 3) {
        for (int i = 0; i < 60; i++) {
          double angle = 2 * Math.PI * i / 60;
          double there =
              room.at(found.x() + away * Math.cos(angle), found.y() + away * Math.sin(angle));
          assertTrue(there <= found.roomMm() + EXACT, found + ", " + away + " at " + angle);
        }
      }
    }
  }

  @Test
  void noAllowedPlaceIsNearerThanTheNearest() {
    Random random = new Random(13);
    int asked = 0;
    for (int trial = 0; trial < 250; trial++) {
      SeatQuestion question = star(random);
      Room room = new Plan(question).room();
      BestCentre.Spot best = best(question, room);
      Point at = question.seat().intended();
      if (room.at(at.xMm(), at.yMm()) >= 0 || best.roomMm() <= 0) {
        continue;
      }
      asked++;
      Point found = new NearestAllowed(room, at).find(best.point());
      double away = found.distanceMm(at);
      assertTrue(room.at(found.xMm(), found.yMm()) > -EXACT, found.toString());
      double most = best.point().distanceMm(at);
      double least = most;
      for (Point place : grid()) {
        double there = room.at(place.xMm(), place.yMm());
        if (there >= 0) {
          most = Math.min(most, place.distanceMm(at));
        }
        if (there >= -HALF_DIAGONAL) {
          least = Math.min(least, place.distanceMm(at) - HALF_DIAGONAL);
        }
      }
      assertTrue(away <= most + EXACT, found + " for " + at + ": " + away + " against " + most);
      assertTrue(away >= least - EXACT, found + " for " + at + ": " + away + " against " + least);
      nothingNearer(room, at, away);
    }
    assertTrue(asked > 60, asked + " asked");
  }

  /** Looks along rays about the failing place: none meets an allowed one before that distance. */
  private static void nothingNearer(Room room, Point at, double away) {
    for (int i = 0; i < 360; i++) {
      double angle = Math.toRadians(i);
      for (int part = 1; part <= 8; part++) {
        double far = (away - 1e-5) * (1 - (part - 1) * (part - 1) / 64.0);
        double there = room.at(at.xMm() + far * Math.cos(angle), at.yMm() + far * Math.sin(angle));
        assertTrue(there < EXACT, at + ": allowed at " + far + " of " + away + ", " + i);
      }
    }
  }
}
