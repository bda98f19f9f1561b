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
    try (CSVParser parser = CSVParser.parse(new StringReader(text), FORMAT)) {
      for (CSVRecord record : parser) {
        rows.add(row(text, record));
      }
    } catch (UncheckedIOException | IOException notCsv) {
      int line = rows.isEmpty() ? 1 : rows.get(rows.size() - 1).line() + 1;
      faults.add(
          new At(line, 1),
          "",
          "cannot be taken apart into cells: a quote is open or stands inside a cell",
          "Put the whole cell in quotes and double the quotes inside it: \"3/8\"\" hexagon\"");
    }
    return rows;
  }

  private static Row row(String text, CSVRecord record) {
    int at = (int) record.getCharacterPosition();
    int line = 1 + (int) text.substring(0, at).chars().filter(sign -> sign == '\n').count();
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
