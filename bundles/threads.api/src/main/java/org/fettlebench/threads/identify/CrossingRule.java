package org.fettlebench.threads.identify;

import org.fettlebench.measure.MeasureException;

/**
 * How close two threads must be to be crossed, as shares of the finer pitch.
 *
 * @param diameterShare largest difference of major diameters, above 0 to 2
 * @param pitchShare largest difference of pitches, above 0 to 1
 */
public record CrossingRule(double diameterShare, double pitchShare) {
  /**
   * Diameters within 0.4 of the pitch, so that two thirds of the depth still meet; pitches within a
   * twelfth, so that after three turns the flanks are out by a quarter of a pitch and it binds.
   * Common practice, no source.
   */
  public static final CrossingRule USUAL = new CrossingRule(0.4, 1 / 12.0);

  /**
   * Checks the shares.
   *
   * @throws MeasureException if one is outside its range
   */
  public CrossingRule {
    if (!(diameterShare > 0 && diameterShare <= 2)) {
      throw new MeasureException(
          "share of the diameters " + diameterShare + " is outside above 0 to 2");
    }
    if (!(pitchShare > 0 && pitchShare <= 1)) {
      throw new MeasureException("share of the pitches " + pitchShare + " is outside above 0 to 1");
    }
  }
}
