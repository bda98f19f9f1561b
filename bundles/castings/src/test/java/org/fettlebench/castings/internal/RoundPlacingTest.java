package org.fettlebench.castings.internal;

import static org.fettlebench.castings.internal.TrialCastings.CLOSE;
import static org.fettlebench.castings.internal.TrialCastings.bore;
import static org.fettlebench.castings.internal.TrialCastings.place;
import static org.fettlebench.castings.internal.TrialCastings.shifts;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.Placing;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Spot;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bores and bosses, against closed forms that can be reckoned on paper, shown beside each. */
class RoundPlacingTest {
  @Test
  void aBoreIsPutInTheMiddleOfItsCore() {
    Placing placing =
        place(shifts(Axis.X, Axis.Y), bore("bore", 0, 0, 16, new Spot(3.1, -2.7, 5), 13));
    assertEquals(1.5, placing.spareMm(), CLOSE);
    assertEquals(3.1, placing.shift().xMm(), CLOSE);
    assertEquals(-2.7, placing.shift().yMm(), CLOSE);
  }

  @Test
  void coresAtAWrongPitchShareTheError() {
    // Pitch 40 on the drawing, 40.4 as cast: each is 0.2 out, 1.5 - 0.2 = 1.3.
    Placing placing =
        place(
            shifts(Axis.X, Axis.Y),
            bore("left", 0, 0, 16, new Spot(0, 0, 0), 13),
            bore("right", 40, 0, 16, new Spot(40.4, 0, 0), 13));
    assertEquals(1.3, placing.spareMm(), CLOSE);
    assertEquals(0.2, placing.shift().xMm(), CLOSE);
    assertEquals(0, placing.shift().yMm(), CLOSE);
  }

  @Test
  void threeCoresAreAsFarOutAsTheCircleThatHoldsTheirErrors() {
    // Errors at the corners of a triangle of equal sides 1: circle of radius 1 / sqrt 3.
    double height = Math.sqrt(3) / 2;
    Placing placing =
        place(
            shifts(Axis.X, Axis.Y),
            bore("a", 0, 0, 16, new Spot(0, 0, 0), 12),
            bore("b", 50, 0, 16, new Spot(51, 0, 0), 12),
            bore("c", 0, 50, 16, new Spot(0.5, 50 + height, 0), 12));
    assertEquals(2 - 1 / Math.sqrt(3), placing.spareMm(), CLOSE);
    assertTrue(placing.features().stream().allMatch(Placing.Coming::governs));
  }

  @Test
  void aBossIsTurnedSmallerAndABoreCutLarger() {
    RoundFace boss =
        new RoundFace(
            "boss",
            RoundFace.Kind.BOSS,
            Axis.Z,
            new Spot(0, 0, 0),
            20,
            0.25,
            List.of(new RoundFace.Rough(new Spot(1, 1, 0), 22)),
            0);
    // Centres 0.6 apart and (22 - 20)/2 - 0.25 = 0.75, (16 - 14)/2 = 1: shared 1.75 - 0.6 over 2.
    Placing placing =
        place(shifts(Axis.X, Axis.Y), boss, bore("bore", 0, 0, 16, new Spot(1.6, 1, 0), 14));
    assertEquals(0.575, placing.spareMm(), CLOSE);
    assertEquals(1.175, placing.shift().xMm(), CLOSE);
  }

  /**
   * Rough and finished 0.6 apart: 0.3 per side, 0.2 short of the cut, so the diameter gives 0.4.
   */
  @ParameterizedTest
  @CsvSource({"BORE, 16, 15.4, 16.4", "BOSS, 20, 20.6, 19.6"})
  void aRoundOneThatIsShortGivesInItsDiameter(
      RoundFace.Kind kind, double finished, double rough, double then) {
    RoundFace round =
        new RoundFace(
            "round",
            kind,
            Axis.Z,
            new Spot(0, 0, 0),
            finished,
            0.5,
            List.of(new RoundFace.Rough(new Spot(2, 1, 0), rough)),
            0);
    Placing placing = place(shifts(Axis.X, Axis.Y), round);
    assertEquals(-0.2, placing.spareMm(), CLOSE);
    assertEquals(1, placing.givings().size());
    Placing.Giving giving = placing.givings().get(0);
    assertEquals(0.4, giving.byMm(), 1e-5);
    assertEquals(then, giving.finishedMm(), 1e-5);
    assertTrue(Placing.cleansUp(giving.spareMm()), "tried, it cleans up: " + giving.spareMm());
    assertEquals(0, giving.spareMm(), 1e-4);
  }

  /** Two cores are too large for their bores: to open one alone leaves the other short. */
  @Test
  void whatCannotHelpAloneIsNotOffered() {
    Placing placing =
        place(
            shifts(Axis.X, Axis.Y),
            bore("left", 0, 0, 16, new Spot(0, 0, 0), 16.2),
            bore("right", 40, 0, 16, new Spot(40, 0, 0), 16.2));
    assertEquals(-0.1, placing.spareMm(), CLOSE);
    assertEquals(List.of(), placing.givings());
  }
}
