package org.fettlebench.fits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatCure;
import org.fettlebench.fits.SeatException;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Verdict;
import org.fettlebench.measure.Point;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

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
    assertEquals(
        1,
        cures(question(10, 4.9)).stream()
            .filter(cure -> cure.kind() == SeatCure.Kind.TURN_HEAD_DOWN)
            .count(),
        "what is enough is offered alone");
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

  /** Square to whichever edge governs: half of 8 to an edge that is 4.5 away. */
  @ParameterizedTest
  @CsvSource({"10, 4.5", "10, 5.5", "4.5, 10", "15.5, 10"})
  void setSquareToAnyEdge(double x, double y) {
    double depth = y == 10 ? 20 : 10;
    Seat seat = Bench.seat(Bench.rectangle(20, depth), new Point(x, y));
    SeatQuestion question = new SeatQuestion(seat, Bench.hexagon(8), 5, 0.4, "scribed");
    SeatCure set = only(cures(question), SeatCure.Kind.SET_SQUARE);

    assertEquals(0.5, set.after().allowanceAtIntendedMm(), 1e-6);
    assertEquals(Verdict.CLEARS, set.after().verdict());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1, -0.1, 95, Double.NaN})
  void confidenceOutsideNoughtToOneIsRefused(double confidence) {
    SeatAnswer answer = seats.check(question(10, 4.2));
    SeatException bad =
        assertThrows(
            SeatException.class, () -> seats.cures(answer, List.of(), List.of(), confidence));
    assertEquals("confidence " + confidence + " is outside 0 to 1", bad.getMessage());
  }

  /** A head of 7 clears with 0.46 at 4.5 from the edge; one of 7.5 is tight with 0.17. */
  @Test
  void whatClearsComesBeforeWhatIsTight() {
    SeatAnswer answer = seats.check(question(10, 4.5));
    List<SeatCure> cures =
        seats.cures(answer, List.of(Bench.hexagon(7.5), Bench.hexagon(7)), List.of(), 0.95);
    List<SeatCure> heads =
        cures.stream().filter(each -> each.kind() == SeatCure.Kind.OTHER_HEAD).toList();
    assertEquals(
        List.of(Verdict.CLEARS, Verdict.TIGHT),
        heads.stream().map(each -> each.after().verdict()).toList());
    assertEquals(Verdict.TIGHT, cures.get(cures.size() - 1).after().verdict());
  }

  /** The hole is 5: a head of 4.9 would drop through it. */
  @Test
  void aHeadThatDropsThroughIsNoCure() {
    SeatAnswer answer = seats.check(question(10, 4.2));
    for (double flats : new double[] {4.9, 5}) {
      List<SeatCure> cures = seats.cures(answer, List.of(Bench.hexagon(flats)), List.of(), 0.95);
      assertEquals(
          flats >= 5, cures.stream().anyMatch(cure -> cure.kind() == SeatCure.Kind.OTHER_HEAD));
    }
  }

  /** 4.2 to the edge less 0.4 to be expected: 7.6 would clear, but the flats are 8. */
  @Test
  void whereItCannotClearItIsTurnedDownToItsFlats() {
    SeatCure turn = only(cures(question(10, 4.2)), SeatCure.Kind.TURN_HEAD_DOWN);

    assertEquals(8, turn.after().question().head().sweepDiameterMm(), 1e-9);
    assertEquals(Verdict.TIGHT, turn.after().verdict());
    assertEquals(0.2, turn.after().allowanceAtIntendedMm(), 1e-6);
  }

  /** With no error to be expected just enough would only touch: then down to the flats. */
  @Test
  void whereJustEnoughOnlyTouchesItIsTurnedDownFurther() {
    Seat seat = Bench.seat(Bench.rectangle(20, 10), new Point(10, 4.2));
    SeatCure turn =
        only(
            cures(new SeatQuestion(seat, Bench.hexagon(8), 5, 0, "exact")),
            SeatCure.Kind.TURN_HEAD_DOWN);

    assertEquals(8, turn.after().question().head().sweepDiameterMm(), 1e-9);
    assertEquals(0.2, turn.after().allowanceAtIntendedMm(), 1e-6);
  }

  /** A washer of 9.5 under a head of 6.93 across corners, 4.5 from the edge: down to 8.2. */
  @Test
  void aWasherIsTurnedDownJustEnough() {
    SeatQuestion question =
        question(10, 4.5)
            .withHead(Bench.hexagon(6).withWasher(new SeatedHead.Washer("washer", 9.5, 0.5, "")));
    SeatCure turn = only(cures(question), SeatCure.Kind.TURN_WASHER_DOWN);

    assertEquals(8.2, turn.after().question().head().washer().orElseThrow().diameterMm(), 1e-9);
    assertEquals(Verdict.CLEARS, turn.after().verdict());
    SeatQuestion narrow = question.withIntended(new Point(10, 3.6));
    SeatCure least = only(cures(narrow), SeatCure.Kind.TURN_WASHER_DOWN);
    // As far as what bears on it: 6.93, rounded up to a hundredth.
    assertEquals(6.93, least.after().question().head().washer().orElseThrow().diameterMm(), 1e-9);
    assertEquals(Verdict.TIGHT, least.after().verdict());
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
