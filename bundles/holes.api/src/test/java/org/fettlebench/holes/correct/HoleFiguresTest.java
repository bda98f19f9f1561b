package org.fettlebench.holes.correct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.holes.correct.CorrectionAnswer.Outcome;
import org.fettlebench.holes.correct.CorrectionQuestion.Around;
import org.fettlebench.holes.correct.CorrectionQuestion.Found;
import org.fettlebench.holes.correct.CorrectionQuestion.Rules;
import org.fettlebench.holes.correct.CorrectionQuestion.Tools;
import org.fettlebench.holes.correct.MeasuredHole.Spread;
import org.fettlebench.holes.otherface.MarkQuestion;
import org.fettlebench.holes.otherface.Turn;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What figures of holes mean, and which are refused. */
class HoleFiguresTest {
  private static final Point ORIGIN = new Point(0, 0);
  private static final Reading.Spot CORNER = new Reading.Spot("corner 3", ORIGIN, 0);

  private static String refusal(Runnable bad) {
    return assertThrows(HoleException.class, bad::run).getMessage();
  }

  @Test
  void filingCuresHalfTheMetalLessTheMargin() {
    assertEquals(0.4, new CleanUp(0.1, "habit").curableMm(3, 4), 1e-12);
    assertEquals(-0.05, new CleanUp(0.1, "habit").curableMm(3.9, 4), 1e-12);
  }

  /** Greatest root of the characteristic equation: 2, 2, 5 has 6 and 1; 5, 4, 5 has 9 and 1. */
  @ParameterizedTest
  @CsvSource({"4, 0, 9, 9", "9, 0, 4, 9", "2, 2, 5, 6", "5, -4, 5, 9"})
  void greatestSpread(double xx, double xy, double yy, double greatest) {
    Spread spread = new Spread(xx, xy, yy);
    assertEquals(Math.sqrt(greatest), spread.greatestMm(), 1e-12);
    assertEquals(Math.sqrt(xx), spread.alongXMm(), 1e-12);
    assertEquals(Math.sqrt(yy), spread.alongYMm(), 1e-12);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.001, 100_000.1, Double.NaN})
  void sizesOutOfRangeAreRefused(double bad) {
    assertTrue(refusal(() -> new CleanUp(bad, "")).startsWith("clean-up margin " + bad));
    assertTrue(refusal(() -> new Cutter("No 9", bad)).startsWith("No 9: diameter " + bad));
    refusal(() -> new ExpectedError("dot", bad, ""));
    refusal(() -> new Found(ORIGIN, 3, bad));
    refusal(() -> new Found(ORIGIN, bad, 0));
    refusal(() -> new Reading.Spot("hole", ORIGIN, bad));
    refusal(() -> rules(bad));
    refusal(() -> pilot(bad));
    refusal(() -> question(bad, false));
    refusal(() -> new Reading(CORNER, Reading.To.CENTRE, bad, 0.1));
    refusal(() -> measuring(Reading.To.CENTRE, bad, OptionalDouble.empty()));
    refusal(() -> measuring(Reading.To.CENTRE, 5, OptionalDouble.of(bad)));
  }

  @Test
  void theEndsOfTheRangesAreTaken() {
    refusal(() -> new Cutter("none", 0));
    assertEquals(100_000, new Cutter("huge", 100_000).diameterMm());
    assertEquals(0, new CleanUp(0, "").perSideMm());
    assertEquals(100_000, new CleanUp(100_000, "").perSideMm());
  }

  private static Rules rules(double wallMm) {
    return new Rules(new CleanUp(0.1, ""), new ExpectedError("file", 0.1, ""), wallMm, "");
  }

  private static PilotQuestion pilot(double finishMm) {
    return new PilotQuestion(
        finishMm,
        new CleanUp(0.1, ""),
        new ExpectedError("dot", 0.1, ""),
        List.of(),
        List.of(),
        List.of());
  }

  private static CorrectionQuestion question(double finishMm, boolean mateOpen) {
    return new CorrectionQuestion(
        ORIGIN,
        new Found(ORIGIN, 3, 0.1),
        finishMm,
        rules(1),
        new Tools(List.of(), List.of()),
        new Around(Optional.empty(), List.of(), mateOpen));
  }

  @Test
  void aHoleDoesNotGrowSmaller() {
    assertTrue(
        refusal(() -> question(2.9, false))
            .startsWith("finished diameter 2.9 mm is smaller than the hole as it is, 3.0 mm"));
    assertEquals(3, question(3, false).finishDiameterMm());
  }

  private static List<String> cautions(Outcome outcome, boolean mateOpen) {
    return new CorrectionAnswer(
            question(4, mateOpen),
            outcome,
            0.25,
            Optional.empty(),
            0.4,
            Optional.empty(),
            List.of(),
            Optional.empty())
        .cautions();
  }

  @ParameterizedTest
  @EnumSource(Outcome.class)
  void onlyAHoleThatStaysHasAMateToMeet(Outcome outcome) {
    assertEquals(List.of(), cautions(outcome, true));
    List<String> said = cautions(outcome, false);
    assertEquals(outcome == Outcome.LEAVE ? 1 : 0, said.size());
    said.forEach(each -> assertTrue(each.contains("off by 0.25 mm (0.010 in), radius"), each));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.1, 1002.1, Double.NaN})
  void noRuleIsReadExactly(double plusMinus) {
    assertTrue(
        refusal(() -> new Reading(CORNER, Reading.To.CENTRE, 2, plusMinus))
            .startsWith("reading from corner 3: plus or minus " + plusMinus));
    assertEquals(1002, new Reading(CORNER, Reading.To.CENTRE, 2, 1002).plusMinusMm());
  }

  private static MeasuringQuestion measuring(Reading.To to, double holeMm, OptionalDouble pinMm) {
    return new MeasuringQuestion(List.of(new Reading(CORNER, to, 2, 0.1)), holeMm, pinMm, ORIGIN);
  }

  @Test
  void aPinIsMeasuredAndGoesIn() {
    for (Reading.To to : Reading.To.values()) {
      boolean pin = to.words().endsWith("pin");
      if (pin) {
        assertEquals(
            "a reading at a pin needs the pin's diameter; measure the pin",
            refusal(() -> measuring(to, 5, OptionalDouble.empty())));
      } else {
        assertEquals(5, measuring(to, 5, OptionalDouble.empty()).holeDiameterMm());
      }
      assertEquals(5, measuring(to, 5, OptionalDouble.of(5)).holeDiameterMm());
    }
    assertTrue(
        refusal(() -> measuring(Reading.To.OVER_PIN, 5, OptionalDouble.of(5.1)))
            .startsWith("a pin of 5.1 mm does not go into a hole of 5.0 mm"));
  }

  @Test
  void aDrillWandersWithItsDepth() {
    MarkQuestion.Hole hole =
        new MarkQuestion.Hole(4, 20, new ExpectedError("dot", 0.2, ""), 0.005, "habit");
    assertEquals(0.1, hole.wanderMm(), 1e-12);
    assertEquals(0.3, hole.errorAboveMm(), 1e-12);
  }

  @Test
  void aPartTurnedOverTwiceIsAsItWas() {
    Point place = new Point(3, 7);
    assertEquals(new Point(-3, 7), Turn.SIDEWAYS.seen(place));
    assertEquals(new Point(3, -7), Turn.ENDWAYS.seen(place));
    for (Turn turn : Turn.values()) {
      assertEquals(place, turn.seen(turn.seen(place)));
      assertTrue(turn.words().startsWith("turned over "), turn.words());
    }
  }
}
