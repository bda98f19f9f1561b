package org.fettlebench.fits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Outline.Corner;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatException;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Seats with arcs, whose answers are known in closed form: arcs count as they are. */
class ArcsTest {
  private static final double EXACT = 1e-6;
  private final SeatChecker seats = new SeatChecker();

  private SeatAnswer check(Outline outline, double head, double x, double y) {
    return seats.check(Bench.ask(Bench.seat(outline, new Point(x, y)), Bench.round(head)));
  }

  @ParameterizedTest
  @CsvSource({
    "10, 8, 0, 0, 6, 6",
    "10, 8, 3, 2, 2.394448724536011, 6",
    "10, 8, 7, 0, -1, 6",
    "10, 8, 12, 5, -7, 6",
    "10, 22, 0, 0, -1, -1",
    "0.05, 0.04, 0.01, 0, 0.02, 0.03",
    "40000, 8, 3, 4, 39991, 39996",
  })
  void roundBoss(double radius, double head, double x, double y, double intended, double best) {
    SeatAnswer answer =
        seats.check(
            new org.fettlebench.fits.SeatQuestion(
                Bench.seat(Outline.circle(new Point(0, 0), radius), new Point(x, y)),
                Bench.round(head),
                0.001,
                0,
                ""));

    assertEquals(intended, answer.allowanceAtIntendedMm(), EXACT);
    assertEquals(best, answer.allowanceAtBestMm(), EXACT);
    assertEquals(0, answer.best().distanceMm(new Point(0, 0)), 1e-4 * radius);
  }

  @Test
  void roundedCornerOfARectangle() {
    // In the corner of a square of 20 rounded by 5: the circle's centre lies at 15, 15.
    List<Corner> corners = new ArrayList<>();
    Bench.rectangle(20, 20)
        .forEach(at -> corners.add(new Corner(at, 5, java.util.Optional.empty())));
    Outline outline = Outline.ofCorners(corners);

    assertEquals(
        5 - Math.hypot(2, 2) - 2, check(outline, 4, 17, 17).allowanceAtIntendedMm(), EXACT);
    assertEquals("rounding of corner 3", check(outline, 4, 17, 17).governing().name());
    assertEquals(8, check(outline, 4, 17, 17).allowanceAtBestMm(), EXACT);
    assertEquals("edge from corner 2 to corner 3", check(outline, 4, 17, 10).governing().name());
  }

  @Test
  void slotWithRoundEnds() {
    // Half circles of radius 5 about 0, 0 and 30, 0.
    Outline slot =
        Outline.ofCorners(
            List.of(
                Corner.sharp(new Point(0, -5)),
                Corner.sharp(new Point(30, -5)).withThrough(new Point(35, 0)),
                Corner.sharp(new Point(30, 5)),
                Corner.sharp(new Point(0, 5)).withThrough(new Point(-5, 0))));

    SeatAnswer end = check(slot, 6, 31, 1);

    assertEquals(5 - Math.sqrt(2) - 3, end.allowanceAtIntendedMm(), EXACT);
    assertEquals(2, end.allowanceAtBestMm(), EXACT);
    assertEquals(0, end.best().yMm(), EXACT);
    assertTrue(end.best().xMm() > 29 && end.best().xMm() < 31, end.best().toString());
    assertEquals(-1, check(slot, 6, 33, 0).allowanceAtIntendedMm(), EXACT);
  }

  @Test
  void roundNotchIsKeptOffLikeAnEdge() {
    // A plate of 40 by 20 with a half round of radius 6 bitten out of its far side about 20, 20.
    Outline plate =
        Outline.ofCorners(
            List.of(
                Corner.sharp(new Point(0, 0)),
                Corner.sharp(new Point(40, 0)),
                Corner.sharp(new Point(40, 20)),
                Corner.sharp(new Point(26, 20)).withThrough(new Point(20, 14)),
                Corner.sharp(new Point(14, 20)),
                Corner.sharp(new Point(0, 20))));

    assertEquals(10 - 6 - 3, check(plate, 6, 20, 10).allowanceAtIntendedMm(), EXACT);
    assertEquals(Math.hypot(8, 6) - 6 - 2, check(plate, 4, 28, 14).allowanceAtIntendedMm(), EXACT);
    // Off the flat, in the notch: the way back and the head's own need.
    assertEquals(-(6 - 1 + 2), check(plate, 4, 20, 19).allowanceAtIntendedMm(), EXACT);
    assertEquals("arc from corner 4 to corner 5", check(plate, 6, 20, 10).governing().name());
  }

