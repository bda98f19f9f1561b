package org.fettlebench.tooling.drilled;

import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Source;
import org.fettlebench.tooling.DrillSize;

/**
 * The hole that a drill makes.
 *
 * @param drill the drill
 * @param oversize by how much larger the hole comes out in tests; empty outside the tables
 * @param tolerance how far a hole may be off its drill; empty outside the tables
 */
public record DrilledHole(
    DrillSize drill, Optional<Oversize> oversize, Optional<Tolerance> tolerance) {
  /**
   * By how much the hole is larger than the drill, on the diameter.
   *
   * @param least on average, where a table has it
   * @param mean of all
   * @param most on average, where a table has it
   * @param source of the figures
   */
  public record Oversize(
      Optional<Length> least, Length mean, Optional<Length> most, Source source) {}

  /**
   * How far a hole may be from the drill's size, drilled in a machine with jig or fixture.
   *
   * @param above larger by at most
   * @param below smaller by at most
   * @param source of the figures
   */
  public record Tolerance(Length above, Length below, Source source) {}
}
