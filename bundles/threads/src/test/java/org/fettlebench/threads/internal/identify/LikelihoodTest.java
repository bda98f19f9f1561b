package org.fettlebench.threads.internal.identify;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Densities against the definition: the normal density, and its mean over a range. */
class LikelihoodTest {
  private static double density(double reading, double size, double sigma) {
    double off = (reading - size) / sigma;
    return Math.exp(-off * off / 2) / (sigma * Math.sqrt(2 * Math.PI));
  }

  /** Mean of the density over the range, by the midpoint rule. */
  private static double meanDensity(double reading, double least, double most, double sigma) {
    int steps = 200_000;
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      sum += density(reading, least + (i + 0.5) * (most - least) / steps, sigma);
    }
    return sum / steps;
  }

  @ParameterizedTest
  @CsvSource({"6, 6, 0.02", "5.95, 6, 0.02", "6.1, 6, 0.05", "1, 2, 0.5"})
  void ofAPoint(double reading, double size, double sigma) {
    assertEquals(
        Math.log(density(reading, size, sigma)), Likelihood.ofPoint(reading, size, sigma), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({
    "5.90, 5.8, 6.0, 0.02",
    "5.79, 5.8, 6.0, 0.02",
    "6.03, 5.8, 6.0, 0.02",
    "5.9, 5.8, 6.0, 0.3",
    "6.25, 5.8, 6.0, 0.1",
    "5.60, 5.8, 6.0, 0.05"
  })
  void ofARange(double reading, double least, double most, double sigma) {
    assertEquals(
        Math.log(meanDensity(reading, least, most, sigma)),
        Likelihood.ofRange(reading, least, most, sigma),
        2e-2);
  }

  /** Of the tail beyond five sigma the leading term stands: within its next, 1 / x^2 = 0.03. */
  @ParameterizedTest
  @CsvSource({"5.68, 5.8, 6.0, 0.02", "6.12, 5.8, 6.0, 0.02", "6.2, 5.8, 6.0, 0.02"})
  void farOutside(double reading, double least, double most, double sigma) {
    assertEquals(
        Math.log(meanDensity(reading, least, most, sigma)),
        Likelihood.ofRange(reading, least, most, sigma),
        0.03);
  }

  @Test
  void aNarrowRangeIsAPointInItsMiddle() {
    assertEquals(
        Likelihood.ofPoint(6.01, 5.9999, 0.05), Likelihood.ofRange(6.01, 5.9998, 6.0, 0.05), 1e-12);
    assertEquals(
        Likelihood.ofPoint(6.01, 6, 0.05), Likelihood.ofRange(6.01, 5.9997, 6.0003, 0.05), 1e-4);
  }
}
