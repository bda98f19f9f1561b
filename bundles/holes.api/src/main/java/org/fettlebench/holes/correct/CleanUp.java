package org.fettlebench.holes.correct;

/**
 * Metal that the last drill must still find on every side, so that it cuts all round and leaves no
 * trace of the pilot or the file.
 *
 * @param perSideMm metal per side; 0 or more
 * @param means where the figure comes from: its source, or "common practice, no source"
 */
public record CleanUp(double perSideMm, String means) {
  /**
   * Refuses what is no margin.
   *
   * @throws HoleException if the margin is negative or not a number
   */
  public CleanUp {
    Require.notNegative("clean-up margin", perSideMm);
  }

  /**
   * Returns the largest radius of position error that filing can cure: half the metal between the
   * two diameters less the margin. Negative when even a hole in the right place leaves too little.
   */
  public double curableMm(double drilledDiameterMm, double finishDiameterMm) {
    return (finishDiameterMm - drilledDiameterMm) / 2 - perSideMm;
  }
}
