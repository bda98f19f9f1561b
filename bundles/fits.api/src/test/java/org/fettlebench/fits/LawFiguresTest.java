package org.fettlebench.fits;

import static org.fettlebench.fits.Plane.ORIGIN;
import static org.fettlebench.fits.Plane.law;
import static org.fettlebench.fits.Plane.rectangle;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.fettlebench.fits.ErrorLaw.Bounded;
import org.fettlebench.fits.ErrorLaw.Circle;
import org.fettlebench.fits.ErrorLaw.Normal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Variances by their integrals, and the ends of what is taken. */
class LawFiguresTest {
  /** An even error has half² / 3, one even over a circle radius² / 4 along any line. */
  @Test
  void variancesAdd() {
    PositionLaw bounded = law(new Bounded(0.2, 0.3));
    assertEquals(0.2 / Math.sqrt(3), bounded.sigmaXMm(), 1e-15);
    assertEquals(0.3 / Math.sqrt(3), bounded.sigmaYMm(), 1e-15);
    assertEquals(0.15, law(new Circle(0.3)).sigmaXMm(), 1e-15);
    assertEquals(0.15, law(new Circle(0.3)).sigmaYMm(), 1e-15);
    PositionLaw sum = law(9, 9, new Normal(0.1, 0.4), new Bounded(0.2, 0.3), new Circle(0.3));
    assertEquals(Math.sqrt(0.01 + 0.04 / 3 + 0.0225), sum.sigmaXMm(), 1e-15);
    assertEquals(Math.sqrt(0.16 + 0.03 + 0.0225), sum.sigmaYMm(), 1e-15);
    assertEquals(Math.sqrt((0.045833333333333 + 0.2125) / 2), sum.sigmaPerAxisMm(), 1e-12);
  }

  @Test
  void onlyANormalErrorAlikeBothWaysAboutTheAimIsRound() {
    assertEquals(OptionalDouble.of(0.3), law(Normal.round(0.3)).roundSigmaMm());
    assertEquals(
        0.5, law(Normal.round(0.3), Normal.round(0.4)).roundSigmaMm().orElseThrow(), 1e-15);
    assertTrue(law(0.1, 0, Normal.round(0.3)).roundSigmaMm().isEmpty());
    assertTrue(law(0, 0.1, Normal.round(0.3)).roundSigmaMm().isEmpty());
    assertTrue(law(new Normal(0.3, 0.4)).roundSigmaMm().isEmpty());
    assertTrue(law(new Circle(0.3)).roundSigmaMm().isEmpty());
    assertTrue(law(Normal.round(0.3), new Bounded(0.1, 0.1)).roundSigmaMm().isEmpty());
  }

  /** A small even error beside a normal one only widens it: by its variance. */
  @ParameterizedTest
  @ValueSource(doubles = {0.0005, 0.001, 0.003, 0.01})
  void aSmallBoundWidensANormalError(double half) {
    PositionLaw law = law(Normal.round(1), new Bounded(half, half));
    double wide = Math.sqrt(1 + half * half / 3);
    double expected = NormalDistribution.of(0, wide).probability(-1, 1);
    // Beyond the variance an even error departs by its fourth moment alone.
    assertEquals(expected, law.chanceWithin(rectangle(-1, -50, 1, 50), ORIGIN), 1e-9);
    assertEquals(expected, law.chanceWithin(rectangle(-50, -1, 50, 1), ORIGIN), 1e-9);
  }

  @Test
  void theEndsOfTheRangesAreTaken() {
    double most = PositionLaw.LARGEST_MM;
    assertEquals(most, law(most, -most, Normal.round(1)).offsetXMm());
    assertEquals(most, new Normal(most, 0).sigmaXMm());
    assertEquals(most, new Bounded(0, most).halfYMm());
    assertEquals(most, new Circle(most).radiusMm());
    assertEquals(0, law(Normal.round(1)).chanceWithinRadius(0));
    assertEquals(0, law(new Normal(1, 2)).chanceWithinRadius(0), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({"-1, 0.1, -1.0", "0.1, 200000, 200000.0", "NaN, 1, NaN", "200000, 1, 200000.0"})
  void theFigureThatIsWrongIsNamed(double x, double y, String wrong) {
    String says = " " + wrong + " mm of an error is outside 0 to 100000.0 mm";
    assertEquals(
        "sigma" + says, assertThrows(SeatException.class, () -> new Normal(x, y)).getMessage());
    assertEquals(
        "bound" + says, assertThrows(SeatException.class, () -> new Bounded(x, y)).getMessage());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1, -0.1, 1.1})
  void noRadiusHoldsNothingOrAll(double confidence) {
    PositionLaw law = law(Normal.round(1));
    assertEquals(
        "confidence " + confidence + " is outside 0 to 1",
        assertThrows(SeatException.class, () -> law.radiusMm(confidence)).getMessage());
  }

  @Test
  void offsetsAndCountsBeyondAreRefused() {
    assertThrows(SeatException.class, () -> law(100_001, 0, Normal.round(1)));
    assertThrows(SeatException.class, () -> law(0, -100_001, Normal.round(1)));
    ErrorLaw[] many = Collections.nCopies(7, new Bounded(1, 1)).toArray(ErrorLaw[]::new);
    String refused = assertThrows(SeatException.class, () -> law(many)).getMessage();
    assertTrue(refused.startsWith("7 bounded laws are more than the 6"), refused);
  }
}
