package org.fettlebench.holes.patterns;

import java.util.OptionalDouble;

/**
 * One of the two parts of a joint.
 *
 * @param name for people, such as "cover"
 * @param clearanceMm diameter of its plain holes, as small as they may be; empty when they are
 *     tapped
 * @param placing how its holes land
 */
public record PatternPart(String name, OptionalDouble clearanceMm, PlacingLaw placing) {
  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if the diameter is not above 0
   */
  public PatternPart {
    clearanceMm.ifPresent(hole -> Require.size("clearance hole of " + name, hole));
  }

  /** Returns whether the holes are tapped. */
  public boolean tapped() {
    return clearanceMm.isEmpty();
  }

  /** Returns the same part with its plain holes of another size; a tapped one as it is. */
  public PatternPart withHole(double diameterMm) {
    return tapped() ? this : new PatternPart(name, OptionalDouble.of(diameterMm), placing);
  }

  /** Returns the same part with its holes placed in another way. */
  public PatternPart placed(PlacingLaw other) {
    return new PatternPart(name, clearanceMm, other);
  }
}
