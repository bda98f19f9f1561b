package org.fettlebench.holes.chance;

/**
 * When a simulation may stop.
 *
 * @param seed the same seed gives the same answer
 * @param standardError of the mean (of a chance, for chances) at which it stops; above 0
 * @param least trials that are made in any case; 1 or more
 * @param most trials after which it stops all the same; at least {@code least}, at most ten million
 */
public record Aim(long seed, double standardError, long least, long most) {
  private static final long LIMIT = 10_000_000;

  /**
   * Refuses what could never stop.
   *
   * @throws IllegalArgumentException if a figure is out of its range
   */
  public Aim {
    if (!(standardError > 0 && Double.isFinite(standardError))) {
      throw new IllegalArgumentException(
          "standard error " + standardError + " to stop at is not above 0");
    }
    if (!(least >= 1 && least <= most && most <= LIMIT)) {
      throw new IllegalArgumentException(
          "trials from " + least + " to " + most + " are not within 1 to " + LIMIT);
    }
  }

  /** Returns an aim of so many trials, neither more nor fewer. */
  public static Aim trials(long seed, long count) {
    return new Aim(seed, Double.MIN_NORMAL, count, count);
  }
}
