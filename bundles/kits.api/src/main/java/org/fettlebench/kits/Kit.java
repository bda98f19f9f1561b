package org.fettlebench.kits;

import java.util.List;
import java.util.Optional;

/**
 * A casting kit as a kit file describes it.
 *
 * @param name of the kit
 * @param scale n when the model is at 1:n
 * @param confidence chance asked that a hole lands within its expected error, between 0 and 1
 * @param joints in file order; names are unique
 * @param bag what the kit's list promises and what was counted
 */
public record Kit(
    String name,
    Optional<Integer> scale,
    double confidence,
    List<Joint> joints,
    List<BagLine> bag) {
  /** Copies what could change. */
  public Kit {
    joints = List.copyOf(joints);
    bag = List.copyOf(bag);
  }

  /**
   * A line of the kit's own list.
   *
   * @param fastener what
   * @param listed how many the list promises
   * @param counted how many were in the bag; empty when not counted yet
   */
  public record BagLine(Fastener fastener, int listed, Optional<Integer> counted) {
    /** Returns how many may be relied on: counted, else listed. */
    public int there() {
      return counted.orElse(listed);
    }
  }
}
