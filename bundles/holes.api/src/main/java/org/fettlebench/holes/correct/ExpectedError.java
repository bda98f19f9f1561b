package org.fettlebench.holes.correct;

/**
 * How far a way of placing a hole may be out.
 *
 * @param title of the way, for people
 * @param radiusMm radius of position error not exceeded at the asked confidence; 0 or more
 * @param means confidence and standing of the figure, in words
 */
public record ExpectedError(String title, double radiusMm, String means) {
  /**
   * Refuses what is no radius.
   *
   * @throws HoleException if the radius is negative or not a number
   */
  public ExpectedError {
    Require.notNegative(title + ": radius of position error", radiusMm);
  }
}
