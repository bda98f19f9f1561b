package org.fettlebench.tooling.internal.drilled;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.Tables;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.drilled.DrilledHole;
import org.fettlebench.tooling.drilled.DrilledHoles;
import org.fettlebench.tooling.drilled.ReamingChoice;
import org.fettlebench.tooling.internal.Kept;
import org.fettlebench.tooling.internal.Oversize;
import org.fettlebench.tooling.work.WorkMaterial;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Looks drilled holes up in the tables of the moment. */
@Component
public final class DrilledHoleService implements DrilledHoles {
  private final Kept<Oversize> oversizes;
  private final Kept<ToleranceTable> tolerances;
  private final Kept<ReamingTable> reaming;

  /** Takes the tables of all started bundles and reports bad ones against their module. */
  @Activate
  public DrilledHoleService(
      BundleContext context, @Reference Tables tables, @Reference Faults faults) {
    this(tables, Kept.reportingTo(faults, context));
  }

  /**
   * Takes tables without a framework.
   *
   * @param faulty told of each table that cannot be used
   */
  public DrilledHoleService(Tables tables, BiConsumer<Table, RuntimeException> faulty) {
    // Faults of oversizes are told by the choice of holes, which reads them too.
    this.oversizes = new Kept<>(tables, Oversize.KIND, Oversize::read, (table, fault) -> {});
    this.tolerances = new Kept<>(tables, ToleranceTable.KIND, ToleranceTable::read, faulty);
    this.reaming = new Kept<>(tables, ReamingTable.KIND, ReamingTable::read, faulty);
  }

  @Override
  public DrilledHole expected(DrillSize drill) {
    return new DrilledHole(
        drill,
        oversizes.modulesFirst().stream()
            .flatMap(table -> table.range(drill.diameter()).stream())
            .findFirst(),
        tolerances.modulesFirst().stream()
            .flatMap(table -> table.of(drill.diameter()).stream())
            .findFirst());
  }

  @Override
  public Optional<ReamingChoice> beforeReaming(
      Length reamed, Optional<WorkMaterial> material, Collection<DrillSize> from) {
    if (!reamed.isPositive()) {
      throw new MeasureException("reamed size " + reamed + " must be above 0 mm");
    }
    return reaming.modulesFirst().stream()
        .flatMap(table -> table.of(reamed, material).stream())
        .findFirst()
        .map(left -> choice(reamed, left, from));
  }

  private static ReamingChoice choice(
      Length reamed, ReamingTable.Left left, Collection<DrillSize> from) {
    Length least = reamed.minus(left.most()).minus(left.oversize());
    Length most = reamed.minus(left.least()).minus(left.oversize());
    if (!least.isPositive()) {
      throw new MeasureException(
          "reamed size %s is too small: with %s for the reamer and %s for the drill nothing is left"
              .formatted(reamed, left.most(), left.oversize()));
    }
    Length twiceTheMiddle = least.plus(most);
    List<DrillSize> within =
        from.stream()
            .filter(drill -> drill.diameter().compareTo(least) >= 0)
            .filter(drill -> drill.diameter().compareTo(most) <= 0)
            .sorted(
                Comparator.comparing(
                        (DrillSize drill) -> drill.diameter().times(2).minus(twiceTheMiddle).abs())
                    .thenComparing(Comparator.naturalOrder()))
            .toList();
    return new ReamingChoice(
        reamed, left.least(), left.most(), left.oversize(), least, most, within, left.source());
  }
}
