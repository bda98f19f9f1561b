package org.fettlebench.fits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatCure;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.Verdict;
import org.fettlebench.measure.Point;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.junit.jupiter.api.Test;

class SeatCurerTest {
  private static final Source PRACTICE = new Source("workshop", Standing.COMMON_PRACTICE);
  private static final List<HoleMethod> METHODS =
      List.of(
          new HoleMethod("dot", "scribe and dot punch", List.of(), 0.15, PRACTICE),
          new HoleMethod("jig", "drill through a jig", List.of(), 0.05, PRACTICE),
          new HoleMethod("table", "co-ordinate table", List.of(), 0.03, PRACTICE));

  private final SeatChecker seats = new SeatChecker();

  private List<SeatCure> cures(SeatQuestion question) {
    return seats.cures(seats.check(question), List.of(Bench.hexagon(7)), METHODS, 0.95);
  }

  private static SeatQuestion question(double x, double y) {
    Seat seat = Bench.seat(Bench.rectangle(20, 10), new Point(x, y));
    return new SeatQuestion(seat, Bench.hexagon(8), 5, 0.4, "scribed");
  }

  @Test
  void eachCureIsCheckedAndBettersTheVerdict() {
    SeatQuestion question = question(10, 4.2);
    SeatAnswer before = seats.check(question);
    List<SeatCure> cures = cures(question);

    assertEquals(Verdict.FOULS, before.verdict());
    assertTrue(cures.size() >= 3);
    for (SeatCure cure : cures) {
      assertEquals(seats.check(cure.after().question()), cure.after());
      assertTrue(cure.after().verdict().compareTo(before.verdict()) < 0, cure.sentence());
    }
    for (int i = 1; i < cures.size(); i++) {
      assertTrue(cures.get(i - 1).after().verdict().compareTo(cures.get(i).after().verdict()) <= 0);
    }
  }

  @Test
  void justTouchingIsNoCure() {
    // Half of 8 across flats is the 4 mm to the edge: set square or turned down, no room is left.
    assertEquals(
        List.of(SeatCure.Kind.MOVE_CENTRE),
        cures(question(10, 4)).stream().map(SeatCure::kind).toList());
  }

  @Test
  void movingSaysHowFarAndWhichWay() {
    SeatCure move = only(cures(question(10, 4)), SeatCure.Kind.MOVE_CENTRE);

    // Room at the middle is 5 - 8 / sqrt 3 = 0.38, less than 0.4.
    assertEquals(
        "move the hole 1.00 mm (0.039 in) away; then it is tight, allowance 0.38 mm (0.015 in)",
        move.sentence());
    assertEquals(
        "move the hole 1.41 mm (0.056 in) left and near: 1.00 mm (0.039 in) left, 1.00 mm (0.039 in) near",
        Words.move(-1, -1));
  }

  @Test
  void theLeastCarefulMethodThatClearsIsTaken() {
    SeatQuestion question = question(10, 4.9);
    SeatCure method = only(cures(question), SeatCure.Kind.CAREFUL_METHOD);

    assertEquals(0.28, seats.check(question).allowanceAtIntendedMm(), 0.005);
    assertTrue(
        method.sentence().startsWith("place the hole by drill through a jig: within 0.12 mm"),
        method.sentence());
    assertTrue(method.sentence().contains("common practice, no source"), method.sentence());
    assertEquals(0.05 * 2.4477, method.after().question().expectedErrorMm(), 0.00001);
  }

  @Test
  void headIsTurnedDownJustEnoughAndNeverBelowItsFlats() {
    SeatCure turn = only(cures(question(10, 4.9)), SeatCure.Kind.TURN_HEAD_DOWN);
    double diameter = turn.after().question().head().sweepDiameterMm();

    assertEquals(9.0, diameter, 1e-9);
    assertEquals(Verdict.CLEARS, turn.after().verdict());
    assertTrue(
        cures(question(10, 3.5)).stream()
            .noneMatch(cure -> cure.kind() == SeatCure.Kind.TURN_HEAD_DOWN));
  }

  @Test
  void setSquareToTheGoverningEdge() {
    SeatCure set = only(cures(question(10, 4.5)), SeatCure.Kind.SET_SQUARE);

    assertEquals(0.5, set.after().allowanceAtIntendedMm(), 1e-6);
    assertTrue(set.sentence().contains("edge from corner 1 to corner 2"), set.sentence());
  }

  @Test
  void whatClearsNeedsNoCure() {
    SeatQuestion question =
        new SeatQuestion(question(10, 5).seat(), Bench.hexagon(5), 3, 0.4, "scribed");

    assertEquals(List.of(), cures(question));
  }

  private static SeatCure only(List<SeatCure> cures, SeatCure.Kind kind) {
    return cures.stream().filter(cure -> cure.kind() == kind).findFirst().orElseThrow();
  }
}
