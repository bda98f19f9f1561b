package org.fettlebench.holes.internal.patterns;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.fettlebench.holes.internal.patterns.MeasuredFit.Placed;
import org.fettlebench.holes.patterns.MeasuredPattern;
import org.fettlebench.holes.patterns.MeasuredPattern.Hole;
import org.fettlebench.holes.patterns.PatternFit.Cure;
import org.fettlebench.holes.patterns.PatternFit.HoleFit;
import org.fettlebench.holes.patterns.PatternFit.Opening;
import org.fettlebench.measure.Tolerances;

/**
 * Finds what makes parts that do not go together go: fewest holes opened or filed, or all opened to
 * one size. Each is placed again with the holes so changed before it is offered.
 */
final class FitCures {
  /** Beyond two holes, filing by hand loses to opening all: common practice, no source. */
  private static final int MOST_FILED = 2;

  /** Pairs of a larger pattern are not tried: common sense, and time. */
  private static final int MOST_FOR_PAIRS = 40;

  private final MeasuredPattern measured;
  private final MeasuredFit fit;
  private final int holesOn;
  private final int count;

  FitCures(MeasuredPattern measured, int holesOn) {
    this.measured = measured;
    this.fit = new MeasuredFit(measured);
    this.holesOn = holesOn;
    this.count = measured.upper().holes().size();
  }

  List<Cure> cures() {
    List<Cure> cures = new ArrayList<>();
    fewest().ifPresent(placed -> eachPart(placed, false, cures));
    eachPart(fit.place(holesOn), true, cures);
    return cures;
  }

  private Optional<Placed> fewest() {
    for (int size = 1; size <= Math.min(MOST_FILED, count - 1); size++) {
      Optional<Freed> best =
          sets(size).flatMap(this::freed).min(Comparator.comparingDouble(Freed::mostMm));
      if (best.isPresent()) {
        return best.map(Freed::placed);
      }
    }
    return Optional.empty();
  }

  private Stream<int[]> sets(int size) {
    Stream<int[]> single = IntStream.range(0, count).mapToObj(i -> new int[] {i});
    if (size == 1) {
      return single;
    }
    return count > MOST_FOR_PAIRS
        ? Stream.empty()
        : IntStream.range(0, count)
            .boxed()
            .flatMap(i -> IntStream.range(0, i).mapToObj(j -> new int[] {j, i}));
  }

  /** Holes freed, the parts placed with them free, and how much the worst of them needs. */
  private record Freed(double mostMm, Placed placed) {}

  /**
   * Gives some holes more play until the worst of all holes just enters: the least lack falls
   * evenly or not at all as the play of a few rises, so halving finds where it meets nothing.
   */
  private Stream<Freed> freed(int[] set) {
    double enough = 2 * largestApart();
    if (!(lackWith(set, enough) <= Tolerances.GEOMETRY_SLACK_MM)) {
      return Stream.empty();
    }
    double low = 0;
    double high = enough;
    while (high - low > Tolerances.GEOMETRY_SLACK_MM / 4) {
      double middle = (low + high) / 2;
      if (lackWith(set, middle) <= Tolerances.GEOMETRY_SLACK_MM / 2) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return Stream.of(new Freed(high, fit.place(holesOn, more(set, high))));
  }

  private double lackWith(int[] set, double playMm) {
    return fit.place(holesOn, more(set, playMm)).lackMm();
  }

  private double[] more(int[] set, double playMm) {
    double[] more = new double[count];
    for (int hole : set) {
      more[hole] = playMm;
    }
    return more;
  }

  private double largestApart() {
    return fit.place(holesOn).holes().stream()
            .mapToDouble(hole -> hole.apartMm() + Math.abs(hole.playMm()))
            .max()
            .orElse(0)
        + 2 * count * Math.max(0, fit.place(holesOn).lackMm());
  }

  private void eachPart(Placed placed, boolean every, List<Cure> cures) {
    if (!measured.upper().tapped()) {
      cures.add(cure(placed, every, true));
    }
    if (!measured.lower().tapped()) {
      cures.add(cure(placed, every, false));
    }
  }

  private Cure cure(Placed placed, boolean every, boolean upper) {
    double most = placed.holes().stream().mapToDouble(hole -> -hole.roomMm()).max().orElse(0);
    List<Opening> openings =
        placed.holes().stream()
            .filter(hole -> every || hole.roomMm() < -Tolerances.GEOMETRY_SLACK_MM)
            .map(hole -> opening(hole, every ? most : -hole.roomMm(), upper, placed))
            .toList();
    return new Cure(
        upper ? measured.upper().name() : measured.lower().name(),
        every,
        openings,
        placed.movement());
  }

  /** The hole of the one part is filed towards where the other part's hole lies. */
  private Opening opening(HoleFit hole, double lackMm, boolean upper, Placed placed) {
    int number = upper ? hole.upperNumber() : hole.lowerNumber();
    Hole now = (upper ? measured.upper() : measured.lower()).holes().get(number - 1);
    double diameter = now.clearanceMm().orElseThrow();
    double dx = hole.lower().xMm() - hole.upper().xMm();
    double dy = hole.lower().yMm() - hole.upper().yMm();
    double towards = Math.toDegrees(upper ? Math.atan2(dy, dx) : Math.atan2(-dy, -dx));
    double turned = upper ? 0 : placed.movement().turnDegrees();
    return new Opening(
        number,
        diameter,
        diameter + 2 * lackMm,
        Math.max(0, -hole.roomMm()),
        within360(towards - turned));
  }

  private static double within360(double degrees) {
    double turned = degrees % 360;
    return turned < 0 ? turned + 360 : turned;
  }
}
