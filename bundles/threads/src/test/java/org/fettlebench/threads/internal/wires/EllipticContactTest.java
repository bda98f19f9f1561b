package org.fettlebench.threads.internal.wires;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.internal.OurThreads;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Crossed bars against Hertz's equations with the integrals summed plainly. */
class EllipticContactTest {
  private static final double STEEL = 207_000 / (2 * 0.91);

  /** The integral of f over the pressure ellipse's angle, by the midpoint rule. */
  private static double integral(java.util.function.DoubleUnaryOperator of) {
    int steps = 20_000;
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      sum += of.applyAsDouble((i + 0.5) * Math.PI / 2 / steps);
    }
    return sum * Math.PI / 2 / steps;
  }

  private static double firstKind(double m) {
    return integral(angle -> 1 / Math.sqrt(1 - m * Math.sin(angle) * Math.sin(angle)));
  }

  private static double secondKind(double m) {
    return integral(angle -> Math.sqrt(1 - m * Math.sin(angle) * Math.sin(angle)));
  }

  /**
   * Johnson (4.25) to (4.28): with axes a and b and m = 1 - (b/a)^2, 1/R' over 1/R'' is ((a/b)^2 E
   * - K) / (K - E), and the approach is 3 F K / (2 pi a E*). The axis is found from the load by the
   * curvatures: 1/(2R') = 3 F (K - E) / (2 pi E* a^3 m).
   */
  @ParameterizedTest
  @CsvSource({"1, 0.9", "2.5, 0.6", "10, 0.3", "10, 0.1", "5, 0.03"})
  void approach(double force, double axes) {
    double m = 1 - axes * axes;
    double k = firstKind(m);
    double e = secondKind(m);
    double large = 6;
    double small = large / ((e / (axes * axes) - k) / (k - e));
    double a = Math.cbrt(3 * force * (k - e) / (2 * Math.PI * STEEL * m) * 2 * large);
    double expected = 3 * force * k / (2 * Math.PI * a * STEEL);
    assertEquals(expected, HertzContact.approachMm(force, small, large, STEEL), 1e-5 * expected);
  }

  private final ScrewThread m6 = OurThreads.fresh().find("M6").orElseThrow();
  private final WireService wires = new WireService();
  private final Length wire = Length.ofMillimetres(0.577);

  @ParameterizedTest
  @ValueSource(doubles = {1e-6, 100})
  void forcesToTheLimit(double force) {
    assertTrue(wires.give(m6, wire, force, 207).overWires().nanometres() >= 0);
  }

  /** Softer wires give more; the ends of the range are in it. */
  @Test
  void moduliToTheLimit() {
    Length soft = wires.give(m6, wire, 10, 10).overWires();
    Length hard = wires.give(m6, wire, 10, 700).overWires();
    // By similitude the give goes with the modulus to the power -2/3.
    assertEquals(Math.pow(70, 2 / 3.0), soft.millimetres() / hard.millimetres(), 0.01);
    assertEquals(2, wires.give(m6, wire, 10, 207).notes().size());
  }

  @Test
  void refusesAWireThatDoesNotFitEverywhere() {
    Length thick = Length.ofMillimetres(2);
    assertThrows(MeasureException.class, () -> wires.give(m6, thick, 10, 207));
    assertThrows(MeasureException.class, () -> wires.effective(m6, thick, Length.ofMillimetres(8)));
  }

  @Test
  void effectiveDiametersFromHalfToTwice() {
    Length basic = m6.effective();
    Length twice = basic.times(2);
    assertTrue(wires.over(m6, wire, twice).overWires().compareTo(twice) > 0);
    assertThrows(
        MeasureException.class,
        () -> wires.over(m6, wire, twice.plus(Length.ofMillimetres(0.001))));
    Length half = Length.ofMillimetres(basic.millimetres() / 2 + 0.001);
    assertTrue(wires.over(m6, wire, half).overWires().compareTo(half) > 0);
  }
}
