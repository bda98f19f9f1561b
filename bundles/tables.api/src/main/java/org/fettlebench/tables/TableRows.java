package org.fettlebench.tables;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads the rows under one line of column names. Each line is one row, so that a quote left open
 * spoils its own line only and every fault of a file is found in one go.
 */
final class TableRows {
  private static final CSVFormat ONE_LINE =
      CSVFormat.RFC4180.builder().setTrim(true).setIgnoreSurroundingSpaces(true).get();

  private final List<String> faults;
  private final Optional<Source> tableSource;
  private final List<String> columns;

  TableRows(int number, String line, Optional<Source> tableSource, List<String> faults) {
    this.faults = faults;
    this.tableSource = tableSource;
    this.columns = split(number, line).orElse(List.of());
    Set<String> seen = new HashSet<>();
    for (String column : columns) {
      if (column.isEmpty()) {
        faults.add("line " + number + ": a column has no name: give it one");
      } else if (!seen.add(column)) {
        faults.add("line " + number + ": column '" + column + "' is there twice: rename one");
      }
    }
  }

  /** Returns the row of a line; empty if it has a fault, which is kept. */
  Optional<Table.Row> row(int number, String line) {
    Optional<List<String>> values = split(number, line);
    if (values.isEmpty() || columns.isEmpty()) {
      return Optional.empty();
    }
    int count = values.get().size();
    if (count != columns.size()) {
      faults.add(
          "line %d: %d cells stand under %d columns: add or take out commas, or quote a cell with one"
              .formatted(number, count, columns.size()));
      return Optional.empty();
    }
    Map<String, String> cells = new LinkedHashMap<>();
    for (int i = 0; i < count; i++) {
      if (!values.get().get(i).isEmpty()) {
        cells.put(columns.get(i), values.get().get(i));
      }
    }
    return source(number, cells).map(source -> new Table.Row(number, source, cells));
  }

  private Optional<Source> source(int number, Map<String, String> cells) {
    String words = cells.getOrDefault("standing", "");
    Optional<Standing> own = Standing.ofWords(words);
    if (!words.isEmpty() && own.isEmpty()) {
      faults.add(
          "line %d: column standing: '%s' must be one of: %s"
              .formatted(number, words, Standing.allWords()));
    }
    // Without a source of the table the file is refused anyway; its rows need not be kept.
    return tableSource.map(
        table ->
            new Source(
                cells.getOrDefault("source", table.citation()), own.orElse(table.standing())));
  }

  private Optional<List<String>> split(int number, String line) {
    if (line.indexOf('"') < 0) {
      // Nearly every line; a parser for each would be a good part of the time a start takes.
      return Optional.of(unquoted(line));
    }
    try (CSVParser parser = CSVParser.parse(line, ONE_LINE)) {
      List<CSVRecord> records = parser.getRecords();
      return records.stream().findFirst().map(CSVRecord::toList);
    } catch (IOException | RuntimeException refused) {
      faults.add("line " + number + ": a quote is not closed, or stands inside a cell: mend it");
      return Optional.empty();
    }
  }

  private static List<String> unquoted(String line) {
    List<String> cells = new ArrayList<>();
    int from = 0;
    for (int comma = line.indexOf(','); comma >= 0; comma = line.indexOf(',', from)) {
      cells.add(line.substring(from, comma).strip());
      from = comma + 1;
    }
    cells.add(line.substring(from).strip());
    return cells;
  }
}
