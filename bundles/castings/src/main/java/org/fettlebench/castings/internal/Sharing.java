package org.fettlebench.castings.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Shares out what the greatest least spare leaves free: what holds it down keeps its level, then
 * the least spare of the rest is made as large as can be, and so on until nothing is free. Reckoned
 * straight about one pose, so that each programme has the answer of the one before among its own.
 */
final class Sharing {
  /** Levels are kept this loosely, so that rounding leaves each programme an answer. */
  private static final double SLACK_MM = 1e-8;

  private static final double SAME_MM = 1e-6;

  private final Movement movement;
  private final List<List<Skin.Slope>> slopes;
  private final List<Optional<Double>> keptMm = new ArrayList<>();

  Sharing(Movement movement, List<List<Skin.Slope>> slopes) {
    this.movement = movement;
    this.slopes = slopes;
    slopes.forEach(one -> keptMm.add(Optional.empty()));
  }

  /** Returns the movement that shares best. */
  Movement.Best share() {
    Movement.Best best = movement.best(wanted());
    while (keptMm.stream().anyMatch(Optional::isEmpty)) {
      List<Integer> held = held(best);
      for (int i : held) {
        keptMm.set(i, Optional.of(best.spareMm() - SLACK_MM));
      }
      if (keptMm.stream().anyMatch(Optional::isEmpty)) {
        best = movement.best(wanted());
      }
    }
    return best;
  }

  /** Returns the places of the features that hold the greatest least spare down. */
  List<Integer> governing() {
    return held(movement.best(wanted()));
  }

  private List<Movement.Wanted> wanted() {
    List<Movement.Wanted> wanted = new ArrayList<>();
    for (int i = 0; i < slopes.size(); i++) {
      wanted.add(new Movement.Wanted(slopes.get(i), keptMm.get(i)));
    }
    return wanted;
  }

  /**
   * Returns the free features that cannot have more than the least without another having less.
   * There always is one; should rounding hide it, it is the one that could have least more.
   */
  private List<Integer> held(Movement.Best best) {
    List<Integer> held = new ArrayList<>();
    double leastMm = Double.POSITIVE_INFINITY;
    int least = -1;
    for (int i = 0; i < slopes.size(); i++) {
      if (keptMm.get(i).isEmpty() && best.spareMm(slopes.get(i)) < best.spareMm() + SAME_MM) {
        double mostMm = mostFor(i, best.spareMm());
        if (mostMm < best.spareMm() + SAME_MM) {
          held.add(i);
        }
        least = mostMm < leastMm ? i : least;
        leastMm = Math.min(leastMm, mostMm);
      }
    }
    return held.isEmpty() ? List.of(least) : held;
  }

  private double mostFor(int only, double levelMm) {
    List<Movement.Wanted> wanted = new ArrayList<>();
    for (int i = 0; i < slopes.size(); i++) {
      Optional<Double> keeps =
          i == only ? Optional.empty() : Optional.of(keptMm.get(i).orElse(levelMm) - SLACK_MM);
      wanted.add(new Movement.Wanted(slopes.get(i), keeps));
    }
    return movement.best(wanted).spareMm();
  }
}
