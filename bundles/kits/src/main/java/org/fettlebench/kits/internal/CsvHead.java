package org.fettlebench.kits.internal;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fettlebench.kits.internal.CsvText.Cell;
import org.fettlebench.kits.internal.CsvText.Row;

/**
 * The line of column names of a list.
 *
 * @param what the list is, such as {@code a stock list}
 * @param columns all that it may have
 * @param needed those it must have
 */
record CsvHead(String what, List<String> columns, List<String> needed) {
  /** Adds what is wrong with a line of column names; returns whether they can be used at all. */
  boolean check(Row head, FaultList faults) {
    List<String> names = head.cells().stream().map(Cell::text).toList();
    if (names.stream().noneMatch(columns::contains)) {
      faults.add(
          new FaultList.At(head.line(), 1),
          String.join(",", names),
          "is no line of column names with commas between them",
          beginning());
      return false;
    }
    for (Cell cell : head.cells()) {
      if (!columns.contains(cell.text())) {
        faults.add(
            cell.at(),
            cell.text(),
            "is no column of " + what,
            Nearest.to(cell.text(), columns)
                .map(near -> "Did you mean " + near + "?")
                .orElse("Known are " + String.join(", ", columns)));
      } else if (names.indexOf(cell.text()) != names.lastIndexOf(cell.text())
          && head.cells().indexOf(cell) != names.indexOf(cell.text())) {
        faults.add(cell.at(), cell.text(), "is a column already", "Leave one of the two out");
      }
    }
    for (String column : needed) {
      if (!names.contains(column)) {
        faults.addMissing(
            new FaultList.At(head.line(), 1), "the column " + column + " is missing", beginning());
      }
    }
    return names.containsAll(needed);
  }

  private String beginning() {
    return "Begin the list with the line " + String.join(",", columns);
  }

  /** Returns the cells of a row by their columns; none, and a fault, when it has too many. */
  static Map<String, Cell> cells(Row head, Row row, FaultList faults) {
    Map<String, Cell> cells = new HashMap<>();
    if (row.cells().size() > head.cells().size()) {
      Cell extra = row.cells().get(head.cells().size());
      faults.add(
          extra.at(),
          extra.text(),
          "stands beyond the last column",
          "Put cells with a comma in quotes");
      return cells;
    }
    for (int i = 0; i < row.cells().size(); i++) {
      cells.put(head.cells().get(i).text(), row.cells().get(i));
    }
    return cells;
  }

  /** A spreadsheet leaves rows of nothing but commas behind the last one. */
  static boolean blank(Row row) {
    return row.cells().stream().allMatch(cell -> cell.text().isBlank());
  }
}
