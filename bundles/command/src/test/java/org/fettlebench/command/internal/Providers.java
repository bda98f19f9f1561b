package org.fettlebench.command.internal;

import static org.mockito.Mockito.mock;

import org.fettlebench.fasteners.Heads;
import org.fettlebench.fasteners.internal.HeadTables;
import org.fettlebench.tables.Tables;
import org.fettlebench.threads.Threads;
import org.fettlebench.threads.internal.ThreadRegistry;
import org.osgi.framework.BundleContext;

/** The suite's own providers, put together without a framework. */
public final class Providers {
  private static final Tables TABLES = ShippedTables.of(ThreadRegistry.class, HeadTables.class);

  /** The shipped threads. */
  public static final Threads THREADS =
      new ThreadRegistry(
          TABLES,
          (table, fault) -> {
            throw fault;
          });

  /** The shipped heads. */
  public static final Heads HEADS =
      new HeadTables(mock(BundleContext.class), TABLES, Providers::failed);

  private Providers() {}

  private static void failed(Object contribution, String doing, Throwable cause) {
    throw new AssertionError(doing, cause);
  }
}
