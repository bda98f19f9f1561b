package org.fettlebench.command.internal;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Text in aligned columns. Columns of figures are set to the right, words to the left. */
public final class Columns {
  private static final String GAP = "  ";

  private final List<List<String>> rows = new ArrayList<>();
  private final Set<Integer> right = new HashSet<>();
  private String indent = "";

  /** Sets all rows in by some spaces. */
  public Columns indent(int spaces) {
    indent = " ".repeat(spaces);
    return this;
  }

  /** Sets columns, counted from 0, to the right. */
  public Columns right(int... columns) {
    for (int column : columns) {
      right.add(column);
    }
    return this;
  }

  /** Adds a row. */
  public Columns row(Object... cells) {
    rows.add(List.of(cells).stream().map(String::valueOf).toList());
    return this;
  }

  /** Returns the rows without a last line end; nothing stands behind the last word of a row. */
  public String text() {
    int columns = rows.stream().mapToInt(List::size).max().orElse(0);
    int[] widths = new int[columns];
    for (List<String> row : rows) {
      for (int i = 0; i < row.size(); i++) {
        widths[i] = Math.max(widths[i], length(row.get(i)));
      }
    }
    return String.join("\n", rows.stream().map(row -> line(row, widths)).toList());
  }

  private String line(List<String> row, int[] widths) {
    StringBuilder line = new StringBuilder(indent);
    for (int i = 0; i < row.size(); i++) {
      String pad = " ".repeat(widths[i] - length(row.get(i)));
      line.append(i == 0 ? "" : GAP);
      line.append(right.contains(i) ? pad + row.get(i) : row.get(i) + pad);
    }
    return line.toString().stripTrailing();
  }

  private static int length(String cell) {
    return cell.codePointCount(0, cell.length());
  }
}
