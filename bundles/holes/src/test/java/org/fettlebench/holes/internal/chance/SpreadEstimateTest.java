package org.fettlebench.holes.internal.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.fettlebench.fits.ErrorLaw;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.PositionLaw;
import org.fettlebench.holes.chance.MethodEstimate;
import org.fettlebench.measure.Point;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Estimates against the formula by hand, published quantiles, and what intervals promise. */
class SpreadEstimateTest {
  private static final Source SOURCE = new Source("a test", Standing.COMMON_PRACTICE);
  private static final HoleMethod METHOD =
      new HoleMethod("test", "test", List.of("drill"), 0.15, SOURCE);

  private static MethodEstimate estimate(HoleMethod before, List<Point> errors) {
    return new EstimateService().estimate(before, errors, 10, "the club");
  }

  private static List<Point> thrown(Random random, int holes, double sigmaX, double sigmaY) {
    List<Point> errors = new ArrayList<>();
    for (int i = 0; i < holes; i++) {
      errors.add(new Point(sigmaX * random.nextGaussian(), sigmaY * random.nextGaussian()));
    }
    return errors;
  }

  @Test
  void withoutMeasurementsTheMethodStaysAsItWas() {
    MethodEstimate estimate = estimate(METHOD, List.of());

    assertSame(METHOD, estimate.now());
    assertEquals(0.15, estimate.x().sigmaMm(), 1e-15);
    assertEquals(0, estimate.holes());
    assertTrue(estimate.together());
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/expected/chi-square.csv", numLinesToSkip = 1)
  void theIntervalComesFromPublishedQuantiles(int freedom, double low, double high) {
    // Two readings a hole; holes exactly as wide as expected leave sigma as it is.
    int holes = freedom / 2 - 10;
    List<Point> errors = new ArrayList<>();
    for (int i = 0; i < holes; i++) {
      double side = i % 2 == 0 ? 0.15 : -0.15;
      errors.add(new Point(side, i % 4 < 2 ? side : -side));
    }
    MethodEstimate estimate = estimate(METHOD, errors);
    double sum = 0.15 * 0.15 * freedom;

    assertEquals(0.15, estimate.x().sigmaMm(), 1e-12);
    assertEquals(low, sum / Math.pow(estimate.x().highMm(), 2), 0.0005);
    assertEquals(high, sum / Math.pow(estimate.x().lowMm(), 2), 0.0005);
  }

  @Test
  void threeHolesDoNotSwingIt() {
    // Each twice as far out as expected along both axes, and evenly about the aim.
    double twice = 0.3;
    double half = Math.sqrt(3) / 2;
    List<Point> errors =
        List.of(
            new Point(twice * Math.sqrt(2), 0),
            new Point(-twice * Math.sqrt(2) / 2, twice * Math.sqrt(2) * half),
            new Point(-twice * Math.sqrt(2) / 2, -twice * Math.sqrt(2) * half));
    MethodEstimate estimate = estimate(METHOD, errors);

    // sqrt((10 + 3 x 4) / 13) = 1.3009 times what was expected.
    assertEquals(0.15 * Math.sqrt(22 / 13.0), estimate.x().sigmaMm(), 1e-12);
    assertTrue(estimate.offset().isEmpty());
    assertEquals("measured by the club, 3 holes", estimate.now().source().citation());
    assertEquals(Standing.MEASURED, estimate.now().source().standing());
    assertEquals(
        new ErrorLaw.Normal(estimate.x().sigmaMm(), estimate.y().sigmaMm()),
        estimate.now().law().parts().get(0).law());
  }

  @Test
  void manyHolesOutweighWhatWasKnown() {
    MethodEstimate estimate = estimate(METHOD, thrown(new Random(1), 2000, 0.05, 0.05));

    assertEquals(0.05, estimate.x().sigmaMm(), 0.003);
    assertTrue(estimate.x().lowMm() < estimate.x().sigmaMm());
    assertTrue(estimate.x().sigmaMm() < estimate.x().highMm());
  }

  @Test
  void axesThatDifferAreTakenApart() {
    MethodEstimate estimate = estimate(METHOD, thrown(new Random(2), 40, 0.05, 0.25));

    assertFalse(estimate.together());
    assertTrue(estimate.x().sigmaMm() < 0.1 && estimate.y().sigmaMm() > 0.15);
    HoleMethod uneven =
        METHOD.withLaw(
            new PositionLaw(
                0,
                0,
                List.of(new PositionLaw.Part("drill", new ErrorLaw.Normal(0.1, 0.2), SOURCE))),
            SOURCE);
    assertFalse(estimate(uneven, List.of()).together());
    assertEquals(0.2, estimate(uneven, List.of()).y().sigmaMm(), 1e-12);
  }

  /** Eight holes evenly about the aim, spread along y so many times as far as along x. */
  private static List<Point> uneven(double timesSquared) {
    double x = 0.1;
    double y = x * Math.sqrt(timesSquared);
    List<Point> errors = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      errors.add(new Point(i % 2 == 0 ? x : -x, i % 4 < 2 ? y : -y));
    }
    return errors;
  }

