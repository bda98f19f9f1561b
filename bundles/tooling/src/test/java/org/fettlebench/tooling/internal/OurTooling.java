package org.fettlebench.tooling.internal;

import java.math.BigDecimal;
import java.util.function.BiConsumer;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.tables.Table;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.internal.ThreadRegistry;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.internal.drilled.DrilledHoleService;
import org.fettlebench.tooling.internal.risk.TapRiskService;
import org.fettlebench.tooling.internal.speed.SpeedService;
import org.fettlebench.tooling.internal.work.WorkRegistry;
import org.fettlebench.tooling.work.WorkMaterial;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** The shipped drills, lists and threads, without a framework. */
final class OurTooling {
  static final BiConsumer<Table, RuntimeException> NO_FAULTS =
      (table, fault) -> {
        throw new AssertionError(table.id(), fault);
      };

  static final FixedTables TABLES =
      FixedTables.carriedBy(DrillRegistry.class, ThreadRegistry.class);

  /** The services of the test class that runs. */
  private static Services services = new Services();

  /** Services that have answered nothing yet. */
  private static final class Services {
    private final ThreadRegistry threads = new ThreadRegistry(TABLES, NO_FAULTS);
    private final DrillRegistry drills = new DrillRegistry(TABLES, NO_FAULTS);
    private final HoleChoice holes = new HoleChoice(TABLES, threads, NO_FAULTS);
    private final WorkRegistry materials = new WorkRegistry(TABLES, NO_FAULTS);
    private final SpeedService speeds = new SpeedService(TABLES, materials, NO_FAULTS);
    private final DrilledHoleService drilled = new DrilledHoleService(TABLES, NO_FAULTS);
    private final TapRiskService risks = new TapRiskService(TABLES, materials, NO_FAULTS);
  }

  /**
   * Gives each test class services of its own: what they kept of another test's answers would hide
   * a fault from this one.
   */
  static final class Fresh implements BeforeAllCallback {
    @Override
    public void beforeAll(ExtensionContext context) {
      services = new Services();
    }
  }

  private OurTooling() {}

  static ThreadRegistry threads() {
    return services.threads;
  }

  static DrillRegistry drills() {
    return services.drills;
  }

  static HoleChoice holes() {
    return services.holes;
  }

  static WorkRegistry materials() {
    return services.materials;
  }

  static SpeedService speeds() {
    return services.speeds;
  }

  static DrilledHoleService drilled() {
    return services.drilled;
  }

  static TapRiskService risks() {
    return services.risks;
  }

  static WorkMaterial material(String name) {
    return materials().find(name).orElseThrow(() -> new AssertionError("no material " + name));
  }

  static ScrewThread thread(String designation) {
    return threads()
        .find(designation)
        .orElseThrow(() -> new AssertionError("no thread " + designation));
  }

  static DrillSize drill(String name) {
    return drills().find(name).orElseThrow(() -> new AssertionError("no drill " + name));
  }

  /** Reads a drill as charts print it: a number, a letter, a fraction or millimetres. */
  static DrillSize printed(String cell) {
    if (cell.endsWith("mm") || cell.contains("/") || cell.endsWith(" in")) {
      return drill(cell);
    }
    return drill(cell.matches("\\d+") ? "No " + cell : cell);
  }

  static DrillSize mm(String cell) {
    return drills().ofDiameter(Length.of(new BigDecimal(cell), LengthUnit.MILLIMETRE));
  }
}
