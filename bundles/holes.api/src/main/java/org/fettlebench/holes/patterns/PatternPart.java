package org.fettlebench.holes.patterns;

import java.util.OptionalDouble;

/**
 * One of the two parts of a joint.
 *
 * @param name for people, such as "cover"
 * @param clearanceMm diameter of its plain holes, as small as they may be; empty when they are
 *     tapped
 * @param placing how its holes land, at the face where both parts meet
 * @param leaning how far a fastener in its tapped holes stands over at the far face of what it
 *     passes; exact when holes are plain, or taken as square. It is apart from where the hole
 *     lands, and the fastener follows its hole without bending
 */
public record PatternPart(
    String name, OptionalDouble clearanceMm, PlacingLaw placing, PlacingLaw leaning) {
  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if the diameter is not above 0, or plain holes lean
   */
  public PatternPart {
    clearanceMm.ifPresent(hole -> Require.size("clearance hole of " + name, hole));
    if (clearanceMm.isPresent() && leaning.law().isPresent()) {
      throw new IllegalArgumentException(
          name + " has plain holes, in which nothing stands over; leave their leaning out");
    }
  }

  /** Makes a part whose holes are square. */
  public PatternPart(String name, OptionalDouble clearanceMm, PlacingLaw placing) {
    this(name, clearanceMm, placing, PlacingLaw.exact());
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
    return new PatternPart(name, clearanceMm, other, leaning);
  }

  /** Returns the same tapped part with holes that lean. */
  public PatternPart leaning(PlacingLaw over) {
    return new PatternPart(name, clearanceMm, placing, over);
  }
}
