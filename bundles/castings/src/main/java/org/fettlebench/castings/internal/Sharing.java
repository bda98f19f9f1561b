package org.fettlebench.castings.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.optim.linear.NoFeasibleSolutionException;

/**
 * Shares out what the greatest least spare leaves free: what holds it down keeps its level, then
 * the least spare of the rest is made as large as can be, and so on until nothing is free. Reckoned
 * straight about one pose, so that each programme has the answer of the one before among its own.
 */
final class Sharing {
  /** Levels are kept this loosely, so that rounding leaves each programme an answer. */
  private static final double SLACK_MM = 1e-8;

  /**
   * Rounding may hide the answer of a programme in which many kept tangents meet: loosen to this.
   */
  private static final double MOST_SLACK_MM = 1e-6;

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
    Movement.Best best = movement.best(wanted(SLACK_MM));
    while (keptMm.stream().anyMatch(Optional::isEmpty)) {
      List<Integer> held = held(best);
      for (int i : held) {
        keptMm.set(i, Optional.of(best.spareMm()));
      }
      if (keptMm.stream().anyMatch(Optional::isEmpty)) {
        Optional<Movement.Best> next = loosened(this::wanted, best);
        if (next.isEmpty()) {
          return best;
        }
        best = next.get();
      }
    }
    return best;
  }

  /** Returns the places of the features that hold the greatest least spare down. */
  List<Integer> governing() {
    return held(movement.best(wanted(SLACK_MM)));
  }

  /** Returns the best movement with levels kept no more loosely than need be; empty if none is. */
  private Optional<Movement.Best> loosened(
      DoubleFunction<List<Movement.Wanted>> wanted, Movement.Best from) {
    for (double slackMm = SLACK_MM; slackMm < 2 * MOST_SLACK_MM; slackMm *= 10) {
      try {
        return Optional.of(movement.best(wanted.apply(slackMm), from));
      } catch (NoFeasibleSolutionException hidden) {
        // The movement before is an answer but for rounding: the next slack has room for it.
      }
    }
    return Optional.empty();
  }

  private List<Movement.Wanted> wanted(double slackMm) {
    List<Movement.Wanted> wanted = new ArrayList<>();
    for (int i = 0; i < slopes.size(); i++) {
      wanted.add(new Movement.Wanted(slopes.get(i), keptMm.get(i).map(kept -> kept - slackMm)));
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
    int least = lowest(best);
    for (int i = 0; i < slopes.size(); i++) {
      if (keptMm.get(i).isEmpty() && best.spareMm(slopes.get(i)) < best.spareMm() + SAME_MM) {
        double mostMm = mostFor(i, best);
        if (mostMm < best.spareMm() + SAME_MM) {
          held.add(i);
        }
        least = mostMm < leastMm ? i : least;
        leastMm = Math.min(leastMm, mostMm);
      }
    }
    return held.isEmpty() ? List.of(least) : held;
  }

  /** Returns the free feature that a movement leaves least. */
  private int lowest(Movement.Best best) {
    return IntStream.range(0, slopes.size())
        .filter(i -> keptMm.get(i).isEmpty())
        .boxed()
        .min(Comparator.comparingDouble(i -> best.spareMm(slopes.get(i))))
        .orElseThrow();
  }

  private double mostFor(int only, Movement.Best best) {
    double levelMm = best.spareMm();
    return loosened(slackMm -> wantedFor(only, levelMm - slackMm, slackMm), best)
        .map(Movement.Best::spareMm)
        .orElse(levelMm);
  }

  private List<Movement.Wanted> wantedFor(int only, double levelMm, double slackMm) {
    List<Movement.Wanted> wanted = wanted(slackMm);
    for (int i = 0; i < slopes.size(); i++) {
      Optional<Double> keeps =
          i == only ? Optional.empty() : wanted.get(i).keepsMm().or(() -> Optional.of(levelMm));
      wanted.set(i, new Movement.Wanted(slopes.get(i), keeps));
    }
    return wanted;
  }
}
