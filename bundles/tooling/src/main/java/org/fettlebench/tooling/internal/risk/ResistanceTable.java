package org.fettlebench.tooling.internal.risk;

import java.util.List;
import java.util.Set;
import org.fettlebench.tables.Table;
import org.fettlebench.tooling.internal.RowFaults;

/** Cutting resistances of materials, by a table of kind tap-resistance. */
record ResistanceTable(List<Resistance> rows) {
  static final String KIND = "tap-resistance";
  static final Set<String> GROUPS = Set.of("steel", "iron", "brass");
  private static final double LARGEST_MPA = 20_000;

  /**
   * The resistance of a material.
   *
   * @param material its id
   * @param group by which the tap's coefficient is found
   * @param mpa newtons to the square millimetre
   * @param note which alloy the source means; may be empty
   */
  record Resistance(String material, String group, Span mpa, String note) {}

  /**
   * Reads a table.
   *
   * @throws org.fettlebench.tables.TableFormatException with every fault of the table
   */
  static ResistanceTable read(Table table) {
    return new ResistanceTable(RowFaults.read(table, ResistanceTable::resistance));
  }

  private static Resistance resistance(Table.Row row) {
    return new Resistance(
        row.requiredText("material"),
        group(row),
        Span.read(row, "kc_least_mpa", "kc_most_mpa", LARGEST_MPA),
        row.text("note").orElse(""));
  }

  static String group(Table.Row row) {
    String group = row.requiredText("group");
    if (!GROUPS.contains(group)) {
      throw RowFaults.fault(row, "group '" + group + "' must be steel, iron or brass");
    }
    return group;
  }
}
