package org.fettlebench.tooling.internal;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Table;
import org.fettlebench.tooling.TapLead;

/** Allowances for blind holes of one table of kind blind-holes. */
final class BlindAllowances {
  static final String KIND = "blind-holes";
  static final String CHIP_ROOM = "chip room";
  static final String THIN_FLOOR = "thin floor";

  /** What each allowance is counted in. */
  private static final Map<String, String> UNITS =
      Map.of(
          leadName(TapLead.TAPER),
          "pitches",
          leadName(TapLead.SECOND),
          "pitches",
          leadName(TapLead.BOTTOMING),
          "pitches",
          CHIP_ROOM,
          "pitches",
          THIN_FLOOR,
          "drill diameters");

  /** How many pitches or diameters, and where that comes from. */
  record Allowance(String name, double value, Source source) {}

  private final Map<String, Allowance> byName = new HashMap<>();

  private BlindAllowances(List<Allowance> rows) {
    rows.forEach(row -> byName.put(row.name(), row));
  }

  /**
   * Reads a table.
   *
   * @throws org.fettlebench.tables.TableFormatException with every fault of the table
   */
  static BlindAllowances read(Table table) {
    return new BlindAllowances(RowFaults.read(table, BlindAllowances::allowance));
  }

  private static Allowance allowance(Table.Row row) {
    String name = row.requiredText("allowance");
    String unit = UNITS.get(name);
    if (unit == null) {
      throw RowFaults.fault(
          row, "allowance '" + name + "' must be one of " + String.join(", ", UNITS.keySet()));
    }
    if (!unit.equals(row.requiredText("unit"))) {
      throw RowFaults.fault(row, "unit of " + name + " must be '" + unit + "'");
    }
    return new Allowance(name, RowFaults.within(row, "value", -1e-9, 100), row.source());
  }

  static String leadName(TapLead lead) {
    return lead.name().toLowerCase(Locale.ROOT) + " lead";
  }

  /** Returns an allowance from the first table that has it. */
  static Allowance of(String name, List<BlindAllowances> tables) {
    return tables.stream()
        .flatMap(table -> Optional.ofNullable(table.byName.get(name)).stream())
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalStateException(
                    "no table of kind " + KIND + " gives the allowance '" + name + "'"));
  }
}
