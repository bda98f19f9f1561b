package org.fettlebench.fits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatAnswer.Governing.Kind;
import org.fettlebench.fits.Verdict;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Seats whose answer is known in closed form. */
class SeatCheckerTest {
  private static final double EXACT = 1e-6;
  private final SeatChecker seats = new SeatChecker();

  @ParameterizedTest(name = "{0} x {1}, head {2}, centre {3} {4}")
  @CsvSource({
    "20, 10, 6, 10, 5, 2, 2",
    "20, 10, 6, 10, 4, 1, 2",
    "20, 10, 10, 10, 5, 0, 0",
    "20, 10, 6, 10, 2, -1, 2",
    "20, 10, 6, 1, 1, -2.8284271247461903, 2",
    "20, 10, 6, -1, 5, -4, 2",
    "20, 10, 12, 10, 5, -1, -1",
    "20, 10, 12, 10, 3, -3, -1",
    "0.2, 0.1, 0.06, 0.1, 0.05, 0.02, 0.02",
    "20000, 10000, 6000, 10000, 5000, 2000, 2000",
  })
  void rectangle(
      double width, double depth, double head, double x, double y, double intended, double best) {
    Seat seat = Bench.seat(Bench.rectangle(width, depth), new Point(x, y));

    SeatAnswer answer =
        seats.check(new org.fettlebench.fits.SeatQuestion(seat, Bench.round(head), 0.01, 0, ""));

    assertEquals(intended, answer.allowanceAtIntendedMm(), EXACT);
    assertEquals(best, answer.allowanceAtBestMm(), EXACT);
    assertEquals(depth / 2, answer.best().yMm(), EXACT);
  }

  @Test
  void threeSixteenthsFromTheSideOfABossForTwoHexagons() {
    // A boss 3/8 in square: across corners of 0.324 in and of 0.282 in against half of 0.375 in.
    double width = 0.375 * Bench.INCH;
    Seat seat = Bench.seat(Bench.rectangle(width, width), new Point(width / 2, width / 2));

    SeatAnswer full = seats.check(Bench.ask(seat, Bench.hexagon(0.324 * Bench.INCH)));
    SeatAnswer small = seats.check(Bench.ask(seat, Bench.hexagon(0.282 * Bench.INCH)));

    assertEquals(0.0004, full.allowanceAtIntendedMm() / Bench.INCH, 0.00005);
    assertEquals(0.0247, small.allowanceAtIntendedMm() / Bench.INCH, 0.00005);
    assertEquals(Verdict.TIGHT, full.verdict());
    assertEquals(Verdict.CLEARS, small.verdict());
  }

  @Test
  void triangleIsBestAtItsIncentre() {
    // Sides 3, 4, 5: the inscribed circle has radius 1 about 1, 1.
    Seat seat = Bench.seat(Bench.corners(0, 0, 4, 0, 0, 3), new Point(1.5, 0.7));

    SeatAnswer answer = seats.check(Bench.ask(seat, Bench.round(1)));

    assertEquals(0.5, answer.allowanceAtBestMm(), EXACT);
    assertEquals(1, answer.best().xMm(), EXACT);
    assertEquals(1, answer.best().yMm(), EXACT);
    assertEquals(0.2, answer.allowanceAtIntendedMm(), EXACT);
  }

  @Test
  void manyCorneredCircleIsBestInItsMiddle() {
    // The inscribed circle of a regular polygon has radius r cos(180°/n).
    int count = 200;
    Seat seat = Bench.seat(Bench.circle(10, count), new Point(3, 2));

    SeatAnswer answer = seats.check(Bench.ask(seat, Bench.round(8)));

    double inscribed = 10 * Math.cos(Math.PI / count);
    assertEquals(inscribed - 4, answer.allowanceAtBestMm(), EXACT);
    assertEquals(0, answer.best().distanceMm(new Point(0, 0)), EXACT);
    double broken = 10 - inscribed;
    assertEquals(6 - Math.hypot(3, 2), answer.allowanceAtIntendedMm(), broken);
  }

  @Test
  void reentrantCornerIsRoundedByTheHead() {
    // An L of two limbs 10 wide: the best place is 10 - 10/sqrt(2)... from both outer sides.
    List<Point> outline = Bench.corners(0, 0, 30, 0, 30, 10, 10, 10, 10, 30, 0, 30);
    Seat seat = Bench.seat(outline, new Point(6, 6));

    SeatAnswer answer = seats.check(Bench.ask(seat, Bench.round(4)));

    // Equal distance d from both outer sides and from the corner at 10, 10: d = (10 - d) sqrt 2.
    double d = 10 * Math.sqrt(2) / (1 + Math.sqrt(2));
    assertEquals(d - 2, answer.allowanceAtBestMm(), EXACT);
    assertEquals(d, answer.best().xMm(), EXACT);
    assertEquals(d, answer.best().yMm(), EXACT);
    assertEquals(Math.hypot(4, 4) - 2, answer.allowanceAtIntendedMm(), EXACT);
    assertEquals(Kind.EDGE, answer.governing().kind());
    assertEquals(new Point(10, 10), answer.governing().nearest());
  }

  @Test
  void failingCentreInTheShadowOfAReentrantCornerGoesStraightAwayFromIt() {
    List<Point> outline = Bench.corners(0, 0, 30, 0, 30, 10, 10, 10, 10, 30, 0, 30);
    Seat seat = Bench.seat(outline, new Point(9, 9));

    SeatAnswer answer = seats.check(Bench.ask(seat, Bench.round(8)));

    assertEquals(-(4 - Math.sqrt(2)), answer.allowanceAtIntendedMm(), EXACT);
    assertEquals(Verdict.FOULS, answer.verdict());
  }

