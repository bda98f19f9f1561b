package org.fettlebench.fits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Outline.Corner;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatAnswer.Governing;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Seats with everything on them, seen otherwise: turned, mirrored, scaled, listed in another order.
 * The number shown with a failure is the seed.
 */
class SeatMetamorphicTest {
  private static final double EXACT = 1e-6;
  private final SeatChecker seats = new SeatChecker();

  static IntStream seeds() {
    return IntStream.range(0, 24);
  }

  /** A flat with a rounded corner and an arc, walls, a hollow, a neighbour, less below. */
  private static SeatQuestion any(int seed) {
    Random random = new Random(seed);
    List<Corner> corners = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      double angle = Math.PI / 3 * (i + 0.4 * random.nextDouble());
      double radius = 12 + 6 * random.nextDouble();
      corners.add(Corner.sharp(new Point(radius * Math.cos(angle), radius * Math.sin(angle))));
    }
    corners.set(1, corners.get(1).withRounded(1.5));
    Point a = corners.get(3).at();
    Point b = corners.get(4).at();
    corners.set(
        3,
        corners
            .get(3)
            .withThrough(new Point(0.54 * (a.xMm() + b.xMm()), 0.54 * (a.yMm() + b.yMm()))));
    Point hollow = new Point(4 * random.nextDouble(), -3);
    Seat seat =
        Bench.seat(
                Outline.ofCorners(corners),
                new Point(8 * random.nextDouble() - 4, 8 * random.nextDouble() - 4))
            .withWalls(
                List.of(
                    new Seat.Wall("wall", corners.get(5).at(), corners.get(0).at(), 5, 0.8),
                    new Seat.Wall("step", new Point(-7, 7), new Point(-3, 9), 1, 0)))
            .withCavities(
                List.of(
                    Outline.of(List.of(hollow, hollow.moved(1.5, 0.2), hollow.moved(0.8, 1.1)))))
            .withNeighbours(
                List.of(
                    new Seat.Neighbour("stud", new Point(-6, -5 * random.nextDouble()), 1.2),
                    new Seat.Neighbour("nut", new Point(5, 6), 1)))
            .withUnderside(Optional.of(Outline.of(Bench.circle(11 - 3 * random.nextDouble(), 7))))
            .withLeastMetal(0.7);
    if (seed % 4 == 2) {
      // Bare, so that edges and what is below govern too.
      seat = seat.withCavities(List.of()).withNeighbours(List.of()).withWalls(List.of());
    }
    SeatedHead head = Bench.hexagon(2 + 3 * random.nextDouble());
    if (seed % 3 == 0) {
      head = head.withFlatsAlong(60 * random.nextDouble());
    }
    if (seed % 4 == 1) {
      head = head.withWasher(new SeatedHead.Washer("washer", 6, 0.5, ""));
    }
    return new SeatQuestion(seat, head, 1.5, 0.3, "a test");
  }

  private static Outline moved(Outline outline, UnaryOperator<Point> place, double scale) {
    return Outline.ofCorners(
        outline.corners().stream()
            .map(
                corner ->
                    new Corner(
                        place.apply(corner.at()),
                        corner.roundedMm() * scale,
                        corner.through().map(place)))
            .toList());
  }

  private static SeatQuestion moved(
      SeatQuestion question, UnaryOperator<Point> place, double scale, OptionalDouble flats) {
    Seat seat = question.seat();
    Seat other =
        new Seat(
            seat.name(),
            moved(seat.outline(), place, scale),
            seat.underside().map(below -> moved(below, place, scale)),
            seat.walls().stream()
                .map(
                    wall ->
                        new Seat.Wall(
                            wall.name(),
                            place.apply(wall.from()),
                            place.apply(wall.to()),
                            wall.heightMm() * scale,
                            wall.filletRadiusMm() * scale))
                .toList(),
            seat.cavities().stream().map(hollow -> moved(hollow, place, scale)).toList(),
            seat.neighbours().stream()
                .map(
                    each ->
                        new Seat.Neighbour(
                            each.name(), place.apply(each.centre()), each.radiusMm() * scale))
                .toList(),
            place.apply(seat.intended()),
            seat.leastMetalMm() * scale);
    SeatedHead head = question.head();
    SeatedHead same =
        new SeatedHead(
            head.title(),
            head.sweepDiameterMm() * scale,
            OptionalDouble.of(head.acrossFlatsMm().orElseThrow() * scale),
            OptionalDouble.of(head.heightMm().orElseThrow() * scale),
            flats,
            head.caveat());
    if (head.washer().isPresent()) {
      SeatedHead.Washer washer = head.washer().get();
      same =
          same.withWasher(
              new SeatedHead.Washer(
                  washer.title(), washer.diameterMm() * scale, washer.thicknessMm() * scale, ""));
    }
    return new SeatQuestion(
        other, same, question.holeDiameterMm() * scale, question.expectedErrorMm() * scale, "");
  }

  private void same(SeatQuestion question, SeatQuestion other, double scale) {
    SeatAnswer expected = seats.check(question);
    SeatAnswer found = seats.check(other);
    double exact = EXACT * scale;
    assertEquals(expected.verdict(), found.verdict());
    assertEquals(expected.allowanceAtIntendedMm() * scale, found.allowanceAtIntendedMm(), exact);
    assertEquals(expected.allowanceAtBestMm() * scale, found.allowanceAtBestMm(), exact);
    assertEquals(expected.governing().kind(), found.governing().kind());
    assertEquals(expected.governing().distanceMm() * scale, found.governing().distanceMm(), exact);
    assertEquals(expected.governing().neededMm() * scale, found.governing().neededMm(), exact);
    double area = AllowedRegionsArea.of(expected) * scale * scale;
    assertEquals(area, AllowedRegionsArea.of(found), 2e-3 * (area + scale * scale));
  }

  /** Area of the allowed centres. */
  private static final class AllowedRegionsArea {
    static double of(SeatAnswer answer) {
      return answer.allowed().stream()
          .mapToDouble(
              region ->
                  Math.abs(Plan.areaMm2(region.shell()))
                      - region.holes().stream()
                          .mapToDouble(hole -> Math.abs(Plan.areaMm2(hole)))
                          .sum())
          .sum();
    }
  }

  private static OptionalDouble flats(SeatQuestion question, UnaryOperator<Double> turned) {
    OptionalDouble flats = question.head().flatsAlongDegrees();
    return flats.isPresent()
        ? OptionalDouble.of(turned.apply(flats.getAsDouble()))
        : OptionalDouble.empty();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void turnedAndShifted(int seed) {
    SeatQuestion question = any(seed);
    double degrees = 17 + 31 * seed;
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    UnaryOperator<Point> turn =
        p -> new Point(p.xMm() * cos - p.yMm() * sin + 211, p.xMm() * sin + p.yMm() * cos - 47);
    same(question, moved(question, turn, 1, flats(question, f -> f + degrees)), 1);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void mirrored(int seed) {
    SeatQuestion question = any(seed);
    same(
        question,
        moved(question, p -> new Point(-p.xMm(), p.yMm()), 1, flats(question, f -> 180 - f)),
        1);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void tenTimesAsLarge(int seed) {
    SeatQuestion question = any(seed);
    same(
        question,
        moved(question, p -> new Point(10 * p.xMm(), 10 * p.yMm()), 10, flats(question, f -> f)),
        10);
  }

  /** Listed the other way round from another corner; walls, hollows and neighbours backwards. */
  @ParameterizedTest
  @MethodSource("seeds")
  void renumbered(int seed) {
    SeatQuestion question = any(seed);
    Seat seat = question.seat();
    Seat other =
        seat.withOutline(backwards(seat.outline(), seed % 6))
            .withUnderside(seat.underside().map(below -> backwards(below, seed % 7)))
            .withWalls(reversed(seat.walls()))
            .withCavities(seat.cavities().stream().map(each -> backwards(each, 1)).toList())
            .withNeighbours(reversed(seat.neighbours()));
    same(question, question.withSeat(other), 1);
  }

  /** An arc belongs to the corner from which the line goes on: backwards, to its other end. */
  private static Outline backwards(Outline outline, int start) {
    List<Corner> corners = outline.corners();
    List<Corner> back = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      int at = Math.floorMod(start - i, corners.size());
      Corner before = corners.get(Math.floorMod(at - 1, corners.size()));
      Corner corner = corners.get(at);
      back.add(new Corner(corner.at(), corner.roundedMm(), before.through()));
    }
    return Outline.ofCorners(back);
  }

  private static <T> List<T> reversed(List<T> list) {
    List<T> reversed = new ArrayList<>(list);
    Collections.reverse(reversed);
    return reversed;
  }

  /** Turned by a right angle the rose turns with it. */
  @ParameterizedTest
  @MethodSource("seeds")
  void theRoseTurnsWithTheSeat(int seed) {
    SeatQuestion question = any(seed);
    SeatQuestion turned =
        moved(question, p -> new Point(-p.yMm(), p.xMm()), 1, flats(question, f -> f + 90));
    List<OptionalDouble> rose =
        seats.rose(question, 8).stream().map(reach -> reach.allowanceMm()).toList();
    List<OptionalDouble> other =
        seats.rose(turned, 8).stream().map(reach -> reach.allowanceMm()).toList();
    for (int i = 0; i < 8; i++) {
      OptionalDouble one = rose.get(i);
      OptionalDouble two = other.get((i + 2) % 8);
      assertEquals(one.isPresent(), two.isPresent());
      assertEquals(one.orElse(0), two.orElse(0), EXACT);
    }
  }

  /** The seats above are no straw men: they are governed by all kinds of things, either way. */
  @Test
  void theSeatsTriedHaveEverythingGoverning() {
    Set<Governing.Kind> kinds = EnumSet.noneOf(Governing.Kind.class);
    int fouling = 0;
    for (int seed = 0; seed < 24; seed++) {
      SeatAnswer answer = seats.check(any(seed));
      kinds.add(answer.governing().kind());
      fouling += answer.allowanceAtIntendedMm() < 0 ? 1 : 0;
    }
    assertTrue(kinds.size() >= 4, kinds.toString());
    assertTrue(fouling > 3 && fouling < 21, fouling + " foul");
  }
}
