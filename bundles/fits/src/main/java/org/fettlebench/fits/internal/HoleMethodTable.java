package org.fettlebench.fits.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.HoleMethods;
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.Tables;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Methods out of all tables of kind {@code hole-methods}; reads them again when tables change. */
@Component
public final class HoleMethodTable implements HoleMethods {
  private final Tables tables;
  private final BiConsumer<Table, RuntimeException> faulty;
  private Read read = new Read(Long.MIN_VALUE, List.of());

  private record Read(long revision, List<HoleMethod> methods) {}

  /** Takes the tables of all started bundles and reports bad ones against their module. */
  @Activate
  public HoleMethodTable(
      BundleContext context, @Reference Tables tables, @Reference Faults faults) {
    this(
        tables,
        (table, fault) -> faults.report(owner(context, table), "reading hole methods", fault));
  }

  /** Takes tables without a framework. */
  HoleMethodTable(Tables tables, BiConsumer<Table, RuntimeException> faulty) {
    this.tables = tables;
    this.faulty = faulty;
  }

  @Override
  public synchronized List<HoleMethod> methods() {
    long revision = tables.revision();
    if (read.revision() != revision) {
      read = new Read(revision, readAll());
    }
    return read.methods();
  }

  @Override
  public Optional<HoleMethod> find(String id) {
    return methods().stream().filter(method -> method.id().equals(id)).findFirst();
  }

  private List<HoleMethod> readAll() {
    Map<String, HoleMethod> byId = new LinkedHashMap<>();
    for (Table table : tables.ofKind("hole-methods")) {
      try {
        List<HoleMethod> methods = new ArrayList<>();
        for (Table.Row row : table.rows()) {
          methods.add(MethodRow.read(row));
        }
        methods.forEach(method -> byId.putIfAbsent(method.id(), method));
      } catch (RuntimeException fault) {
        faulty.accept(table, fault);
      }
    }
    return byId.values().stream()
        .sorted(Comparator.comparingDouble(HoleMethod::sigmaPerAxisMm).reversed())
        .toList();
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
