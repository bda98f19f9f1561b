package org.fettlebench.kits.internal;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.fettlebench.kits.internal.FaultList.At;

/** A CSV text taken apart, each cell with its place in the file. */
final class CsvText {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180
          .builder()
          .setTrim(true)
          .setIgnoreEmptyLines(true)
          .setCommentMarker('#')
          .get();

  /**
   * A cell.
   *
   * @param text without spaces around it
   * @param at where it begins
   */
  record Cell(String text, At at) {}

  /**
   * A row.
   *
   * @param line in the file
   * @param cells in order
   */
  record Row(int line, List<Cell> cells) {}

  private CsvText() {}

  /** Takes a text apart; adds a fault and returns what came before where a quote is not closed. */
  static List<Row> rows(String text, FaultList faults) {
    List<Row> rows = new ArrayList<>();
    int counted = 0;
    int line = 1;
    try (CSVParser parser = CSVParser.parse(new StringReader(text), FORMAT)) {
      for (CSVRecord record : parser) {
        int at = (int) record.getCharacterPosition();
        // Counted on from the row before: a long list is gone through once.
        line += lineEnds(text, counted, at);
        counted = at;
        rows.add(row(text, record, line));
      }
    } catch (UncheckedIOException | IOException notCsv) {
      faults.add(
          new At(rows.isEmpty() ? 1 : rows.get(rows.size() - 1).line() + 1, 1),
          "",
          "cannot be taken apart into cells: a quote is open or stands inside a cell",
          "Put the whole cell in quotes and double the quotes inside it: \"3/8\"\" hexagon\"");
    }
    return rows;
  }

  private static int lineEnds(String text, int from, int to) {
    return (int) text.substring(from, to).chars().filter(sign -> sign == '\n').count();
  }

  private static Row row(String text, CSVRecord record, int line) {
    int at = (int) record.getCharacterPosition();
    int lineStart = text.lastIndexOf('\n', at - 1) + 1;
    List<Cell> cells = new ArrayList<>();
    int cell = at;
    for (String value : record) {
      cells.add(new Cell(value, new At(line, cell - lineStart + 1)));
      cell = behind(text, cell);
    }
    return new Row(line, cells);
  }

  /** Returns where the next cell begins. */
  private static int behind(String text, int from) {
    boolean quoted = false;
    int at = from;
    while (at < text.length() && (quoted || text.charAt(at) != ',')) {
      quoted ^= text.charAt(at) == '"';
      at++;
    }
    return Math.min(at + 1, text.length());
  }
}
