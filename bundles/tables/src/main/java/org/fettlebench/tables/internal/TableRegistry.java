package org.fettlebench.tables.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fettlebench.modules.Faults;
import org.fettlebench.modules.ModuleOrigin;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.Tables;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleEvent;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.Reference;
import org.osgi.util.tracker.BundleTracker;
import org.osgi.util.tracker.BundleTrackerCustomizer;

/**
 * Keeps the tables of all started bundles. Tables of a bundle are there before the bundle's own
 * parts start, and gone before it has stopped.
 */
@Component(service = Tables.class, immediate = true)
public final class TableRegistry implements Tables, BundleTrackerCustomizer<List<Table>> {
  /** A table and whose it is; compared by identity, since two files may hold the same table. */
  private static final class Held {
    private final Bundle bundle;
    private final boolean suite;
    private final Table table;

    Held(Bundle bundle, boolean suite, Table table) {
      this.bundle = bundle;
      this.suite = suite;
      this.table = table;
    }
  }

  private static final Comparator<Held> SUITE_FIRST =
      Comparator.comparing((Held held) -> !held.suite)
          .thenComparing(held -> held.table.module())
          .thenComparing(held -> held.table.id());

  private final BundleContext context;
  private final Faults faults;
  private final BundleTables reader;
  private final List<Held> held = new ArrayList<>();
  private final Set<Held> reported = new HashSet<>();
  private final BundleTracker<List<Table>> tracker;

  private volatile Snapshot snapshot = new Snapshot(List.of(), 0);

  private record Snapshot(List<Table> tables, long revision) {}

  /** Reads the tables of the bundles that have started and watches for others. */
  @Activate
  public TableRegistry(BundleContext context, @Reference Faults faults) {
    this.context = context;
    this.faults = faults;
    this.reader = new BundleTables(faults);
    this.tracker = new BundleTracker<>(context, Bundle.STARTING | Bundle.ACTIVE, this);
    tracker.open();
  }

  /** Forgets all tables. */
  @Deactivate
  public void close() {
    tracker.close();
  }

  @Override
  public List<Table> addingBundle(Bundle bundle, BundleEvent event) {
    List<Table> tables = reader.read(bundle);
    if (!tables.isEmpty()) {
      boolean suite = ModuleOrigin.suite(bundle, context);
      change(() -> tables.forEach(table -> held.add(new Held(bundle, suite, table))));
    }
    return tables;
  }

  @Override
  public void modifiedBundle(Bundle bundle, BundleEvent event, List<Table> tables) {
    // From starting to started: its tables are the same.
  }

  @Override
  public void removedBundle(Bundle bundle, BundleEvent event, List<Table> tables) {
    if (!tables.isEmpty()) {
      change(() -> held.removeIf(one -> one.bundle.equals(bundle)));
    }
  }

  @Override
  public List<Table> ofKind(String kind) {
    return snapshot.tables.stream().filter(table -> table.kind().equals(kind)).toList();
  }

  @Override
  public List<Table> all() {
    return snapshot.tables;
  }

  @Override
  public long revision() {
    return snapshot.revision;
  }

  private void change(Runnable change) {
    Map<Held, Held> beaten = new HashMap<>();
    synchronized (this) {
      change.run();
      held.sort(SUITE_FIRST);
      snapshot = new Snapshot(winners(beaten), snapshot.revision + 1);
      reported.retainAll(beaten.keySet());
      beaten.keySet().removeIf(loser -> !reported.add(loser));
    }
    // Reported outside the lock: whoever is told may ask for the tables.
    beaten.forEach(this::reportBeaten);
  }

  private List<Table> winners(Map<Held, Held> beaten) {
    Map<List<String>, Held> first = new HashMap<>();
    List<Table> winners = new ArrayList<>();
    for (Held one : held) {
      Held winner = first.putIfAbsent(List.of(one.table.kind(), one.table.id()), one);
      if (winner == null) {
        winners.add(one.table);
      } else {
        beaten.put(one, winner);
      }
    }
    return List.copyOf(winners);
  }

  private void reportBeaten(Held loser, Held winner) {
    faults.report(
        loser.bundle,
        "taking up the table " + loser.table.title(),
        new IllegalStateException(
            "%s already has the %s table %s: give this one another id"
                .formatted(winner.table.module(), loser.table.kind(), loser.table.id())));
  }
}
