package org.fettlebench.holes.patterns;

/**
 * Will the holes of two parts go together when each part is drilled on its own?
 *
 * @param pattern where the holes should be
 * @param fastenerMm diameter of the fastener, as large as it may be
 * @param upper the part on top
 * @param lower the part below; of the two at most one is tapped
 * @param trials how many pairs of parts to simulate, 100 to 10 000 000
 * @param seed of the simulation; the same gives the same
 */
public record PatternQuestion(
    HolePattern pattern,
    double fastenerMm,
    PatternPart upper,
    PatternPart lower,
    int trials,
    long seed) {
  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if one is out of range or both parts are tapped
   */
  public PatternQuestion {
    Require.size("fastener diameter", fastenerMm);
    Require.count("number of trials", trials, 100, 10_000_000);
    if (upper.tapped() && lower.tapped()) {
      throw new IllegalArgumentException(
          upper.name() + " and " + lower.name() + " are both tapped: one must pass the fastener");
    }
  }

  /** Returns whether one of the parts is tapped, so that it holds the fastener in its place. */
  public boolean fixed() {
    return upper.tapped() || lower.tapped();
  }

  /**
   * Returns how far the centres of two matching holes may lie apart; negative if the fastener does
   * not enter one of them, however large the other is.
   */
  public double playMm() {
    double least = Math.min(play(upper), play(lower));
    return least < 0 ? least : play(upper) + play(lower);
  }

  private double play(PatternPart part) {
    return part.tapped() ? 0 : (part.clearanceMm().getAsDouble() - fastenerMm) / 2;
  }

  /** Returns how far fasteners stand over at the far face of what they pass. */
  public PlacingLaw leaning() {
    return lower.tapped() ? lower.leaning() : upper.leaning();
  }

  /** Returns the hole that gives a play, in every part that is not tapped. */
  public double holeForPlayMm(double playMm) {
    return fastenerMm + (fixed() ? 2 : 1) * playMm;
  }

  /** Returns the same question with all plain holes of one size. */
  public PatternQuestion withHoles(double diameterMm) {
    return new PatternQuestion(
        pattern, fastenerMm, upper.withHole(diameterMm), lower.withHole(diameterMm), trials, seed);
  }

  /** Returns the same question with other parts. */
  public PatternQuestion withParts(PatternPart newUpper, PatternPart newLower) {
    return new PatternQuestion(pattern, fastenerMm, newUpper, newLower, trials, seed);
  }
}
