package org.fettlebench.fits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatException;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SeatGuardTest {
  private static final Point MIDDLE = new Point(5, 5);
  private final SeatChecker seats = new SeatChecker();

  private String refusal(List<Point> outline) {
    return refusal(Bench.ask(Bench.seat(outline, MIDDLE), Bench.round(3)));
  }

  private String refusal(SeatQuestion question) {
    return assertThrows(SeatException.class, () -> seats.check(question)).getMessage();
  }

  @Test
  void twoCornersAreTooFew() {
    assertEquals(
        "outline: 2 corners given, at least 3 are needed", refusal(Bench.corners(0, 0, 10, 0)));
  }

  @Test
  void crossingOutlineNamesBothEdgesAndThePlace() {
    assertEquals(
        "outline: the edge from corner 2 to corner 3 meets the edge from corner 4 to corner 1"
            + " at x 5 mm, y 5 mm; give the corners in order around the flat",
        refusal(Bench.corners(0, 0, 10, 0, 0, 10, 10, 10)));
  }

  @Test
  void repeatedCornerIsNamed() {
    assertEquals(
        "outline: corners 2 and 3 are the same place, x 10 mm, y 0 mm; leave one out",
        refusal(Bench.corners(0, 0, 10, 0, 10, 0, 10, 10)));
    assertTrue(
        refusal(Bench.corners(0, 0, 10, 0, 10, 10, 0, 0)).startsWith("outline: corners 4 and 1"));
  }

  @Test
  void outlineRunningBackOverItselfIsRefused() {
    assertTrue(refusal(Bench.corners(0, 0, 10, 0, 5, 0, 5, 5)).contains("runs back over"));
  }

  @Test
  void cornersOnOneLineAreToldAsThat() {
    String said =
        "outline: its %d corners lie on one line, from x 0 mm, y 0 mm, and enclose nothing; give a"
            + " corner that lies off it";
    assertEquals(said.formatted(3), refusal(Bench.corners(0, 0, 10, 0, 20, 0)));
    assertEquals(said.formatted(4), refusal(Bench.corners(0, 0, 9, 3, 3, 1, 6, 2)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY, 1e9})
  void figuresThatMustBeAboveNought(double bad) {
    Seat seat = Bench.seat(Bench.rectangle(10, 10), MIDDLE);

    assertTrue(refusal(Bench.ask(seat, Bench.round(bad))).contains("circle that it sweeps"));
    assertTrue(
        refusal(new SeatQuestion(seat, Bench.round(3), bad, 0, "")).startsWith("hole diameter"));
    Seat.Wall wall = new Seat.Wall("rim", new Point(0, 0), MIDDLE, bad, 0);
    assertTrue(
        refusal(Bench.ask(Bench.with(seat, wall), Bench.round(3)))
            .startsWith("wall \"rim\", height"));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.001, Double.NaN, Double.POSITIVE_INFINITY})
  void figuresThatMayBeNoughtButNotBelow(double bad) {
    Seat seat = Bench.seat(Bench.rectangle(10, 10), MIDDLE);

    assertTrue(
        refusal(new SeatQuestion(seat, Bench.round(3), 1, bad, ""))
            .startsWith("expected position error"));
    Seat.Wall wall = new Seat.Wall("rim", new Point(0, 0), MIDDLE, 2, bad);
    assertTrue(
        refusal(Bench.ask(Bench.with(seat, wall), Bench.round(3))).contains("fillet radius"));
  }

  @Test
  void wallWithoutLengthAndHeadThatCannotBe() {
    Seat seat = Bench.seat(Bench.rectangle(10, 10), MIDDLE);
    Seat.Wall wall = new Seat.Wall("rim", MIDDLE, MIDDLE, 2, 0);
    SeatedHead wide =
        new SeatedHead(
            "nut", 5, OptionalDouble.of(6), OptionalDouble.empty(), OptionalDouble.empty(), "");

    assertEquals(
        "wall \"rim\": both ends are at x 5 mm, y 5 mm; give its other end",
        refusal(Bench.ask(Bench.with(seat, wall), Bench.round(3))));
    assertTrue(refusal(Bench.ask(seat, wide)).contains("check which is which"));
    assertTrue(refusal(Bench.ask(seat, Bench.round(3).withFlatsAlong(0))).contains("is round"));
  }

  @Test
  void aHoleWiderThanTheHeadIsRefusedUnlessAWasherBears() {
    Seat seat = Bench.seat(Bench.rectangle(40, 40), new Point(20, 20));
    SeatedHead bolt =
        new SeatedHead(
            "M5 hexagon",
            9.2,
            OptionalDouble.of(8),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            "");
    assertEquals(
        "hole diameter 9 mm is wider than what bears round it, 8 mm: M5 hexagon would drop through;"
            + " check the hole, or put a washer under it",
        refusal(new SeatQuestion(seat, bolt, 9, 0, "")));
    SeatedHead washed = bolt.withWasher(new SeatedHead.Washer("M5 washer", 15, 1, ""));
    assertEquals(
        9, seats.check(new SeatQuestion(seat, washed, 9, 0, "")).question().holeDiameterMm());
  }

  @Test
  void cornersBeyondThoseOfASquareAreRefused() {
    Seat seat = Bench.seat(Bench.rectangle(40, 40), new Point(20, 20));
    SeatedHead odd =
        new SeatedHead(
            "nut", 17, OptionalDouble.of(8), OptionalDouble.empty(), OptionalDouble.empty(), "");
    assertTrue(refusal(Bench.ask(seat, odd)).contains("more than even a square head"));
  }
}
