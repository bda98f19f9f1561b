package org.fettlebench.threads.internal;

import org.fettlebench.tables.FixedTables;

/** The shipped series, without a framework. */
public final class OurThreads {
  public static final FixedTables TABLES = FixedTables.carriedBy(ThreadRegistry.class);

  private OurThreads() {}

  /**
   * Returns a registry that has answered nothing yet. Tests keep one for each class: what it kept
   * of another test's answers would hide a fault from this one.
   */
  public static ThreadRegistry fresh() {
    return new ThreadRegistry(
        TABLES,
        (table, fault) -> {
          throw new AssertionError(table.id(), fault);
        });
  }
}
