package org.fettlebench.desktop.threads.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.ToIntFunction;
import org.fettlebench.desktop.threads.internal.ThreadAnswer.Tapping;
import org.fettlebench.measure.Length;
import org.fettlebench.tooling.DrillSize;

/**
 * Places drills along a rule by their diameter, smallest left, and their names above it on as few
 * levels as they need; names that find no room are left out, those of chosen and held drills last.
 */
final class RuleScale {
  /** Most levels of names above the rule. */
  static final int LEVELS = 3;

  private static final int APART = 8;

  private final List<Tapping> drills;
  private final double leastMm;
  private final double mostMm;
  private final int left;
  private final int width;

  /**
   * Makes the scale.
   *
   * @param drills smallest first
   * @param left pixel where the rule begins
   * @param width pixels from there to its end
   */
  RuleScale(List<Tapping> drills, int left, int width) {
    this.drills = drills;
    this.left = left;
    this.width = width;
    this.leastMm = drills.isEmpty() ? 0 : mm(drills.get(0).drill().diameter());
    double most = drills.isEmpty() ? 1 : mm(drills.get(drills.size() - 1).drill().diameter());
    this.mostMm = most > leastMm ? most : leastMm + 0.1;
  }

  /** Where the name of a drill stands: its middle, and its level from the rule upwards. */
  record Name(Tapping drill, int middle, int level) {}

  private static double mm(Length length) {
    return length.millimetres();
  }

  /** Returns the pixel of a diameter. */
  int x(Length diameter) {
    return left + (int) Math.round((mm(diameter) - leastMm) / (mostMm - leastMm) * width);
  }

  /** Returns whether a diameter is on the rule. */
  boolean holds(Length diameter) {
    return mm(diameter) >= leastMm && mm(diameter) <= mostMm;
  }

  /** Returns the drill nearest to a pixel. */
  Optional<Tapping> at(int x) {
    return drills.stream().min(Comparator.comparingInt(t -> Math.abs(x(t.drill().diameter()) - x)));
  }

  /** Returns the drill so many places from another; it stops at the ends. */
  Optional<Tapping> beside(DrillSize drill, int step) {
    OptionalInt at = indexOf(drill);
    if (at.isEmpty()) {
      return drills.stream().findFirst();
    }
    int next = Math.max(0, Math.min(drills.size() - 1, at.getAsInt() + step));
    return Optional.of(drills.get(next));
  }

  private OptionalInt indexOf(DrillSize drill) {
    for (int i = 0; i < drills.size(); i++) {
      if (drills.get(i).drill().equals(drill)) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }

  /**
   * Returns the names that find room.
   *
   * @param levels rows of names above the rule
   * @param widthOf pixels of a drill's name
   */
  List<Name> names(Optional<DrillSize> chosen, int levels, ToIntFunction<Tapping> widthOf) {
    List<Tapping> byNeed = new ArrayList<>(drills);
    byNeed.sort(
        Comparator.comparing((Tapping t) -> !chosen.equals(Optional.of(t.drill())))
            .thenComparing(t -> !t.held()));
    List<Name> placed = new ArrayList<>();
    for (Tapping drill : byNeed) {
      int middle = x(drill.drill().diameter());
      for (int level = 0; level < levels; level++) {
        Name name = new Name(drill, middle, level);
        if (placed.stream().noneMatch(other -> clash(name, other, widthOf))) {
          placed.add(name);
          break;
        }
      }
    }
    return placed;
  }

  private static boolean clash(Name one, Name other, ToIntFunction<Tapping> widthOf) {
    int room = (widthOf.applyAsInt(one.drill()) + widthOf.applyAsInt(other.drill())) / 2 + APART;
    return one.level() == other.level() && Math.abs(one.middle() - other.middle()) < room;
  }
}
