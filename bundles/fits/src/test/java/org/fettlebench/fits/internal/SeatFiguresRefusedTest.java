package org.fettlebench.fits.internal;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Outline.Corner;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatException;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Spanner;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every figure of a seat question that is out of range is refused by its name and value. */
class SeatFiguresRefusedTest {
  private static final Point MIDDLE = new Point(5, 5);
  private static final Outline SQUARE = Outline.of(Bench.rectangle(10, 10));
  private static final Outline TWO = Outline.of(Bench.corners(1, 1, 2, 2));
  private static final double FAR = 100_001;

  private static Seat seat() {
    return Bench.seat(SQUARE, MIDDLE);
  }

  private static SeatedHead head() {
    return Bench.hexagon(4);
  }

  private static SeatedHead high(double heightMm) {
    return new SeatedHead(
        "nut", 4.6, OptionalDouble.of(4), OptionalDouble.of(heightMm), OptionalDouble.empty(), "");
  }

  private static SeatedHead washed(double diameter, double thickness) {
    return head().withWasher(new SeatedHead.Washer("washer", diameter, thickness, ""));
  }

  private static SeatedHead turned(double diameter, double height, double lift) {
    return head()
        .withSpanner(
            new Spanner(
                Spanner.Kind.RING, "ring", diameter, OptionalDouble.of(height), lift, "a test"));
  }

  private static Seat stud(double x, double radius, double height) {
    return seat()
        .withNeighbours(
            List.of(
                new Seat.Neighbour("stud", new Point(x, 1), radius, OptionalDouble.of(height))));
  }

  private static Seat wall(double x, double y) {
    return seat().withWalls(List.of(new Seat.Wall("rim", new Point(x, 0), new Point(10, y), 5, 0)));
  }

  private static SeatQuestion ask(Seat seat) {
    return Bench.ask(seat, head());
  }

  private static SeatQuestion ask(SeatedHead head) {
    return Bench.ask(seat(), head);
  }

  private static Outline bulging(Point through, Point... corners) {
    return Outline.ofCorners(
        Stream.of(corners)
            .map(Corner::sharp)
            .map(corner -> corner.at().equals(corners[0]) ? corner.withThrough(through) : corner)
            .toList());
  }

  static Stream<Arguments> refusals() {
    double most = 100_000;
    return Stream.of(
        Arguments.of("underside: 2 corners given", ask(seat().withUnderside(Optional.of(TWO)))),
        Arguments.of("hollow 2: 2 corners given", ask(seat().withCavities(List.of(SQUARE, TWO)))),
        Arguments.of(
            "intended centre, x 100001 mm is outside -100000 mm to 100000 mm",
            ask(seat().withIntended(new Point(FAR, 0)))),
        Arguments.of("intended centre, y -100001 mm", ask(seat().withIntended(new Point(0, -FAR)))),
        Arguments.of(
            "metal wanted around the hole -0.1 mm is outside 0 to 100000 mm",
            ask(seat().withLeastMetal(-0.1))),
        Arguments.of(
            "outline, corner 2, x 100001 mm",
            ask(Bench.seat(Bench.corners(0, 0, FAR, 0, 0, 9), MIDDLE))),
        Arguments.of(
            "outline, corner 3, y 100001 mm",
            ask(Bench.seat(Bench.corners(0, 0, 9, 0, 0, FAR), MIDDLE))),
        Arguments.of("neighbour \"stud\", x 100001 mm", ask(stud(FAR, 1, 1))),
        Arguments.of("neighbour \"stud\", radius 0 mm is not above 0", ask(stud(1, 0, 1))),
        Arguments.of("neighbour \"stud\", height 0 mm is not above 0", ask(stud(1, 1, 0))),
        Arguments.of("wall \"rim\", first end, x -100001 mm", ask(wall(-FAR, 9))),
        Arguments.of("wall \"rim\", second end, y 100001 mm", ask(wall(0, FAR))),
        Arguments.of("nut: height 0 mm is not above 0", ask(high(0))),
        Arguments.of("hexagon: washer face 0 mm is not above 0", ask(head().withBearing(0))),
        Arguments.of("washer: outside diameter 0 mm is not above 0", ask(washed(0, 1))),
        Arguments.of("washer: thickness 0 mm is not above 0", ask(washed(9, 0))),
        Arguments.of("ring: size of its head 0 mm is not above 0", ask(turned(0, 1, 0))),
        Arguments.of("ring: height 0 mm is not above 0", ask(turned(9, 0, 0))),
        Arguments.of("ring: lift above the flat -0.5 mm is outside 0", ask(turned(9, 1, -0.5))),
        Arguments.of(
            "nut: across flats 0 mm is not above 0",
            ask(
                new SeatedHead(
                    "nut",
                    5,
                    OptionalDouble.of(0),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    ""))),
        Arguments.of(
            "hexagon: direction of the flats is not a number",
            ask(head().withFlatsAlong(Double.NaN))),
        Arguments.of(
            "hole diameter 100001 mm is not above 0", new SeatQuestion(seat(), head(), FAR, 0, "")),
        Arguments.of(
            "outline, arcs, x 10",
            ask(
                Bench.seat(
                    bulging(
                        new Point(most + 50, 50),
                        new Point(most, 0),
                        new Point(most, 100),
                        new Point(most - 90, 50)),
                    MIDDLE))),
        Arguments.of(
            "outline, arcs, x -10",
            ask(
                Bench.seat(
                    bulging(
                        new Point(-most - 50, 50),
                        new Point(-most, 0),
                        new Point(-most, 100),
                        new Point(90 - most, 50)),
                    MIDDLE))),
        Arguments.of(
            "outline, arcs, y 10",
            ask(
                Bench.seat(
                    bulging(
                        new Point(50, most + 50),
                        new Point(0, most),
                        new Point(100, most),
                        new Point(50, most - 90)),
                    MIDDLE))),
        Arguments.of(
            "outline, arcs, y -10",
            ask(
                Bench.seat(
                    bulging(
                        new Point(50, -most - 50),
                        new Point(0, -most),
                        new Point(100, -most),
                        new Point(50, 90 - most)),
                    MIDDLE))));
  }

