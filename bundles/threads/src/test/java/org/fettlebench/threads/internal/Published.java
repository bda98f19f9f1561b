package org.fettlebench.threads.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Rows of a published table under {@code expected/}. The first line of a file names its sources;
 * sizes such as {@code #10} are rows, which is why the files are not read as commented CSV.
 */
public record Published(Map<String, String> cells) {
  public static List<Published> rows(String file) throws IOException {
    try (BufferedReader text =
        new BufferedReader(
            new InputStreamReader(
                Published.class.getResourceAsStream("/expected/" + file),
                StandardCharsets.UTF_8))) {
      text.readLine();
      CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
      return CSVParser.parse(text, format).getRecords().stream()
          .map(CSVRecord::toMap)
          .map(Published::new)
          .toList();
    }
  }

  public String cell(String column) {
    String cell = cells.get(column);
    if (cell == null) {
      throw new IllegalArgumentException("no column " + column);
    }
    return cell;
  }

  public boolean has(String column) {
    return !cell(column).isEmpty();
  }

  /** Tells whether the note calls a cell wrong, by the words it uses. */
  public boolean wrong(String words) {
    return cell("check_note").contains(words);
  }

  /** Compares to half a unit of the printed last digit, where the cell is printed. */
  public void check(String column, double calculated) {
    check(column, calculated, 0.5);
  }

  /** Compares to a number of units of the printed last digit, where the cell is printed. */
  public void check(String column, double calculated, double units) {
    if (has(column)) {
      String printed = cell(column);
      int point = printed.indexOf('.');
      int decimals = point < 0 ? 0 : printed.length() - point - 1;
      checkWithin(column, calculated, units * Math.pow(10, -decimals));
    }
  }

  public void checkWithin(String column, double calculated, double tolerance) {
    if (has(column)) {
      assertEquals(
          Double.parseDouble(cell(column)), calculated, tolerance + 1e-9, column + " of " + cells);
    }
  }

  /** Returns the printed number. */
  public double number(String column) {
    return Double.parseDouble(cell(column));
  }
}
