package org.fettlebench.tables;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.measure.Length;

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
   * One row. What cannot be read is refused with the line, the column, the cell and a remedy.
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

    /** Returns the text of a cell, without spaces around it; empty if the cell is blank. */
    public Optional<String> text(String column) {
      return Optional.ofNullable(cells.get(column));
    }

    /**
     * Returns the text of a cell that must be there.
     *
     * @throws TableFormatException if it is blank or the table has no such column
     */
    public String requiredText(String column) {
      return text(column).orElseThrow(() -> Cell.missing(line, column));
    }

    /**
     * Returns a length, in the unit that the column's name ends in: {@code pitch_mm}, {@code
     * major_in}. Inch fractions such as {@code 1 3/8} may stand in a column of inches.
     *
     * @throws TableFormatException if the cell is no length in that unit
     * @throws IllegalArgumentException if the column's name ends in neither {@code _mm} nor {@code
     *     _in}
     */
    public Optional<Length> length(String column) {
      return text(column).map(cell -> Cell.length(line, column, cell));
    }

    /**
     * Returns a length that must be there, read as {@link #length} does.
     *
     * @throws TableFormatException if it is blank or no length in the column's unit
     */
    public Length requiredLength(String column) {
      return length(column).orElseThrow(() -> Cell.missing(line, column));
    }

    /**
     * Returns a plain decimal number, such as {@code 0.5}.
     *
     * @throws TableFormatException if the cell is no number
     */
    public Optional<BigDecimal> number(String column) {
      return text(column).map(cell -> Cell.number(line, column, cell));
    }

    /**
     * Returns a plain decimal number that must be there.
     *
     * @throws TableFormatException if it is blank or no number
     */
    public BigDecimal requiredNumber(String column) {
      return number(column).orElseThrow(() -> Cell.missing(line, column));
    }
  }

  /**
   * Returns the value of a header line that must be there.
   *
   * @throws TableFormatException if there is none
   */
  public String requiredHeader(String key) {
    return Optional.ofNullable(header.get(key))
        .orElseThrow(
            () ->
                new TableFormatException(
                    kind + " " + id, List.of("the header has no line '# " + key + ": ...'")));
  }
}
