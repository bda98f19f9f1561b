package org.fettlebench.tooling.internal.work;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.fettlebench.tables.Table;
import org.fettlebench.tooling.internal.RowFaults;
import org.fettlebench.tooling.work.WorkMaterial;

/** The materials of one table of kind work-materials. */
record WorkTable(List<Named> rows) {
  static final String KIND = "work-materials";

  /** A material, all names it is found by, and what stands in for it. */
  record Named(WorkMaterial material, List<String> keys, Optional<String> standIn) {}

  /**
   * Reads a table.
   *
   * @throws org.fettlebench.tables.TableFormatException with every fault of the table
   */
  static WorkTable read(Table table) {
    return new WorkTable(RowFaults.read(table, WorkTable::named));
  }

  private static Named named(Table.Row row) {
    WorkMaterial material =
        new WorkMaterial(row.requiredText("id"), row.requiredText("name"), row.source());
    List<String> keys = new ArrayList<>();
    Stream.concat(
            Stream.of(material.id(), material.name()),
            Arrays.stream(row.text("aliases").orElse("").split(";")))
        .map(WorkTable::key)
        .filter(key -> !key.isEmpty())
        .distinct()
        .forEach(keys::add);
    return new Named(material, List.copyOf(keys), row.text("taken_as"));
  }

  /** Brings the ways of writing one name to one: {@code CZ 121} and {@code cz121}. */
  static String key(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[\\s_.-]+", "");
  }
}
