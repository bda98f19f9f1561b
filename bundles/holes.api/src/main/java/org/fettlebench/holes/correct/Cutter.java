package org.fettlebench.holes.correct;

/**
 * A drill or a round file that can be had.
 *
 * @param name for people, such as {@code No 22 = 3.988 mm}
 * @param diameterMm the drill's size, or the file's greatest diameter; above 0
 */
public record Cutter(String name, double diameterMm) {
  /**
   * Refuses a cutter without a size.
   *
   * @throws HoleException if the diameter is not above 0
   */
  public Cutter {
    Require.positive(name + ": diameter", diameterMm);
  }
}
