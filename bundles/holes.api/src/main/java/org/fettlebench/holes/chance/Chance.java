package org.fettlebench.holes.chance;

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
}
