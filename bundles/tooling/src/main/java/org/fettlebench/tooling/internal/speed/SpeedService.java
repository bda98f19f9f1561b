package org.fettlebench.tooling.internal.speed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.Tables;
import org.fettlebench.tooling.internal.Kept;
import org.fettlebench.tooling.internal.speed.FactorTable.Factor;
import org.fettlebench.tooling.speed.CuttingOperation;
import org.fettlebench.tooling.speed.SpeedJob;
import org.fettlebench.tooling.speed.SpindleSpeed;
import org.fettlebench.tooling.speed.SpindleSpeeds;
import org.fettlebench.tooling.speed.SurfaceSpeed;
import org.fettlebench.tooling.speed.ToolSteel;
import org.fettlebench.tooling.work.WorkMaterial;
import org.fettlebench.tooling.work.WorkMaterials;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Spindle speeds by the tables of the moment. */
@Component
public final class SpeedService implements SpindleSpeeds {
  private final WorkMaterials materials;
  private final Kept<SpeedTable> speeds;
  private final Kept<FactorTable> factors;

  /** Takes the tables of all started bundles and reports bad ones against their module. */
  @Activate
  public SpeedService(
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
  public SpeedService(
      Tables tables, WorkMaterials materials, BiConsumer<Table, RuntimeException> faulty) {
    this.materials = materials;
    this.speeds = new Kept<>(tables, SpeedTable.KIND, SpeedTable::read, faulty);
    this.factors = new Kept<>(tables, FactorTable.KIND, FactorTable::read, faulty);
  }

  /** What the sources say of a material, and what has to be told with it. */
  private record Found(List<SurfaceSpeed> speeds, List<String> notes) {}

  @Override
  public List<WorkMaterial> materials(CuttingOperation operation) {
    return materials.all().stream()
        .filter(material -> found(operation, material).isPresent())
        .toList();
  }

  @Override
  public SpindleSpeed of(SpeedJob job) {
    Found found = found(job.operation(), job.material()).orElseThrow(() -> unknown(job));
    List<String> notes = new ArrayList<>(found.notes());
    List<SurfaceSpeed> steel = forSteel(job.steel(), found.speeds(), notes);
    double inches = job.diameter().inches();
    double least = steel.stream().mapToDouble(SurfaceSpeed::leastFeetPerMinute).min().orElseThrow();
    double most = steel.stream().mapToDouble(SurfaceSpeed::mostFeetPerMinute).max().orElseThrow();
    double leastRpm = SurfaceSpeed.rpm(least, inches);
    double mostRpm = SurfaceSpeed.rpm(most, inches);
    SpindleSetting setting = SpindleSetting.of(leastRpm, mostRpm, job.machine());
    notes.addAll(SpeedNotes.of(job, setting.fit()));
    return new SpindleSpeed(job, leastRpm, mostRpm, setting.rpm(), setting.fit(), steel, notes);
  }

  private Optional<Found> found(CuttingOperation operation, WorkMaterial material) {
    return own(operation, material)
        .or(
            () ->
                materials
                    .standIn(material)
                    .flatMap(
                        other ->
                            own(operation, other).map(found -> instead(found, material, other))));
  }

  private static Found instead(Found found, WorkMaterial material, WorkMaterial other) {
    List<String> notes = new ArrayList<>(found.notes());
    notes.add(
        "no source has %s: taken as %s (%s)"
            .formatted(material.name(), other.name(), material.source().standing().words()));
    return new Found(found.speeds(), notes);
  }

  private Optional<Found> own(CuttingOperation operation, WorkMaterial material) {
    List<SurfaceSpeed> printed = rows(operation, material);
    if (!printed.isEmpty()) {
      return Optional.of(new Found(printed, List.of()));
    }
    List<Factor> parts = FactorTable.of(operation.word(), factors.modulesFirst());
    List<SurfaceSpeed> drilling = rows(CuttingOperation.DRILL, material);
    return parts.isEmpty() || drilling.isEmpty()
        ? Optional.empty()
        : Optional.of(new Found(times(drilling, parts), FactorTable.words(parts).toList()));
  }

  private List<SurfaceSpeed> rows(CuttingOperation operation, WorkMaterial material) {
    return speeds.now().stream()
        .filter(table -> table.operation() == operation)
        .flatMap(table -> table.rows().stream())
        .filter(row -> row.material().equals(material.id()))
        .map(SpeedTable.Row::speed)
        .toList();
  }

  private static List<SurfaceSpeed> times(List<SurfaceSpeed> speeds, List<Factor> parts) {
    double least = FactorTable.least(parts);
    double most = FactorTable.most(parts);
    return speeds.stream()
        .map(
            speed ->
                new SurfaceSpeed(
                    speed.leastFeetPerMinute() * least,
                    speed.mostFeetPerMinute() * most,
                    speed.forWhat(),
                    speed.source()))
        .toList();
  }

  private List<SurfaceSpeed> forSteel(
      ToolSteel steel, List<SurfaceSpeed> speeds, List<String> notes) {
    if (steel == ToolSteel.HIGH_SPEED) {
      return speeds;
    }
    List<Factor> carbon = FactorTable.of(FactorTable.CARBON, factors.modulesFirst());
    if (carbon.isEmpty()) {
      throw new MeasureException("no table says how slow a cutter of carbon steel must run");
    }
    FactorTable.words(carbon).forEach(notes::add);
    return times(speeds, carbon);
  }

  private MeasureException unknown(SpeedJob job) {
    String known =
        materials(job.operation()).stream().map(WorkMaterial::id).collect(Collectors.joining(", "));
    return new MeasureException(
        "no source gives a speed to %s %s; there are speeds for %s"
            .formatted(job.operation().word(), job.material().name(), known));
  }
}
