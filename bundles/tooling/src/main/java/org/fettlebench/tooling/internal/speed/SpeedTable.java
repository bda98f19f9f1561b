package org.fettlebench.tooling.internal.speed;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFormatException;
import org.fettlebench.tooling.internal.RowFaults;
import org.fettlebench.tooling.speed.CuttingOperation;
import org.fettlebench.tooling.speed.SurfaceSpeed;

/** The speeds of one source for one operation, by a table of kind surface-speeds. */
record SpeedTable(CuttingOperation operation, List<Row> rows) {
  static final String KIND = "surface-speeds";
  private static final double FASTEST_FEET = 20_000;

  /** The speed for a material, by its id. */
  record Row(String material, SurfaceSpeed speed) {}

  /**
   * Reads a table.
   *
   * @throws TableFormatException with every fault of the table
   */
  static SpeedTable read(Table table) {
    String word = table.requiredHeader("operation");
    CuttingOperation operation =
        CuttingOperation.ofWord(word)
            .orElseThrow(
                () ->
                    new TableFormatException(
                        KIND + " " + table.id(),
                        List.of("'operation: " + word + "' must be one of " + words())));
    return new SpeedTable(operation, RowFaults.read(table, SpeedTable::row));
  }

  private static String words() {
    return Arrays.stream(CuttingOperation.values())
        .map(CuttingOperation::word)
        .collect(Collectors.joining(", "));
  }

  private static Row row(Table.Row row) {
    double least = RowFaults.within(row, "least_ft_per_min", 0, FASTEST_FEET);
    double most = RowFaults.within(row, "most_ft_per_min", 0, FASTEST_FEET);
    if (!(least <= most)) {
      throw RowFaults.fault(row, "least_ft_per_min " + least + " is above most_ft_per_min " + most);
    }
    String material = row.requiredText("material");
    String printed = row.text("as_printed").orElse(material);
    return new Row(material, new SurfaceSpeed(least, most, printed, row.source()));
  }
}
