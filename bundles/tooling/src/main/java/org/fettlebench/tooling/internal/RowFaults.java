package org.fettlebench.tooling.internal;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFormatException;

/** Reads the rows of a table, so that all faults of it are named at once. */
public final class RowFaults {
  private RowFaults() {}

  /**
   * Reads every row.
   *
   * @throws TableFormatException with the faults of all rows
   */
  public static <R> List<R> read(Table table, Function<Table.Row, R> reader) {
    List<R> read = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    for (Table.Row row : table.rows()) {
      try {
        read.add(reader.apply(row));
      } catch (TableFormatException refused) {
        faults.add(refused.getMessage());
      }
    }
    if (!faults.isEmpty()) {
      throw new TableFormatException(table.kind() + " " + table.id(), faults);
    }
    return List.copyOf(read);
  }

  /** Returns a length that stands in the column of millimetres or that of inches. */
  public static Optional<Length> either(Table.Row row, String name) {
    return row.length(name + "_mm").or(() -> row.length(name + "_in"));
  }

  /** Returns a length above nothing that must stand in one of the two columns. */
  public static Length needed(Table.Row row, String name) {
    Length length =
        either(row, name).orElseThrow(() -> fault(row, name + "_mm or " + name + "_in is missing"));
    if (!length.isPositive()) {
      throw fault(row, name + " " + length + " must be above 0 mm");
    }
    return length;
  }

  /** Returns a number within a range. */
  public static double within(Table.Row row, String column, double above, double most) {
    BigDecimal number = row.requiredNumber(column);
    double value = number.doubleValue();
    if (!(value > above && value <= most)) {
      throw fault(
          row, "column %s: %s is outside above %s to %s".formatted(column, number, above, most));
    }
    return value;
  }

  /** Returns a fault that names the line of a row. */
  public static TableFormatException fault(Table.Row row, String what) {
    return new TableFormatException("line " + row.line(), List.of(what));
  }
}
