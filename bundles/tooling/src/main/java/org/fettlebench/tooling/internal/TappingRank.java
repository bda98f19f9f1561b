package org.fettlebench.tooling.internal;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.DiameterLimits;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.TappingChoice;

/** Ranks tapping drills for one thread. */
final class TappingRank {
  /** Below this there is no thread worth the name; above 100 a tap would jam. */
  private static final double LEAST_PERCENT = 20;

  private static final double MOST_PERCENT = 100;

  /** Where no limits are known: common practice, no source. */
  private static final double LEAST_USUAL = 50;

  private static final double MOST_USUAL = 85;

  /** Above this, limits or not, taps break; common practice, no source. */
  private static final double MOST_TAPPED = 90;

  private final ScrewThread thread;
  private final Optional<DiameterLimits> limits;
  private final List<Oversize> oversizes;
  private final String belowTheLeast;
  private final String aboveTheMost;

  TappingRank(ScrewThread thread, Optional<DiameterLimits> limits, List<Oversize> oversizes) {
    this.thread = thread;
    this.limits = limits;
    this.oversizes = oversizes;
    this.belowTheLeast =
        limits.map(known -> worded("below the least", known.least(), known)).orElse("");
    this.aboveTheMost =
        limits.map(known -> worded("above the most", known.most(), known)).orElse("");
  }

  List<TappingChoice> rank(double wantedPercent, Collection<DrillSize> from) {
    if (!(wantedPercent > 0 && wantedPercent <= MOST_PERCENT)) {
      throw new MeasureException(
          wantedPercent + " per cent of thread is outside above 0 to " + (int) MOST_PERCENT);
    }
    return from.stream()
        .map(drill -> new Left(drill, percent(drill)))
        .filter(left -> left.percent() >= LEAST_PERCENT && left.percent() <= MOST_PERCENT)
        .distinct()
        .sorted(
            Comparator.comparingLong((Left left) -> left.off(wantedPercent))
                .thenComparing(Left::drill, Comparator.reverseOrder()))
        .map(left -> choice(left.drill()))
        .toList();
  }

  /** The thread that a drill leaves, worked out once for each. */
  private record Left(DrillSize drill, double percent) {
    /** Off what is wanted, to a millionth of a per cent, so that rounding decides nothing. */
    long off(double wantedPercent) {
      return Math.round(1e6 * Math.abs(percent - wantedPercent));
    }
  }

  private double percent(DrillSize drill) {
    return thread.percentOfThread(drill.diameter());
  }

  private TappingChoice choice(DrillSize drill) {
    Optional<Oversize.Expected> oversize =
        oversizes.stream().flatMap(table -> table.of(drill.diameter()).stream()).findFirst();
    return new TappingChoice(
        drill,
        percent(drill),
        oversize.map(o -> thread.percentOfThread(drill.diameter().plus(o.mean()))),
        oversize.map(Oversize.Expected::mean),
        limits
            .map(known -> outside(known, drill.diameter()).or(() -> tooMuch(drill)))
            .orElseGet(() -> unusual(drill)),
        oversize.map(Oversize.Expected::source));
  }

  private Optional<String> outside(DiameterLimits known, Length hole) {
    if (known.allow(hole)) {
      return Optional.empty();
    }
    String limit = hole.compareTo(known.least()) < 0 ? belowTheLeast : aboveTheMost;
    return Optional.of("minor diameter " + show(hole) + limit);
  }

  private Optional<String> tooMuch(DrillSize drill) {
    double percent = percent(drill);
    return percent > MOST_TAPPED
        ? Optional.of(
            "%.0f per cent of thread is above %.0f, where taps break (common practice, no source)"
                .formatted(percent, MOST_TAPPED))
        : Optional.empty();
  }

  /** Worded once for all drills. */
  private static String worded(String where, Length limit, DiameterLimits limits) {
    return " is %s %s of %s (%s)"
        .formatted(where, show(limit), limits.threadClass(), limits.source().standing().words());
  }

  private Optional<String> unusual(DrillSize drill) {
    double percent = percent(drill);
    if (drill.diameter().compareTo(thread.minorInternal()) < 0) {
      return Optional.of(
          "minor diameter %s is below the basic %s"
              .formatted(show(drill.diameter()), show(thread.minorInternal())));
    }
    if (!(percent >= LEAST_USUAL && percent <= MOST_USUAL)) {
      return Optional.of(
          "%.0f per cent of thread is outside %.0f to %.0f (common practice, no source)"
              .formatted(percent, LEAST_USUAL, MOST_USUAL));
    }
    return Optional.empty();
  }

  private static String show(Length length) {
    return LengthFormat.show(length, LengthUnit.MILLIMETRE, 3)
        + " ("
        + LengthFormat.show(length, LengthUnit.INCH, 4)
        + ")";
  }
}
