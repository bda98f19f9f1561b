package org.fettlebench.tooling.internal.work;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.Tables;
import org.fettlebench.tooling.internal.Kept;
import org.fettlebench.tooling.internal.work.WorkTable.Named;
import org.fettlebench.tooling.work.WorkMaterial;
import org.fettlebench.tooling.work.WorkMaterials;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** The materials out of all tables of kind {@code work-materials}. */
@Component
public final class WorkRegistry implements WorkMaterials {
  /**
   * Tables for strength write the condition behind the alloy: {@code brass-cz121}, {@code en8-r}.
   */
  private static final int SHORTEST_PART = 3;

  private final Kept<WorkTable> tables;

  /** Takes the tables of all started bundles and reports bad ones against their module. */
  @Activate
  public WorkRegistry(BundleContext context, @Reference Tables tables, @Reference Faults faults) {
    this(tables, Kept.reportingTo(faults, context));
  }

  /**
   * Takes tables without a framework.
   *
   * @param faulty told of each table that cannot be used
   */
  public WorkRegistry(Tables tables, BiConsumer<Table, RuntimeException> faulty) {
    this.tables = new Kept<>(tables, WorkTable.KIND, WorkTable::read, faulty);
  }

  @Override
  public List<WorkMaterial> all() {
    Map<String, WorkMaterial> byId = new LinkedHashMap<>();
    rows().forEach(row -> byId.putIfAbsent(row.material().id(), row.material()));
    return List.copyOf(byId.values());
  }

  @Override
  public Optional<WorkMaterial> find(String name) {
    return keyed(WorkTable.key(name)).or(() -> byPart(name));
  }

  private Optional<WorkMaterial> keyed(String key) {
    return rows().filter(row -> row.keys().contains(key)).map(Named::material).findFirst();
  }

  /** Finds {@code brass-cz121} by its part {@code cz121}, {@code en8-drawn} by {@code en8}. */
  private Optional<WorkMaterial> byPart(String name) {
    return Arrays.stream(name.strip().split("[\\s-]+"))
        .map(WorkTable::key)
        .filter(part -> part.length() >= SHORTEST_PART)
        .flatMap(part -> keyed(part).stream())
        .findFirst();
  }

  @Override
  public Optional<WorkMaterial> standIn(WorkMaterial material) {
    return rows()
        .filter(row -> row.material().id().equals(material.id()))
        .findFirst()
        .flatMap(Named::standIn)
        .flatMap(id -> keyed(WorkTable.key(id)));
  }

  @Override
  public List<WorkMaterial> near(String name) {
    List<String> words =
        Arrays.stream(name.strip().split("[\\s-]+"))
            .map(WorkTable::key)
            .filter(word -> word.length() >= SHORTEST_PART)
            .toList();
    List<WorkMaterial> holding =
        rows()
            .filter(row -> words.stream().anyMatch(word -> holds(row, word)))
            .map(Named::material)
            .distinct()
            .toList();
    return holding.isEmpty() ? all() : holding;
  }

  private static boolean holds(Named row, String word) {
    return row.keys().stream().anyMatch(key -> key.contains(word) || word.contains(key));
  }

  private Stream<Named> rows() {
    return tables.modulesFirst().stream().flatMap(table -> table.rows().stream());
  }
}
