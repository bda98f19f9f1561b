package org.fettlebench.holes.internal.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.numbers.gamma.Erf;
import org.fettlebench.holes.chance.Chance;
import org.fettlebench.holes.patterns.HolePattern;
import org.fettlebench.holes.patterns.PatternPart;
import org.fettlebench.holes.patterns.PatternQuestion;
import org.fettlebench.holes.patterns.PlacingLaw;
import org.fettlebench.holes.patterns.PlayNeeded;
import org.fettlebench.holes.patterns.SpottingAnswer;
import org.fettlebench.measure.Point;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.junit.jupiter.api.Test;

class PatternsServiceTest {
  private static final double SIGMAS = 4;
  private static final Source SOURCE = new Source("test", Standing.RULE);
  private final PatternsService patterns = new PatternsService();

  private static PlacingLaw normal(double sigmaMm) {
    return sigmaMm > 0 ? PlacingLaw.normal(sigmaMm, "test", SOURCE) : PlacingLaw.exact();
  }

  private static PatternQuestion question(HolePattern pattern, double hole, double sigmaMm) {
    return new PatternQuestion(
        pattern,
        5,
        new PatternPart("cover", OptionalDouble.of(hole), normal(sigmaMm)),
        new PatternPart("body", OptionalDouble.empty(), normal(sigmaMm)),
        20_000,
        42);
  }

  private static HolePattern two(double apartMm) {
    return HolePattern.at("two", List.of(new Point(0, 0), new Point(apartMm, 0)));
  }

  @Test
  void oneHoleAlwaysGoes() {
    HolePattern one = HolePattern.at("one", List.of(new Point(3, 4)));
    Chance chance = patterns.chance(question(one, 5.001, 0.5));
    assertEquals(1, chance.value());
    assertTrue(chance.standardError() > 0, "20000 of 20000 is no certainty");
  }

  /**
   * Two holes far apart: only the error of their distance counts, which is normal with a variance
   * four times that of one hole along one axis, and may be as large as twice the play.
   */
  @Test
  void twoHolesFollowTheNormalLawOfTheirDistance() {
    for (double hole : new double[] {5.1, 5.2, 5.4}) {
      PatternQuestion asked = question(two(5000), hole, 0.1);
      double closed = Erf.value((hole - 5) / (2 * 0.1) / Math.sqrt(2));
      Chance chance = patterns.chance(asked);
      assertEquals(closed, chance.value(), SIGMAS * chance.standardError());
    }
  }

  /** With even errors the distance differs by a sum of two triangular errors. */
  @Test
  void twoHolesOfEvenErrorOnlyInOnePart() {
    PlacingLaw even = PlacingLaw.within(0.1, "test", SOURCE);
    PatternQuestion asked = question(two(5000), 5.05, 0);
    asked = asked.withParts(asked.upper().placed(even), asked.lower());
    // |u1 - u2| of two even errors on (-w, w): P(<= z) = 1 - (1 - z / 2w)^2 with z = twice the
    // play.
    double closed = 1 - Math.pow(1 - 0.05 / 0.2, 2);
    Chance chance = patterns.chance(asked);
    assertEquals(closed, chance.value(), SIGMAS * chance.standardError());
    assertEquals(0.1 / Math.sqrt(3), even.sigmaPerAxisMm(), 1e-15);
  }

  @Test
  void clearanceInBothPartsIsTwiceThePlayOfOneTapped() {
    PatternQuestion fixed = question(two(50), 5.4, 0.1);
    PatternQuestion floating =
        fixed.withParts(
            fixed.upper(), new PatternPart("body", OptionalDouble.of(5.4), normal(0.1)));
    assertEquals(0.2, fixed.playMm(), 1e-12);
    assertEquals(0.4, floating.playMm(), 1e-12);
    assertEquals(5.4, fixed.holeForPlayMm(0.2), 1e-12);
    assertEquals(5.4, floating.holeForPlayMm(0.4), 1e-12);
    assertEquals(
        patterns.chance(fixed.withHoles(5.8)).value(), patterns.chance(floating).value(), 0);
  }

  @Test
  void theNeedsAndTheChancesAreTheSameDraws() {
    PatternQuestion asked = question(HolePattern.circle("ring", 40, 12, 15), 5, 0.05);
    PlayNeeded needed = patterns.needed(asked);
    double last = -1;
    for (double hole : new double[] {4.9, 5.1, 5.2, 5.3, 5.4, 6}) {
      PatternQuestion holes = asked.withHoles(hole);
      double chance = patterns.chance(holes).value();
      assertEquals(chance, needed.chanceAt(holes.playMm()).value(), 2.0 / 20_000);
      assertTrue(chance >= last, "a larger hole is never worse");
      last = chance;
    }
    double play = needed.playFor(0.95);
    assertEquals(0.95, needed.chanceAt(play).value(), 1e-4);
    assertTrue(needed.chanceAt(play - 1e-9).value() < 0.95);
  }