  @Test
  void wallAlongAnEdgeTakesItsFilletToo() {
    Seat plain = Bench.seat(Bench.rectangle(20, 10), new Point(10, 5));
    Seat seat =
        Bench.with(plain, new Seat.Wall("cylinder", new Point(0, 10), new Point(20, 10), 15, 1.5));

    SeatAnswer answer = seats.check(Bench.ask(seat, Bench.round(6)));

    assertEquals(5 - 3 - 1.5, answer.allowanceAtIntendedMm(), EXACT);
    assertEquals((10 - 1.5 - 6) / 2, answer.allowanceAtBestMm(), EXACT);
    assertEquals(3 + 1.25, answer.best().yMm(), EXACT);
    assertEquals(Kind.WALL, answer.governing().kind());
    assertEquals("cylinder", answer.governing().name());
    assertEquals(5, answer.governing().distanceMm(), EXACT);
    assertEquals(4.5, answer.governing().neededMm(), EXACT);
  }

  @Test
  void filletOfALowWallReachesOutLess() {
    Seat plain = Bench.seat(Bench.rectangle(20, 10), new Point(10, 5));
    Seat seat =
        Bench.with(plain, new Seat.Wall("rim", new Point(0, 10), new Point(20, 10), 0.5, 2));

    SeatAnswer answer = seats.check(Bench.ask(seat, Bench.round(6)));

    // A fillet of 2 on a rim of 0.5: sqrt(2^2 - 1.5^2) out from it at the flat.
    assertEquals(5 - 3 - Math.sqrt(4 - 2.25), answer.allowanceAtIntendedMm(), EXACT);
  }

  @Test
  void setSquareAHexagonNeedsHalfItsFlats() {
    Seat seat = Bench.seat(Bench.rectangle(40, 10), new Point(20, 5));

    SeatAnswer along = seats.check(Bench.ask(seat, Bench.hexagon(8).withFlatsAlong(0)));
    SeatAnswer across = seats.check(Bench.ask(seat, Bench.hexagon(8).withFlatsAlong(90)));
    SeatAnswer turned = seats.check(Bench.ask(seat, Bench.hexagon(8).withFlatsAlong(15)));

    assertEquals(5 - 4, along.allowanceAtIntendedMm(), EXACT);
    assertEquals(5 - 8 / Math.sqrt(3), across.allowanceAtIntendedMm(), EXACT);
    double reach = 8 / Math.sqrt(3) * Math.cos(Math.toRadians(15));
    assertEquals(5 - reach, turned.allowanceAtIntendedMm(), EXACT);
    assertEquals(1, along.allowanceAtBestMm(), EXACT);
  }

  @Test
  void metalBelowGovernsWhenSidesTaper() {
    Seat seat =
        Bench.seat(Bench.rectangle(20, 10), new Point(10, 5))
            .withUnderside(Optional.of(Outline.of(Bench.corners(0, 3, 20, 3, 20, 10, 0, 10))))
            .withLeastMetal(1);

    SeatAnswer answer =
        seats.check(new org.fettlebench.fits.SeatQuestion(seat, Bench.round(4), 3, 0.1, ""));

    assertEquals(5 - 3 - 1.5 - 1, answer.allowanceAtIntendedMm(), EXACT);
    assertEquals(Kind.METAL_BELOW, answer.governing().kind());
    // Room 7.5 - y at the far side of the lower face, y - 5.5 at its near side: 6.5 is between.
    assertEquals(1, answer.allowanceAtBestMm(), EXACT);
  }

  @Test
  void hollowAndNeighbourAreKeptOff() {
    Seat seat =
        Bench.seat(Bench.rectangle(100, 100), new Point(50, 50))
            .withCavities(List.of(Outline.of(Bench.corners(40, 0, 60, 0, 60, 40, 40, 40))))
            .withNeighbours(List.of(new Seat.Neighbour("stud", new Point(50, 60), 4)))
            .withLeastMetal(2);

    SeatAnswer answer =
        seats.check(new org.fettlebench.fits.SeatQuestion(seat, Bench.round(8), 6, 0.1, ""));

    assertEquals(10 - 4 - 4, answer.allowanceAtIntendedMm(), EXACT);
    assertEquals(Kind.NEIGHBOUR, answer.governing().kind());
    SeatAnswer over = seats.check(answer.question().withIntended(new Point(50, 39)));
    assertEquals(-(1 + 3 + 2), over.allowanceAtIntendedMm(), EXACT);
    assertEquals(Kind.CAVITY, over.governing().kind());
    assertEquals(-1, over.governing().distanceMm(), EXACT);
    assertTrue(over.allowanceAtBestMm() > 20);
  }

  @Test
  void aHollowWhollyOutsideIsCautionedOfAndNoOther() {
    Seat seat = Bench.seat(Bench.rectangle(20, 12), new Point(10, 6));
    Outline away = Outline.of(Bench.rectangle(2, 2).stream().map(p -> p.moved(30, 0)).toList());
    Outline across = Outline.of(Bench.rectangle(2, 2).stream().map(p -> p.moved(19, 0)).toList());
    var odd = seats.check(Bench.ask(seat.withCavities(List.of(across, away)), Bench.round(6)));
    assertEquals(
        List.of(
            "hollow 2 lies wholly outside the outline and changes nothing; check its corners, which"
                + " are from the same datum as those of the flat"),
        odd.cautions());
    var plain = seats.check(Bench.ask(seat.withCavities(List.of(across)), Bench.round(6)));
    assertEquals(List.of(), plain.cautions());
  }
}
