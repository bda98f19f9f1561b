package org.fettlebench.holes.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Results of a simulation against certified values and closed forms. */
class SimulatedTest {
  /** NIST's StRD data set NumAcc1: mean 10000002, standard deviation 1, both exact. */
  @Test
  void certifiedMeanAndDeviation() {
    double[] results = {10000001, 10000003, 10000002};
    Simulated simulated = new Simulated(results, 1 / Math.sqrt(3));
    assertEquals(3, simulated.trials());
    assertEquals(10000002, simulated.mean());
    assertEquals(1, simulated.standardDeviation());
    assertEquals(1 / Math.sqrt(3), simulated.standardError(), 1e-15);
    assertTrue(simulated.reached());
    assertFalse(new Simulated(results, 0.577).reached());
    // Uneven results, by hand: squares from the mean of 5 add to 32.
    double[] uneven = {2, 4, 4, 4, 5, 5, 7, 9};
    assertEquals(Math.sqrt(32 / 7.0), new Simulated(uneven, 1).standardDeviation(), 1e-15);
  }

  /** Between neighbours in proportion to (n - 1) p: Hyndman and Fan's seventh definition. */
  @ParameterizedTest
  @CsvSource({"0, 1", "0.25, 1.75", "0.5, 2.5", "0.9, 5.1", "1, 6"})
  void quantilesLieBetweenNeighbours(double share, double expected) {
    assertEquals(expected, new Simulated(new double[] {6, 1, 3, 2}, 1).quantile(share), 2e-12);
  }

  /** Of even results a quantile moves as its share does, by sqrt(p (1 - p) / n). */
  @Test
  void quantilesOfEvenResultsAreAsUncertainAsTheirCounts() {
    int count = 10_000;
    double[] even = IntStream.range(0, count).mapToDouble(i -> i / (count - 1.0)).toArray();
    Simulated simulated = new Simulated(even, 1);
    assertEquals(0.005, simulated.quantileStandardError(0.5), 1e-12);
    assertEquals(0.003, simulated.quantileStandardError(0.9), 1e-12);
    assertEquals(0, simulated.quantileStandardError(1), 1e-12);
    // Close to an end only the side that is there counts: p + sqrt(p (1 - p) / n), halved.
    double step = Math.sqrt(1e-5 * (1 - 1e-5) / count);
    assertEquals((1e-5 + step) / 2, simulated.quantileStandardError(1e-5), 1e-12);
    assertEquals((1e-5 + step) / 2, simulated.quantileStandardError(1 - 1e-5), 1e-12);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void whatIsNotFiniteIsRefused(double bad) {
    assertThrows(IllegalArgumentException.class, () -> new Simulated(new double[] {1, bad, 2}, 1));
  }

  @Test
  void tooFewResultsAndSharesOutsideAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Simulated(new double[] {1}, 1));
    Simulated two = new Simulated(new double[] {1, 2}, 1);
    for (double share : new double[] {-0.01, 1.01, Double.NaN}) {
      assertThrows(IllegalArgumentException.class, () -> two.quantile(share));
      assertThrows(IllegalArgumentException.class, () -> two.quantileStandardError(share));
    }
  }
}