  @Test
  void sameSeedSameAnswerOtherSeedNearlySo() {
    PatternQuestion asked = question(HolePattern.circle("ring", 40, 6, 0), 5.3, 0.1);
    PatternQuestion other =
        new PatternQuestion(asked.pattern(), 5, asked.upper(), asked.lower(), 20_000, 43);
    Chance one = patterns.chance(asked);
    assertEquals(one, patterns.chance(asked));
    Chance again = patterns.chance(other);
    assertTrue(one.value() != again.value());
    assertEquals(one.value(), again.value(), 1.5 * SIGMAS * one.standardError());
  }

  @Test
  void scalingEverythingChangesNothing() {
    PatternQuestion asked = question(HolePattern.circle("ring", 40, 6, 0), 5.3, 0.1);
    PatternQuestion large =
        new PatternQuestion(
            HolePattern.circle("ring", 400, 6, 0),
            50,
            new PatternPart("cover", OptionalDouble.of(53), normal(1)),
            new PatternPart("body", OptionalDouble.empty(), normal(1)),
            20_000,
            42);
    assertEquals(patterns.chance(asked).value(), patterns.chance(large).value(), 1.0 / 20_000);
  }

  @Test
  void turningOrRenumberingThePatternChangesNothingButTheDraws() {
    PatternQuestion asked = question(HolePattern.circle("ring", 40, 6, 0), 5.3, 0.1);
    PatternQuestion turned = question(HolePattern.circle("ring", 40, 6, 77), 5.3, 0.1);
    Chance one = patterns.chance(asked);
    assertEquals(one.value(), patterns.chance(turned).value(), 1.5 * SIGMAS * one.standardError());
  }

  @Test
  void spottingLeavesOnlyItsOwnErrorBetweenTheParts() {
    PatternQuestion asked = question(two(5000), 5.2, 0.1);
    SpottingAnswer answer = patterns.spotting(asked, true, normal(0.04));
    assertEquals("cover", answer.first());
    assertEquals("body", answer.second());
    // The distance now differs by two errors of the spotting along the line.
    double closed = Erf.value(0.2 / (Math.sqrt(2) * 0.04) / Math.sqrt(2));
    assertEquals(closed, answer.spotted().value(), SIGMAS * answer.spotted().standardError());
    assertEquals(patterns.chance(asked), answer.apart());
    assertEquals(0.1, answer.firstSigmaMm(), 1e-12);
    assertEquals(0.1, answer.secondApartSigmaMm(), 1e-12);
    assertEquals(Math.hypot(0.1, 0.04), answer.secondSpottedSigmaMm(), 1e-12);
    assertEquals("body", patterns.spotting(asked, false, normal(0.04)).first());
  }

  @Test
  void aHoleThatDoesNotPassNeverGoes() {
    assertEquals(0, patterns.chance(question(two(50), 4.99, 0.1)).value());
    // A large hole in the other part does not help.
    PatternQuestion floating =
        new PatternQuestion(
            two(50),
            5,
            new PatternPart("cover", OptionalDouble.of(4.99), normal(0.001)),
            new PatternPart("flange", OptionalDouble.of(6), normal(0.001)),
            1000,
            1);
    assertEquals(-0.005, floating.playMm(), 1e-12);
    assertEquals(0, patterns.chance(floating).value());
  }

  @Test
  void refusesWhatCannotBe() {
    HolePattern ring = HolePattern.circle("ring", 40, 6, 0);
    PatternQuestion asked = question(ring, 5.3, 0.1);
    for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY, 1e9}) {
      assertThrows(IllegalArgumentException.class, () -> asked.withHoles(bad));
      assertThrows(IllegalArgumentException.class, () -> HolePattern.circle("x", bad, 3, 0));
    }
    for (double bad : new double[] {0, -0.1, Double.NaN, 1e9}) {
      assertThrows(IllegalArgumentException.class, () -> PlacingLaw.normal(bad, "test", SOURCE));
      assertThrows(IllegalArgumentException.class, () -> PlacingLaw.within(bad, "test", SOURCE));
    }
    assertThrows(IllegalArgumentException.class, () -> HolePattern.circle("x", 40, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> HolePattern.circle("x", 40, 501, 0));
    assertThrows(
        IllegalArgumentException.class,
        () -> HolePattern.at("x", List.of(new Point(1, 1), new Point(1, 1))));
    assertThrows(
        IllegalArgumentException.class, () -> asked.withParts(asked.lower(), asked.lower()));
    assertThrows(IllegalArgumentException.class, () -> PlayNeeded.of(new double[] {1}).playFor(1));
  }
}
