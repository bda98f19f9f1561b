package org.fettlebench.fasteners.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.fettlebench.fasteners.Head;
import org.fettlebench.fasteners.HeadStyle;
import org.fettlebench.fasteners.Heads;
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFormatException;
import org.fettlebench.tables.Tables;
import org.fettlebench.threads.ScrewThread;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Heads out of all tables of kind {@code heads}; reads them again when tables come or go. */
@Component
public final class HeadTables implements Heads {
  private final Tables tables;
  private final BiConsumer<Table, TableFormatException> faulty;
  private Read read = new Read(Long.MIN_VALUE, List.of());

  private record Read(long revision, List<HeadTable> tables) {}

  /** Takes the tables of all started bundles and reports bad ones against their module. */
  @Activate
  public HeadTables(BundleContext context, @Reference Tables tables, @Reference Faults faults) {
    this(tables, (table, fault) -> faults.report(owner(context, table), "reading heads", fault));
  }

  /** Takes tables without a framework. */
  HeadTables(Tables tables, BiConsumer<Table, TableFormatException> faulty) {
    this.tables = tables;
    this.faulty = faulty;
  }

  @Override
  public List<HeadStyle> styles() {
    Map<String, HeadStyle> styles = new LinkedHashMap<>();
    read().forEach(table -> styles.putIfAbsent(table.style().id(), table.style()));
    return List.copyOf(styles.values());
  }

  @Override
  public Optional<Head> find(String style, ScrewThread thread) {
    return read().stream()
        .filter(table -> table.style().id().equals(style))
        .flatMap(table -> table.find(thread).stream())
        .findFirst();
  }

  @Override
  public List<Head> forThread(ScrewThread thread) {
    return styles().stream().flatMap(style -> find(style.id(), thread).stream()).toList();
  }

  private synchronized List<HeadTable> read() {
    long revision = tables.revision();
    if (read.revision() != revision) {
      read = new Read(revision, readAll());
    }
    return read.tables();
  }

  private List<HeadTable> readAll() {
    List<HeadTable> good = new ArrayList<>();
    for (Table table : tables.ofKind("heads")) {
      try {
        good.add(HeadTable.of(table));
      } catch (TableFormatException fault) {
        faulty.accept(table, fault);
      }
    }
    return List.copyOf(good);
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