  @Test
  void radiusAndSideGiveTheSameArcAsAPlaceOnIt() {
    Point from = new Point(30, -5);
    Point to = new Point(30, 5);

    assertEquals(
        new Point(35, 0), Outline.throughOfRadius(from, to, 5, false), "right of the way up");
    assertEquals(new Point(25, 0), Outline.throughOfRadius(from, to, 5, true));
    assertTrue(
        assertThrows(SeatException.class, () -> Outline.throughOfRadius(from, to, 4.9, true))
            .getMessage()
            .contains("at least 5.0 mm"));
  }

  @Test
  void wayRoundDoesNotMatter() {
    List<Corner> there =
        List.of(
            Corner.sharp(new Point(0, 0)),
            Corner.sharp(new Point(20, 0)).withThrough(new Point(24, 6)),
            Corner.sharp(new Point(20, 12)),
            Corner.sharp(new Point(0, 12)).withThrough(new Point(3, 6)));
    List<Corner> back = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      // Run back, the arc to the next corner is the one that came from it.
      back.add(new Corner(there.get(i).at(), 0, there.get((i + 3) % 4).through()));
    }
    Collections.reverse(back);
    for (double x = 1; x < 25; x += 1.7) {
      SeatAnswer first = check(Outline.ofCorners(there), 4, x, 5);
      SeatAnswer second = check(Outline.ofCorners(back), 4, x, 5);
      assertEquals(first.allowanceAtIntendedMm(), second.allowanceAtIntendedMm(), EXACT);
      assertEquals(first.allowanceAtBestMm(), second.allowanceAtBestMm(), EXACT);
    }
  }

  @Test
  void chordsStayWithinTheStatedError() {
    for (double radius : new double[] {0.01, 1, 10, 49, 500}) {
      List<Point> points = Outline.circle(new Point(1, 2), radius).points();
      double most = Math.max(Outline.CHORD_ERROR_MM, 1e-5 * radius);
      for (int i = 0; i < points.size(); i++) {
        Point a = points.get(i);
        Point b = points.get((i + 1) % points.size());
        Point middle = new Point((a.xMm() + b.xMm()) / 2, (a.yMm() + b.yMm()) / 2);
        assertEquals(radius, a.distanceMm(new Point(1, 2)), 1e-9 * radius + 1e-12);
        assertTrue(radius - middle.distanceMm(new Point(1, 2)) <= most * 1.000001);
      }
    }
  }

  @Test
  void bendsThatCannotBeNameTheirCorner() {
    List<Point> square = Bench.rectangle(10, 10);
    Outline plain = Outline.of(square);

    assertEquals(
        "corner 2: a rounding of 11 mm takes 11.000 mm of the edge to corner 1, and 10.000 mm are"
            + " free; make it smaller",
        refusal(() -> plain.withCorner(1, plain.corners().get(1).withRounded(11))));
    assertTrue(
        refusal(() -> plain.withCorner(1, plain.corners().get(1).withRounded(-1)))
            .startsWith("corner 2: rounding of -1 mm is not above 0"));
    assertTrue(
        refusal(() -> plain.withCorner(1, plain.corners().get(1).withRounded(Double.NaN)))
            .startsWith("corner 2"));
    assertTrue(
        refusal(() -> plain.withCorner(0, plain.corners().get(0).withThrough(new Point(5, 0))))
            .startsWith("arc from corner 1 to corner 2: x 5.0 mm, y 0.0 mm does not bend it"));
    Outline bent = plain.withCorner(0, plain.corners().get(0).withThrough(new Point(5, -2)));
    assertTrue(
        refusal(() -> bent.withCorner(1, bent.corners().get(1).withRounded(1)))
            .contains("an arc ends here"));
    Outline crossing = plain.withCorner(0, plain.corners().get(0).withThrough(new Point(5, 12)));
    assertTrue(refusal(() -> check(crossing, 2, 5, 5)).contains("arc from corner 1 to corner 2"));
    assertFalse(plain.bent());
  }

  private static String refusal(Runnable attempt) {
    return assertThrows(SeatException.class, attempt::run).getMessage();
  }
}
