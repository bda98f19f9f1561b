package org.fettlebench.benchmarks;

import org.fettlebench.tables.Tables;
import org.fettlebench.threads.internal.ThreadRegistry;

/** The suite's own parts without a framework. A faulty table ends the measurement. */
final class Shipped {
  private Shipped() {}

  static ThreadRegistry threads(Tables tables) {
    return new ThreadRegistry(
        tables,
        (table, fault) -> {
          throw new IllegalStateException(table.id(), fault);
        });
  }
}
