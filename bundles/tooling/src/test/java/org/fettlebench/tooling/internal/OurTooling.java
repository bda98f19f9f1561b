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

/** The shipped drills, lists and threads, without a framework. */
final class OurTooling {
  static final BiConsumer<Table, RuntimeException> NO_FAULTS =
      (table, fault) -> {
        throw new AssertionError(table.id(), fault);
      };

  static final FixedTables TABLES =
      FixedTables.carriedBy(DrillRegistry.class, ThreadRegistry.class);

  static final ThreadRegistry THREADS = new ThreadRegistry(TABLES, NO_FAULTS);
  static final DrillRegistry DRILLS = new DrillRegistry(TABLES, NO_FAULTS);
  static final HoleChoice HOLES = new HoleChoice(TABLES, THREADS, NO_FAULTS);

  static final WorkRegistry MATERIALS = new WorkRegistry(TABLES, NO_FAULTS);
  static final SpeedService SPEEDS = new SpeedService(TABLES, MATERIALS, NO_FAULTS);
  static final DrilledHoleService DRILLED = new DrilledHoleService(TABLES, NO_FAULTS);
  static final TapRiskService RISKS = new TapRiskService(TABLES, MATERIALS, NO_FAULTS);

  private OurTooling() {}

  static WorkMaterial material(String name) {
    return MATERIALS.find(name).orElseThrow(() -> new AssertionError("no material " + name));
  }

  static ScrewThread thread(String designation) {
    return THREADS
        .find(designation)
        .orElseThrow(() -> new AssertionError("no thread " + designation));
  }

  static DrillSize drill(String name) {
    return DRILLS.find(name).orElseThrow(() -> new AssertionError("no drill " + name));
  }

  /** Reads a drill as charts print it: a number, a letter, a fraction or millimetres. */
  static DrillSize printed(String cell) {
    if (cell.endsWith("mm") || cell.contains("/") || cell.endsWith(" in")) {
      return drill(cell);
    }
    return drill(cell.matches("\\d+") ? "No " + cell : cell);
  }

  static DrillSize mm(String cell) {
    return DRILLS.ofDiameter(Length.of(new BigDecimal(cell), LengthUnit.MILLIMETRE));
  }
}
