package org.fettlebench.fasteners.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFormatException;
import org.fettlebench.tables.Tables;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;

/** What one kind of table was read as, kept until tables come or go; bad ones are reported. */
final class KeptTables<T> {
  private final Tables tables;
  private final String kind;
  private final Function<Table, T> reader;
  private final BiConsumer<Table, TableFormatException> faulty;
  private Read<T> read = new Read<>(Long.MIN_VALUE, List.of());

  private record Read<T>(long revision, List<T> tables) {}

  KeptTables(
      Tables tables,
      String kind,
      Function<Table, T> reader,
      BiConsumer<Table, TableFormatException> faulty) {
    this.tables = tables;
    this.kind = kind;
    this.reader = reader;
    this.faulty = faulty;
  }

  /** Returns the good tables, the suite's own first. */
  synchronized List<T> now() {
    long revision = tables.revision();
    if (read.revision() != revision) {
      read = new Read<>(revision, readAll());
    }
    return read.tables();
  }

  private List<T> readAll() {
    List<T> good = new ArrayList<>();
    for (Table table : tables.ofKind(kind)) {
      try {
        good.add(reader.apply(table));
      } catch (TableFormatException fault) {
        faulty.accept(table, fault);
      }
    }
    return List.copyOf(good);
  }

  /** Returns a place for faults that finds the module of a table. */
  static BiConsumer<Table, TableFormatException> reportingTo(Faults faults, BundleContext context) {
    return (table, fault) -> faults.report(owner(context, table), "reading " + table.kind(), fault);
  }

  private static Object owner(BundleContext context, Table table) {
    for (Bundle bundle : context.getBundles()) {
      if (table.module().equals(bundle.getSymbolicName())) {
        return bundle;
      }
    }
    return context.getBundle();
  }
}
