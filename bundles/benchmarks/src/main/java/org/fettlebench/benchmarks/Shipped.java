package org.fettlebench.benchmarks;

import org.fettlebench.fasteners.internal.HeadTables;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.Tables;
import org.fettlebench.threads.internal.ThreadRegistry;
import org.fettlebench.threads.internal.strength.MaterialRegistry;
import org.fettlebench.tooling.internal.DrillRegistry;
import org.fettlebench.tooling.internal.HoleChoice;

/** The suite's own parts without a framework. A faulty table ends the measurement. */
final class Shipped {
  private Shipped() {}

  static ThreadRegistry threads(Tables tables) {
    return new ThreadRegistry(tables, Shipped::faulty);
  }

  /** All tables of threads, drills and heads. */
  static Tables tables() {
    return FixedTables.carriedBy(ThreadRegistry.class, DrillRegistry.class, HeadTables.class);
  }

  static DrillRegistry drills(Tables tables) {
    return new DrillRegistry(tables, Shipped::faulty);
  }

  static HoleChoice holes(Tables tables) {
    return new HoleChoice(tables, threads(tables), Shipped::faulty);
  }

  static MaterialRegistry materials(Tables tables) {
    return new MaterialRegistry(tables, Shipped::faulty);
  }

  private static void faulty(Table table, RuntimeException fault) {
    throw new IllegalStateException(table.id(), fault);
  }
}
