package org.fettlebench.tooling.internal.risk;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.Tables;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.internal.Kept;
import org.fettlebench.tooling.internal.risk.CoefficientTable.Coefficient;
import org.fettlebench.tooling.internal.risk.ResistanceTable.Resistance;
import org.fettlebench.tooling.risk.TapJob;
import org.fettlebench.tooling.risk.TapRisk;
import org.fettlebench.tooling.risk.TapRisks;
import org.fettlebench.tooling.risk.TapSort;
import org.fettlebench.tooling.risk.TapVerdict;
import org.fettlebench.tooling.work.WorkMaterial;
import org.fettlebench.tooling.work.WorkMaterials;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Tap risk by the tables of the moment. */
@Component
public final class TapRiskService implements TapRisks {
  /** Worth changing the material for: common practice, no source. */
  private static final double CLEARLY_SOFTER = 0.9;

  private final WorkMaterials materials;
  private final Kept<ResistanceTable> resistances;
  private final Kept<CoefficientTable> coefficients;
  private final Kept<CoreTable> cores;

  /** Takes the tables of all started bundles and reports bad ones against their module. */
  @Activate
  public TapRiskService(
      BundleContext context,
      @Reference Tables tables,
      @Reference WorkMaterials materials,
      @Reference Faults faults) {
    this(tables, materials, Kept.reportingTo(faults, context));
  }

  /**
   * Takes tables without a framework.
   *
   * @param faulty told of each table that cannot be used
   */
  public TapRiskService(
      Tables tables, WorkMaterials materials, BiConsumer<Table, RuntimeException> faulty) {
    this.materials = materials;
    this.resistances = new Kept<>(tables, ResistanceTable.KIND, ResistanceTable::read, faulty);
    this.coefficients = new Kept<>(tables, CoefficientTable.KIND, CoefficientTable::read, faulty);
    this.cores = new Kept<>(tables, CoreTable.KIND, CoreTable::read, faulty);
  }

  @Override
  public List<WorkMaterial> materials() {
    return materials.all().stream().filter(material -> resistance(material).isPresent()).toList();
  }

  @Override
  public TapRisk of(TapJob job, Collection<DrillSize> drills) {
    TapFigures now = figures(job).orElseThrow(() -> unknown(job.material()));
    return new TapRisk(
        job,
        job.thread().percentOfThread(job.hole()),
        now.flutes(),
        now.coreDiameter(),
        now.cuttingNm(),
        now.breakingNm(),
        now.ratio(),
        now.ratioLeast(),
        now.ratioMost(),
        verdict(now),
        now.assumed(),
        notes(job),
        new TapCureFinder(now, this::figures).find(drills, softer(now)));
  }

  private static TapVerdict verdict(TapFigures figures) {
    if (figures.ratio() >= 1) {
      return TapVerdict.WILL_LIKELY_BREAK;
    }
    return figures.ratioMost() >= 1 ? TapVerdict.MAY_BREAK : TapVerdict.BELOW;
  }

  private static List<String> notes(TapJob job) {
    List<String> notes = new ArrayList<>();
    notes.add(
        "a guide only: for a sharp tap, well oiled, square to the hole and backed off; a blunt or"
            + " dry tap needs far more, and sideways pull is in none of the figures");
    notes.add("the lands beside the core are not counted, nor the notch at the foot of a flute");
    if (job.tap() == TapSort.SPIRAL_POINT && !job.through()) {
      notes.add("a spiral point drives the chips ahead: in a blind hole they pack and jam it");
    }
    if (job.thread().percentOfThread(job.hole()) > 100) {
      notes.add("the hole leaves more than 100 per cent of thread: the tap's roots will jam");
    }
    return notes;
  }

  private Optional<TapFigures> figures(TapJob job) {
    Optional<WorkMaterial> standIn =
        own(job.material()).isPresent() ? Optional.empty() : materials.standIn(job.material());
    return resistance(job.material()).map(found -> figures(job, found, standIn));
  }

  private TapFigures figures(TapJob job, Resistance resistance, Optional<WorkMaterial> standIn) {
    List<CoreTable> tables = cores.modulesFirst();
    int flutes = job.flutes().orElseGet(() -> usualFlutes(job, tables));
    return new TapFigures(
        job,
        resistance,
        standIn,
        coefficient(job.tap(), resistance.group()),
        flutes,
        CoreTable.of(CoreTable.coreOf(flutes), tables),
        CoreTable.of(CoreTable.STRENGTH, tables),
        CoreTable.of(CoreTable.FREE_DEPTH, tables),
        CoreTable.of(CoreTable.EXTRA, tables));
  }

  private static int usualFlutes(TapJob job, List<CoreTable> tables) {
    boolean small =
        job.thread().major().millimetres() <= CoreTable.of(CoreTable.SMALL, tables).middle();
    String flutes = small ? CoreTable.SMALL_FLUTES : CoreTable.LARGE_FLUTES;
    return (int) Math.round(CoreTable.of(flutes, tables).middle());
  }

  private Coefficient coefficient(TapSort tap, String group) {
    return coefficients.modulesFirst().stream()
        .flatMap(table -> table.rows().stream())
        .filter(row -> row.tap() == tap && row.group().equals(group))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalStateException(
                    "no table of kind %s has a %s in %s"
                        .formatted(CoefficientTable.KIND, tap.title(), group)));
  }

  private Optional<Resistance> resistance(WorkMaterial material) {
    return own(material).or(() -> materials.standIn(material).flatMap(this::own));
  }

  private Optional<Resistance> own(WorkMaterial material) {
    return resistances.modulesFirst().stream()
        .flatMap(table -> table.rows().stream())
        .filter(row -> row.material().equals(material.id()))
        .findFirst();
  }

  /** Returns what is clearly softer, of the same group if there is one, else brass for steel. */
  private Optional<WorkMaterial> softer(TapFigures now) {
    String group = now.resistance().group();
    return clearlySofter(now, group)
        .or(() -> group.equals("steel") ? clearlySofter(now, "brass") : Optional.empty());
  }

  private Optional<WorkMaterial> clearlySofter(TapFigures now, String group) {
    double most = CLEARLY_SOFTER * now.resistance().mpa().middle();
    return resistances.modulesFirst().stream()
        .flatMap(table -> table.rows().stream())
        .filter(row -> row.group().equals(group) && row.mpa().middle() <= most)
        .max(Comparator.comparingDouble(row -> row.mpa().middle()))
        .flatMap(row -> materials.find(row.material()));
  }

  private MeasureException unknown(WorkMaterial material) {
    return new MeasureException(
        "no source gives the cutting resistance of %s; there are figures for %s"
            .formatted(
                material.name(),
                materials().stream().map(WorkMaterial::id).collect(Collectors.joining(", "))));
  }
}
