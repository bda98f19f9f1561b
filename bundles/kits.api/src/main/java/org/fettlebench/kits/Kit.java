package org.fettlebench.kits;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A casting kit as a kit file describes it.
 *
 * @param name of the kit; not blank
 * @param scale n when the model is at 1:n; at least 1
 * @param confidence chance asked that a hole lands within its expected error, above 0 and below 1
 * @param joints in file order; names are unique
 * @param bag what the kit's list promises and what was counted
 * @param idleSeats names of the seats that no joint uses, in file order
 */
public record Kit(
    String name,
    Optional<Integer> scale,
    double confidence,
    List<Joint> joints,
    List<BagLine> bag,
    List<String> idleSeats) {
  /** Makes a kit whose seats are all used. */
  public Kit(
      String name,
      Optional<Integer> scale,
      double confidence,
      List<Joint> joints,
      List<BagLine> bag) {
    this(name, scale, confidence, joints, bag, List.of());
  }

  /**
   * Copies what could change and checks the figures.
   *
   * @throws IllegalArgumentException if the name is blank, the scale below 1, the confidence not
   *     between 0 and 1, or two joints have one name
   */
  public Kit {
    Require.name("name of a kit", name);
    scale.ifPresent(value -> Require.atLeast("scale 1:", value, 1));
    if (!(confidence > 0 && confidence < 1)) {
      throw new IllegalArgumentException("confidence " + confidence + " is outside 0 to 1");
    }
    joints = List.copyOf(joints);
    bag = List.copyOf(bag);
    idleSeats = List.copyOf(idleSeats);
    Set<String> names = new HashSet<>();
    for (Joint joint : joints) {
      if (!names.add(joint.name())) {
        throw new IllegalArgumentException("two joints are called " + joint.name());
      }
    }
  }

  /**
   * A line of the kit's own list.
   *
   * @param fastener what
   * @param listed how many the list promises; not below 0
   * @param counted how many were in the bag, not below 0; empty when not counted yet
   */
  public record BagLine(Fastener fastener, int listed, Optional<Integer> counted) {
    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if a number is below 0
     */
    public BagLine {
      Require.atLeast("number listed", listed, 0);
      counted.ifPresent(value -> Require.atLeast("number counted", value, 0));
    }

    /** Returns how many may be relied on: counted, else listed. */
    public int there() {
      return counted.orElse(listed);
    }
  }
}
