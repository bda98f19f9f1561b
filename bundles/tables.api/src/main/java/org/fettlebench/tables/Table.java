package org.fettlebench.tables;

import java.util.List;
import java.util.Map;

/**
 * A table of figures as it was read, before anyone gave it a meaning.
 *
 * @param kind what the rows are, such as {@code thread-series}; the consumers of a kind document
 *     its header keys and columns
 * @param id unique among tables of its kind, such as {@code BA}
 * @param title for people
 * @param source of all rows that name none of their own
 * @param header further {@code key: value} lines of the file's header
 * @param rows in file order
 * @param module symbolic name of the bundle that carries it
 */
public record Table(
    String kind,
    String id,
    String title,
    Source source,
    Map<String, String> header,
    List<Row> rows,
    String module) {

  /** Copies what could change. */
  public Table {
    header = Map.copyOf(header);
    rows = List.copyOf(rows);
  }

  /**
   * One row.
   *
   * @param line line number in the file, from 1, for messages
   * @param source the row's own, else the table's
   * @param cells text by column name; a blank cell is absent
   */
  public record Row(int line, Source source, Map<String, String> cells) {
    /** Copies what could change. */
    public Row {
      cells = Map.copyOf(cells);
    }
  }
}
