package org.fettlebench.holes.chance;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A chance, and how far it may be out.
 *
 * @param value between 0 and 1
 * @param standardError of the value: of a simulation its own standard error, of an integration a
 *     bound on what it neglects; 0 or more
 * @param trials how many were simulated; 0 when it was integrated
 */
public record Chance(double value, double standardError, long trials) {
  /**
   * Refuses what is no chance.
   *
   * @throws IllegalArgumentException if a figure is out of its range
   */
  public Chance {
    if (!(value >= 0 && value <= 1)) {
      throw new IllegalArgumentException("chance " + value + " is outside 0 to 1");
    }
    if (!(standardError >= 0 && standardError <= 1 && trials >= 0)) {
      throw new IllegalArgumentException(
          "chance " + value + ": standard error " + standardError + " of " + trials + " trials");
    }
  }

  /**
   * Returns the chance in words, to a tenth of a per cent: {@code 97.3 %}. What is not quite
   * nothing or certainty is not rounded to it: {@code under 0.1 %}, {@code over 99.9 %}.
   */
  public String percent() {
    if (value < 0.001 && value > 1e-9) {
      return "under 0.1 %";
    }
    if (value > 0.999 && value < 1 - 1e-9) {
      return "over 99.9 %";
    }
    return BigDecimal.valueOf(value)
            .movePointRight(2)
            .setScale(1, RoundingMode.HALF_EVEN)
            .stripTrailingZeros()
            .toPlainString()
        + " %";
  }
}
