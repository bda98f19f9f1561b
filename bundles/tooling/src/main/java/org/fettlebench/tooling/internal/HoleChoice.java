package org.fettlebench.tooling.internal;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.fettlebench.measure.Length;
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.Tables;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadLimits;
import org.fettlebench.tooling.BlindHole;
import org.fettlebench.tooling.ClearanceChoice;
import org.fettlebench.tooling.ClearanceFit;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.HoleChooser;
import org.fettlebench.tooling.ListedDrill;
import org.fettlebench.tooling.TappingChoice;
import org.fettlebench.tooling.ThreadDepth;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Chooses holes by the tables of the moment. */
@Component
public final class HoleChoice implements HoleChooser {
  private static final Source NO_LIST =
      new Source(
          "no list has a close hole for this size: the smallest drill at hand above the major diameter",
          Standing.COMMON_PRACTICE);

  private final ThreadLimits limits;
  private final Kept<Oversize> oversizes;
  private final Kept<ClearanceList> clearances;
  private final Kept<PercentHabits> percents;
  private final Kept<BlindAllowances> allowances;
  private final Kept<TappingLists> lists;

  /** Takes the tables of all started bundles and reports bad ones against their module. */
  @Activate
  public HoleChoice(
      BundleContext context,
      @Reference Tables tables,
      @Reference ThreadLimits limits,
      @Reference Faults faults) {
    this(tables, limits, Kept.reportingTo(faults, context));
  }

  /**
   * Takes tables without a framework.
   *
   * @param faulty told of each table that cannot be used
   */
  public HoleChoice(
      Tables tables, ThreadLimits limits, BiConsumer<Table, RuntimeException> faulty) {
    this.limits = limits;
    this.oversizes = new Kept<>(tables, Oversize.KIND, Oversize::read, faulty);
    this.clearances = new Kept<>(tables, ClearanceList.KIND, ClearanceList::read, faulty);
    this.percents = new Kept<>(tables, PercentHabits.KIND, PercentHabits::read, faulty);
    this.allowances = new Kept<>(tables, BlindAllowances.KIND, BlindAllowances::read, faulty);
    // Faults of drill tables are told by the registry that offers the drills.
    DrillRegistry drills = new DrillRegistry(tables, (table, fault) -> {});
    this.lists =
        new Kept<>(tables, TappingLists.KIND, table -> TappingLists.read(table, drills), faulty);
  }

  @Override
  public List<TappingChoice> tapping(
      ScrewThread thread, double wantedPercent, Collection<DrillSize> from) {
    return new TappingRank(thread, limits.minorOfNut(thread), oversizes.modulesFirst())
        .rank(wantedPercent, from);
  }

  @Override
  public List<TappingChoice> tapping(
      ScrewThread thread, PercentWanted wanted, Collection<DrillSize> from) {
    List<TappingChoice> ranked = tapping(thread, wanted.percent(), from);
    return wanted.untold() ? TappingLists.first(listed(thread), wanted.percent(), ranked) : ranked;
  }

  @Override
  public List<ListedDrill> listed(ScrewThread thread) {
    return TappingLists.listed(lists.now(), thread);
  }

  @Override
  public PercentWanted usualPercent(String material, ThreadDepth depth) {
    return PercentHabits.wanted(percents.modulesFirst(), material, depth);
  }

  @Override
  public List<ClearanceChoice> clearance(ScrewThread thread, Collection<DrillSize> from) {
    Optional<ClearanceList.Holes> holes =
        clearances.modulesFirst().stream().flatMap(list -> list.of(thread).stream()).findFirst();
    List<ClearanceChoice> choices = new ArrayList<>();
    for (ClearanceFit fit : ClearanceFit.values()) {
      Optional<Length> listed = holes.map(size -> size.byFit().get(fit));
      if (listed.isPresent()) {
        listed(thread, fit, listed.get(), holes.get().source(), from).ifPresent(choices::add);
      } else if (fit == ClearanceFit.CLOSE) {
        smallestAbove(thread, from).ifPresent(choices::add);
      }
    }
    return List.copyOf(choices);
  }

  private static Optional<ClearanceChoice> listed(
      ScrewThread thread,
      ClearanceFit fit,
      Length hole,
      Source source,
      Collection<DrillSize> from) {
    return from.stream()
        .filter(drill -> drill.diameter().compareTo(hole) >= 0)
        .min(DrillSize::compareTo)
        .map(drill -> choice(thread, drill, fit, hole, source));
  }

  private static Optional<ClearanceChoice> smallestAbove(
      ScrewThread thread, Collection<DrillSize> from) {
    return from.stream()
        .filter(drill -> drill.diameter().compareTo(thread.major()) > 0)
        .min(DrillSize::compareTo)
        .map(drill -> choice(thread, drill, ClearanceFit.CLOSE, thread.major(), NO_LIST));
  }

  private static ClearanceChoice choice(
      ScrewThread thread, DrillSize drill, ClearanceFit fit, Length listed, Source source) {
    return new ClearanceChoice(drill, fit, listed, drill.diameter().minus(thread.major()), source);
  }

  @Override
  public BlindHole blindHole(BlindHoleRequest request) {
    return BlindDepths.of(request, allowances.modulesFirst());
  }
}
