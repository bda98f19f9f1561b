package org.fettlebench.tooling.internal.risk;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFormatException;
import org.fettlebench.tooling.internal.RowFaults;

/** What a tap's core is and bears, by a table of kind tap-cores. */
record CoreTable(Map<String, Span> byName) {
  static final String KIND = "tap-cores";
  static final String STRENGTH = "strength in MPa";
  static final String SMALL = "small tap to mm";
  static final String SMALL_FLUTES = "flutes of a small tap";
  static final String LARGE_FLUTES = "flutes of a larger tap";
  static final String FREE_DEPTH = "depth in diameters without extra torque";
  static final String EXTRA = "extra torque a diameter beyond, as a part";
  private static final double LARGEST = 10_000;

  /** A named figure of a row. */
  private record Named(String name, Span span) {}

  /**
   * Reads a table.
   *
   * @throws TableFormatException with every fault of the table
   */
  static CoreTable read(Table table) {
    return new CoreTable(
        RowFaults.read(table, CoreTable::named).stream()
            .collect(Collectors.toMap(Named::name, Named::span, (first, second) -> first)));
  }

  private static Named named(Table.Row row) {
    return new Named(row.requiredText("what"), Span.read(row, "least", "most", LARGEST));
  }

  static String coreOf(int flutes) {
    return "core of " + flutes + " flutes";
  }

  /** Returns a figure from the first table that has it. */
  static Span of(String name, List<CoreTable> tables) {
    return tables.stream()
        .filter(table -> table.byName.containsKey(name))
        .findFirst()
        .map(table -> table.byName.get(name))
        .orElseThrow(
            () -> new IllegalStateException("no table of kind " + KIND + " gives '" + name + "'"));
  }
}
