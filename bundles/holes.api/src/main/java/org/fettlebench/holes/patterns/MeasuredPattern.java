package org.fettlebench.holes.patterns;

import java.util.List;
import java.util.OptionalDouble;
import org.fettlebench.measure.Point;

/**
 * Two parts whose holes are there and were measured.
 *
 * @param name of the joint
 * @param fastenerMm diameter of the fastener
 * @param upper the part on top
 * @param lower the part below; as many holes in the same order, not tapped when the other is
 * @param circleHoles whether the holes stand evenly on a circle in their order, so that the lower
 *     part may also be turned on by whole holes
 */
public record MeasuredPattern(
    String name, double fastenerMm, MeasuredPart upper, MeasuredPart lower, boolean circleHoles) {
  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if one is out of range, the numbers of holes differ or both
   *     parts are tapped
   */
  public MeasuredPattern {
    Require.size("fastener diameter", fastenerMm);
    Require.count("number of holes", upper.holes().size(), 1, HolePattern.MOST);
    if (upper.holes().size() != lower.holes().size()) {
      throw new IllegalArgumentException(
          upper.name()
              + " has "
              + upper.holes().size()
              + " holes and "
              + lower.name()
              + " "
              + lower.holes().size()
              + ": measure the same holes in both");
    }
    if (upper.tapped() && lower.tapped()) {
      throw new IllegalArgumentException(
          upper.name() + " and " + lower.name() + " are both tapped: one must pass the fastener");
    }
    for (MeasuredPart part : List.of(upper, lower)) {
      for (int i = 0; i < part.holes().size(); i++) {
        String hole = "hole " + (i + 1) + " of " + part.name();
        Require.passes(hole, part.holes().get(i).clearanceMm(), fastenerMm);
      }
    }
  }

  /** Returns how far the centres of a pair of holes may lie apart; negative if none enters. */
  public double playMm(int upperHole, int lowerHole) {
    return play(upper.holes().get(upperHole)) + play(lower.holes().get(lowerHole));
  }

  private double play(Hole hole) {
    return hole.clearanceMm().isPresent() ? (hole.clearanceMm().getAsDouble() - fastenerMm) / 2 : 0;
  }

  /**
   * A part as measured, seen from above with the parts put together.
   *
   * @param name for people
   * @param holes in order; all tapped or none
   */
  public record MeasuredPart(String name, List<Hole> holes) {
    /**
     * Copies what could change.
     *
     * @throws IllegalArgumentException if some holes are tapped and others not
     */
    public MeasuredPart {
      holes = List.copyOf(holes);
      long tapped = holes.stream().filter(hole -> hole.clearanceMm().isEmpty()).count();
      if (tapped > 0 && tapped < holes.size()) {
        throw new IllegalArgumentException(name + " has tapped and plain holes: check them apart");
      }
    }

    /** Returns whether the holes are tapped. */
    public boolean tapped() {
      return !holes.isEmpty() && holes.get(0).clearanceMm().isEmpty();
    }

    /** Returns the same part with x turned round, as if it had been read from the other side. */
    public MeasuredPart mirrored() {
      return new MeasuredPart(
          name,
          holes.stream()
              .map(
                  hole ->
                      new Hole(
                          new Point(0 - hole.centre().xMm(), hole.centre().yMm()),
                          hole.clearanceMm()))
              .toList());
    }
  }

  /**
   * A hole as measured.
   *
   * @param centre where it is
   * @param clearanceMm its diameter; empty when tapped
   */
  public record Hole(Point centre, OptionalDouble clearanceMm) {
    /**
     * Checks the figure.
     *
     * @throws IllegalArgumentException if the diameter is not above 0
     */
    public Hole {
      clearanceMm.ifPresent(diameter -> Require.size("diameter of a hole", diameter));
    }
  }
}
