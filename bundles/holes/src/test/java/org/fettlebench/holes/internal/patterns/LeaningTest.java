package org.fettlebench.holes.internal.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.fettlebench.fits.ErrorLaw;
import org.fettlebench.fits.PositionLaw;
import org.fettlebench.holes.chance.Chance;
import org.fettlebench.holes.patterns.HolePattern;
import org.fettlebench.holes.patterns.PatternPart;
import org.fettlebench.holes.patterns.PatternQuestion;
import org.fettlebench.holes.patterns.PlacingLaw;
import org.fettlebench.measure.Point;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Fasteners that stand over, against closed forms. */
class LeaningTest {
  private static final Source SOURCE = new Source("a test", Standing.RULE);
  private static final double SIGMA = 0.1;
  private static final double FASTENER = 5;

  private final PatternsService patterns = new PatternsService();

  /** Holes exactly in place, tapped below, in a play. */
  private static PatternQuestion question(double play, PlacingLaw leaning, Point... centres) {
    return new PatternQuestion(
        HolePattern.at("row", List.of(centres)),
        FASTENER,
        new PatternPart("cover", OptionalDouble.of(FASTENER + 2 * play), PlacingLaw.exact()),
        new PatternPart("body", OptionalDouble.empty(), PlacingLaw.exact()).leaning(leaning),
        100_000,
        1);
  }

  private static PlacingLaw normal(double sigmaX, double sigmaY) {
    PositionLaw.Part part =
        new PositionLaw.Part("leaning", new ErrorLaw.Normal(sigmaX, sigmaY), SOURCE);
    return new PlacingLaw(Optional.of(new PositionLaw(0, 0, List.of(part))), "a test");
  }

  private static void agree(double exact, Chance simulated) {
    assertEquals(exact, simulated.value(), 4 * simulated.standardError());
  }

  /** One fastener goes in while it stands over by no more than twice the play: Rayleigh's law. */
  @ParameterizedTest
  @ValueSource(doubles = {0.03, 0.06, 0.1})
  void oneMayStandOverByTwiceThePlay(double play) {
    double over = 2 * play / SIGMA;
    agree(
        1 - Math.exp(-over * over / 2),
        patterns.chance(question(play, normal(SIGMA, SIGMA), new Point(3, 4))));
  }

  /**
   * Two that stand over along their row only: both ends of both must lie in a width of twice the
   * play, so the range of 0 and two normal values is asked for.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.04, 0.08, 0.12})
  void twoAlongTheirRowMustLieInOneWidth(double play) {
    NormalDistribution normal = NormalDistribution.of(0, SIGMA);
    double width = 2 * play;
    int steps = 2000;
    // The least is 0, or one of the two at -a with the other up to -a + width.
    double sum = Math.pow(normal.probability(0, width), 2);
    for (int i = 0; i < steps; i++) {
      double a = (i + 0.5) * width / steps;
      sum += 2 * normal.density(a) * normal.probability(-a, width - a) * width / steps;
    }
    agree(
        sum,
        patterns.chance(
            question(play, normal(SIGMA, 1e-9), new Point(-200, 0), new Point(200, 0))));
  }

  /** The same draws, standing over twice as far, need twice the play; nothing needs nothing. */
  @Test
  void thePlayNeededGrowsWithTheLeaning() {
    assertEquals(0, needed(1e-9), 1e-7);
    assertEquals(2 * needed(0.05), needed(0.1), 1e-3 * needed(0.1));
  }

  private double needed(double sigma) {
    Point[] row = {new Point(0, 0), new Point(30, 0), new Point(0, 30)};
    return patterns.needed(question(1, normal(sigma, sigma), row)).playFor(0.9);
  }

  @Test
  void whichPartIsTappedDoesNotMatter() {
    PatternQuestion below = question(0.05, normal(SIGMA, SIGMA), new Point(0, 0), new Point(9, 0));
    agree(
        patterns.chance(below).value(),
        patterns.chance(below.withParts(below.lower(), below.upper())));
  }

  @Test
  void plainHolesDoNotLean() {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new PatternPart(
                "cover", OptionalDouble.of(5), PlacingLaw.exact(), normal(SIGMA, SIGMA)));
  }
}
