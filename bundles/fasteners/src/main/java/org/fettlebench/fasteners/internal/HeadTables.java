package org.fettlebench.fasteners.internal;

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
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Heads out of all tables of kind {@code heads}; reads them again when tables come or go. */
@Component
public final class HeadTables implements Heads {
  private final KeptTables<HeadTable> tables;

  /** Takes the tables of all started bundles and reports bad ones against their module. */
  @Activate
  public HeadTables(BundleContext context, @Reference Tables tables, @Reference Faults faults) {
    this(tables, KeptTables.reportingTo(faults, context));
  }

  /** Takes tables without a framework. */
  HeadTables(Tables tables, BiConsumer<Table, TableFormatException> faulty) {
    this.tables = new KeptTables<>(tables, "heads", HeadTable::of, faulty);
  }

  @Override
  public List<HeadStyle> styles() {
    Map<String, HeadStyle> styles = new LinkedHashMap<>();
    tables.now().forEach(table -> styles.putIfAbsent(table.style().id(), table.style()));
    return List.copyOf(styles.values());
  }

  @Override
  public Optional<Head> find(String style, ScrewThread thread) {
    return tables.now().stream()
        .filter(table -> table.style().id().equals(style))
        .flatMap(table -> table.find(thread).stream())
        .findFirst();
  }

  @Override
  public List<Head> forThread(ScrewThread thread) {
    return styles().stream().flatMap(style -> find(style.id(), thread).stream()).toList();
  }
}