  @ParameterizedTest
  @MethodSource("refusals")
  void isRefused(String begins, SeatQuestion question) {
    String message =
        assertThrows(SeatException.class, () -> new SeatChecker().check(question)).getMessage();
    assertTrue(message.startsWith(begins), message);
  }

  /** The limits themselves are taken. */
  @Test
  void whatIsJustInRangeIsTaken() {
    SeatChecker seats = new SeatChecker();
    assertDoesNotThrow(
        () -> seats.check(new SeatQuestion(seat().withLeastMetal(0), head(), 4, 100_000, "")));
    assertDoesNotThrow(() -> seats.check(ask(wall(-100_000, 9))));
    assertDoesNotThrow(() -> seats.check(ask(stud(100_000, 1, 100_000))));
    assertDoesNotThrow(() -> seats.check(ask(turned(9, 1, 0))));
    double corners = 4 * Math.sqrt(2) * 1.002;
    SeatedHead square =
        new SeatedHead(
            "nut", corners, OptionalDouble.of(4), OptionalDouble.of(1), OptionalDouble.empty(), "");
    assertDoesNotThrow(() -> seats.check(ask(square)));
    Seat.Wall shortest = new Seat.Wall("rim", MIDDLE, MIDDLE.moved(1.001e-5, 0), 5, 0);
    assertDoesNotThrow(() -> seats.check(ask(Bench.with(Bench.seat(SQUARE, MIDDLE), shortest))));
  }

  /** A hole as wide as what bears is taken; a hair wider the head drops through. */
  @Test
  void aHeadMayJustBear() {
    assertTrue(SeatGuard.bears(new SeatQuestion(seat(), head(), 4, 0, "")));
    assertTrue(!SeatGuard.bears(new SeatQuestion(seat(), head(), 4.001, 0, "")));
  }

  @Test
  void figuresAreSaidAsTheyWereGiven() {
    assertEquals("5 mm", SeatGuard.mm(5));
    assertEquals("0.125 mm", SeatGuard.mm(0.125));
    assertEquals("NaN mm", SeatGuard.mm(Double.NaN));
    assertEquals("1.0E16 mm", SeatGuard.mm(1e16));
    assertEquals("Infinity mm", SeatGuard.mm(Double.POSITIVE_INFINITY));
  }
}
