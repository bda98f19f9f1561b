package org.fettlebench.tooling.internal.risk;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.risk.TapCure;
import org.fettlebench.tooling.risk.TapJob;
import org.fettlebench.tooling.risk.TapSort;
import org.fettlebench.tooling.work.WorkMaterial;

/** Looks for what lowers the ratio of a job. */
final class TapCureFinder {
  /** Below this a thread is thin: common practice, no source. */
  private static final double LEAST_PERCENT = 50;

  private static final double EASY_PERCENT = 60;
  private static final int MOST_DRILLS = 3;

  private final TapFigures now;
  private final Function<TapJob, Optional<TapFigures>> figures;

  TapCureFinder(TapFigures now, Function<TapJob, Optional<TapFigures>> figures) {
    this.now = now;
    this.figures = figures;
  }

  /** Returns what lowers the ratio, the lowest first. */
  List<TapCure> find(Collection<DrillSize> drills, Optional<WorkMaterial> softer) {
    List<TapCure> cures = new ArrayList<>();
    cures.addAll(larger(drills));
    ideal(cures.isEmpty()).ifPresent(cures::add);
    otherTaps().forEach(cures::add);
    shallower().ifPresent(cures::add);
    softer
        .flatMap(
            material ->
                lower(
                    job().withMaterial(material),
                    "make the part of " + material.name() + ", if its work allows that"))
        .ifPresent(cures::add);
    return cures.stream().sorted(Comparator.comparingDouble(TapCure::ratio)).toList();
  }

  private TapJob job() {
    return now.job();
  }

  private List<TapCure> larger(Collection<DrillSize> drills) {
    return drills.stream()
        .distinct()
        .filter(drill -> drill.diameter().compareTo(job().hole()) > 0)
        .filter(drill -> percent(drill.diameter()) >= LEAST_PERCENT)
        .sorted()
        .limit(MOST_DRILLS)
        .flatMap(drill -> drilled(drill).stream())
        .toList();
  }

  private Optional<TapCure> drilled(DrillSize drill) {
    return lower(
        job().withHole(drill.diameter()),
        String.format(
            Locale.ROOT,
            "drill %s: %.0f per cent of thread",
            drill.name(),
            percent(drill.diameter())));
  }

  /** Without a drill for it, still says what an easier thread would bring. */
  private Optional<TapCure> ideal(boolean noDrill) {
    if (!noDrill || percent(job().hole()) <= EASY_PERCENT) {
      return Optional.empty();
    }
    Length hole = job().thread().holeFor(EASY_PERCENT);
    return lower(
        job().withHole(hole),
        "a hole of %s would leave %.0f per cent of thread; no drill at hand makes one near it"
            .formatted(LengthFormat.showBoth(hole, LengthUnit.MILLIMETRE), EASY_PERCENT));
  }

  private List<TapCure> otherTaps() {
    List<TapCure> cures = new ArrayList<>();
    for (TapSort sort : TapSort.values()) {
      if (sort != job().tap() && suits(sort)) {
        lower(job().withTap(sort), words(sort)).ifPresent(cures::add);
      }
    }
    return cures;
  }

  private boolean suits(TapSort sort) {
    return switch (sort) {
      case TAPER -> false;
      case SECOND -> job().tap() == TapSort.BOTTOMING;
      case BOTTOMING -> false;
      case SPIRAL_FLUTE -> true;
      case SPIRAL_POINT -> job().through();
    };
  }

  private static String words(TapSort sort) {
    return sort == TapSort.SECOND
        ? "cut with the second tap first and leave only the last threads to the bottoming tap"
        : "use a " + sort.title();
  }

  private Optional<TapCure> shallower() {
    Length enough =
        Length.ofMillimetres(now.freeDepth().middle() * job().thread().major().millimetres());
    return enough.compareTo(job().depth()) < 0
        ? lower(
            job().withDepth(enough),
            String.format(
                Locale.ROOT,
                "tap %s deep (%s diameters), if the thread is strong enough so",
                LengthFormat.showBoth(enough, LengthUnit.MILLIMETRE),
                now.freeDepth().middle()))
        : Optional.empty();
  }

  private double percent(Length hole) {
    return job().thread().percentOfThread(hole);
  }

  private Optional<TapCure> lower(TapJob changed, String words) {
    return figures
        .apply(changed)
        .filter(found -> found.ratio() < now.ratio())
        .map(
            found ->
                new TapCure(words, changed, found.cuttingNm(), found.ratio(), found.ratioMost()));
  }
}
