package org.fettlebench.castings;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * How the finished part may be moved inside the casting.
 *
 * @param shifts axes along which it may be shifted
 * @param turns axes about which it may be turned a little
 * @param mostTurnDegrees the largest turn about each, above 0 to 10
 */
public record Freedom(Set<Axis> shifts, Set<Axis> turns, double mostTurnDegrees) {
  /**
   * Copies what could change.
   *
   * @throws CastingException if nothing may move, or the largest turn is out of range
   */
  public Freedom {
    shifts = Set.copyOf(shifts);
    turns = Set.copyOf(turns);
    if (shifts.isEmpty() && turns.isEmpty()) {
      throw new CastingException("nothing may be moved; allow a shift along x, y or z");
    }
    if (!(mostTurnDegrees > 0 && mostTurnDegrees <= 10)) {
      throw new CastingException(
          "largest turn " + mostTurnDegrees + " degrees is outside above 0 to 10 degrees");
    }
  }

  /** Returns the axes along which features hold the part from both sides. */
  public static Set<Axis> held(List<Feature> features) {
    return EnumSet.allOf(Axis.class).stream()
        .filter(
            axis ->
                features.stream().anyMatch(one -> holds(one, axis, 1))
                    && features.stream().anyMatch(one -> holds(one, axis, -1)))
        .collect(Collectors.toUnmodifiableSet());
  }

  private static boolean holds(Feature feature, Axis axis, int sign) {
    return feature instanceof FlatFace face
        ? face.towards().axis() == axis && face.towards().sign() == sign
        : ((RoundFace) feature).along() != axis;
  }
}