  /** Printed tables of F: 4.99 is passed once in 40 times with 7 and 7 degrees of freedom. */
  @Test
  void axesDifferBeyondThePrintedF() {
    assertTrue(estimate(METHOD, uneven(4.9)).together());
    assertFalse(estimate(METHOD, uneven(5.1)).together());
    assertTrue(estimate(METHOD, uneven(1 / 4.9)).together());
    assertFalse(estimate(METHOD, uneven(1 / 5.1)).together());
  }

  @Test
  void errorsAlongOneAxisOnlyAreTakenApartFromThreeHolesOn() {
    List<Point> line = List.of(new Point(0.1, 0), new Point(-0.1, 0), new Point(0, 0));
    assertFalse(estimate(METHOD, line).together());
    assertTrue(estimate(METHOD, line.subList(0, 2)).together());
    Point same = new Point(0.01, 0);
    assertTrue(estimate(METHOD, List.of(same, same, same)).together());
  }

  @Test
  void anOffsetIsToldAndTheSpreadIsAboutIt() {
    List<Point> errors =
        thrown(new Random(3), 20, 0.1, 0.1).stream().map(e -> e.moved(0.3, -0.2)).toList();
    MethodEstimate estimate = estimate(METHOD, errors);
    MethodEstimate.Offset offset = estimate.offset().orElseThrow();
    double meanX = errors.stream().mapToDouble(Point::xMm).average().orElseThrow();
    double meanY = errors.stream().mapToDouble(Point::yMm).average().orElseThrow();
    double squares =
        errors.stream()
            .mapToDouble(e -> Math.pow(e.xMm() - meanX, 2) + Math.pow(e.yMm() - meanY, 2))
            .sum();

    assertEquals(meanX, offset.xMm(), 1e-12);
    assertEquals(meanY, offset.yMm(), 1e-12);
    assertTrue(offset.luck() < 1e-4);
    assertEquals(meanX, estimate.now().law().offsetXMm(), 1e-12);
    assertEquals(Math.sqrt((10 * 0.15 * 0.15 + squares / 2) / 29), estimate.x().sigmaMm(), 1e-12);
  }

  @Test
  void twoHolesTellNothingOfAnOffset() {
    assertTrue(estimate(METHOD, List.of(new Point(5, 5), new Point(5, 5.1))).offset().isEmpty());
    assertTrue(
        estimate(METHOD, List.of(new Point(5, 5), new Point(5, 5.1), new Point(5, 5.2)))
            .offset()
            .isPresent());
  }

  /** Spreads drawn as the prior has them: the intervals must hold 95 of 100, offsets 5 by luck. */
  @Test
  void intervalsHoldWhatTheyPromise() {
    Random random = new Random(4);
    int held = 0;
    int offsets = 0;
    int rounds = 2000;
    for (int round = 0; round < rounds; round++) {
      double chiSquare = 0;
      for (int i = 0; i < 20; i++) {
        chiSquare += Math.pow(random.nextGaussian(), 2);
      }
      double sigma = 0.15 * Math.sqrt(20 / chiSquare);
      MethodEstimate estimate = estimate(METHOD, thrown(random, 8, sigma, sigma));
      held += estimate.x().lowMm() <= sigma && sigma <= estimate.x().highMm() ? 1 : 0;
      offsets += estimate.offset().isPresent() ? 1 : 0;
    }

    // Axes taken apart by luck in one round of twenty make the share a little less.
    assertEquals(0.95, (double) held / rounds, 0.015);
    assertEquals(0.05, (double) offsets / rounds, 0.015);
  }

  @Test
  void whatWasKnownMayCountForUpToAThousandHoles() {
    MethodEstimate sure = new EstimateService().estimate(METHOD, uneven(1), 1000, "the club");
    assertEquals(0.15, sure.x().sigmaMm(), 0.001);
    assertEquals(1000, sure.priorHoles());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, 1001, Double.NaN})
  void aWeightThatIsNoneIsRefused(double priorHoles) {
    assertThrows(
        IllegalArgumentException.class,
        () -> new EstimateService().estimate(METHOD, List.of(), priorHoles, "the club"));
  }
}
