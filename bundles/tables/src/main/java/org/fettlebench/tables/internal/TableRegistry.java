package org.fettlebench.tables.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Predicate;
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
 * parts start, and gone before it has stopped. A module's tables are read at once, so that whoever
 * dropped it in hears what is wrong with them; the suite's own when their kind is first asked for.
 */
@Component(service = Tables.class, immediate = true)
public final class TableRegistry implements Tables, BundleTrackerCustomizer<List<CarriedTable>> {
  private static final Comparator<CarriedTable> SUITE_FIRST =
      Comparator.comparing((CarriedTable one) -> !one.suite())
          .thenComparing(one -> one.bundle().getSymbolicName())
          .thenComparing(one -> one.table().map(Table::id).orElse(""));

  private final BundleContext context;
  private final Faults faults;
  private final Set<CarriedTable> carried = ConcurrentHashMap.newKeySet();
  private final Map<String, List<Table>> byKind = new ConcurrentHashMap<>();
  private final Set<CarriedTable> reported = ConcurrentHashMap.newKeySet();
  private final AtomicLong revision = new AtomicLong();
  private final BundleTracker<List<CarriedTable>> tracker;

  /** Takes the tables of the bundles that have started and watches for others. */
  @Activate
  public TableRegistry(BundleContext context, @Reference Faults faults) {
    this.context = context;
    this.faults = faults;
    this.tracker = new BundleTracker<>(context, Bundle.STARTING | Bundle.ACTIVE, this);
    tracker.open();
  }

  /** Forgets all tables. */
  @Deactivate
  public void close() {
    tracker.close();
  }

  @Override
  public List<CarriedTable> addingBundle(Bundle bundle, BundleEvent event) {
    boolean suite = ModuleOrigin.suite(bundle, context);
    List<CarriedTable> tables = CarriedTable.of(bundle, suite, faults);
    if (!tables.isEmpty()) {
      carried.addAll(tables);
      changed();
    }
    if (!suite) {
      tables.stream().flatMap(one -> one.table().stream()).forEach(one -> ofKind(one.kind()));
    }
    return tables;
  }

  @Override
  public void modifiedBundle(Bundle bundle, BundleEvent event, List<CarriedTable> tables) {
    // From starting to started: its tables are the same.
  }

  @Override
  public void removedBundle(Bundle bundle, BundleEvent event, List<CarriedTable> tables) {
    if (!tables.isEmpty()) {
      tables.forEach(carried::remove);
      tables.forEach(reported::remove);
      changed();
    }
  }

  private void changed() {
    revision.incrementAndGet();
    byKind.clear();
  }

  @Override
  public List<Table> ofKind(String kind) {
    List<Table> known = byKind.get(kind);
    if (known != null) {
      return known;
    }
    long before = revision.get();
    List<Table> found = winners(one -> one.mayBe(kind) && isOf(kind, one));
    byKind.put(kind, found);
    if (revision.get() != before) {
      // What came or went meanwhile may be missing here: the next question finds out.
      byKind.remove(kind);
    }
    return found;
  }

  private static boolean isOf(String kind, CarriedTable one) {
    return one.table().filter(table -> table.kind().equals(kind)).isPresent();
  }

  @Override
  public List<Table> all() {
    return winners(one -> one.table().isPresent());
  }

  @Override
  public long revision() {
    return revision.get();
  }

  /** Returns the tables that stand, one of each kind and id, and reports those that do not. */
  private List<Table> winners(Predicate<CarriedTable> wanted) {
    Map<List<String>, Table> first = new HashMap<>();
    List<Table> winners = new ArrayList<>();
    for (CarriedTable one : carried.stream().filter(wanted).sorted(SUITE_FIRST).toList()) {
      Table table = one.table().orElseThrow();
      Table winner = first.putIfAbsent(List.of(table.kind(), table.id()), table);
      if (winner == null) {
        winners.add(table);
        reported.remove(one);
      } else if (reported.add(one)) {
        report(one.bundle(), table, winner);
      }
    }
    return List.copyOf(winners);
  }

  private void report(Bundle bundle, Table loser, Table winner) {
    faults.report(
        bundle,
        "taking up the table " + loser.title(),
        new IllegalStateException(
            "%s already has the %s table %s: give this one another id"
                .formatted(winner.module(), loser.kind(), loser.id())));
  }
}
