package org.fettlebench.tables;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the table format that the description of this package lays down. */
public final class TableFile {
  private static final Pattern HEADER = Pattern.compile("#\\s*([A-Za-z][\\w-]*)\\s*:\\s*(.*)");
  private static final List<String> NEEDED = List.of("kind", "id", "title", "source", "standing");

  private final Map<String, String> header = new LinkedHashMap<>();
  private final List<String> faults = new ArrayList<>();
  private final List<Table.Row> rows = new ArrayList<>();
  private Optional<Source> source = Optional.empty();
  private Optional<TableRows> columns = Optional.empty();

  private TableFile() {}

  /**
   * Reads a table.
   *
   * @param name of the file, for messages
   * @param module symbolic name of the bundle that carries it
   * @param text the whole file as text (files are UTF-8); not closed here
   * @throws TableFormatException with every fault of the file, each with its line
   * @throws IOException if the text cannot be read
   */
  public static Table read(String name, String module, Reader text) throws IOException {
    return new TableFile().readAll(name, module, text);
  }

  private Table readAll(String name, String module, Reader text) throws IOException {
    BufferedReader lines = new BufferedReader(text);
    int number = 0;
    for (String line = lines.readLine(); line != null; line = lines.readLine()) {
      number++;
      // Editors on some systems put this invisible mark first.
      take(number, number == 1 && line.startsWith("\ufeff") ? line.substring(1) : line);
    }
    if (columns.isEmpty()) {
      checkHeader();
      faults.add("there is no line of column names under the header");
    } else if (rows.isEmpty() && faults.isEmpty()) {
      faults.add("there are no rows under the column names");
    }
    if (!faults.isEmpty()) {
      throw new TableFormatException(name, faults);
    }
    return new Table(
        header.remove("kind"),
        header.remove("id"),
        header.remove("title"),
        source.orElseThrow(),
        withoutSource(),
        rows,
        module);
  }

  private Map<String, String> withoutSource() {
    header.keySet().removeAll(NEEDED);
    return header;
  }

  private void take(int number, String line) {
    if (line.isBlank()) {
      return;
    }
    if (columns.isPresent()) {
      columns.get().row(number, line).ifPresent(rows::add);
    } else if (line.startsWith("##")) {
      return;
    } else if (line.startsWith("#")) {
      headerLine(number, line.strip());
    } else {
      checkHeader();
      columns = Optional.of(new TableRows(number, line, source, faults));
    }
  }

  private void headerLine(int number, String line) {
    Matcher parts = HEADER.matcher(line);
    if (!parts.matches()) {
      faults.add(
          "line " + number + ": '" + line + "' must be '# key: value', or '## ...' for a remark");
    } else if (parts.group(2).isBlank()) {
      faults.add("line " + number + ": '" + parts.group(1) + "' has no value: give it one");
      header.putIfAbsent(parts.group(1), "");
    } else if (header.putIfAbsent(parts.group(1), parts.group(2).strip()) != null) {
      faults.add("line " + number + ": '" + parts.group(1) + "' is given twice: leave one out");
    }
  }

  private void checkHeader() {
    for (String key : NEEDED) {
      if (!header.containsKey(key)) {
        faults.add("the header has no '" + key + "': add a line '# " + key + ": ...'");
      }
    }
    String words = header.getOrDefault("standing", "");
    Optional<Standing> standing = Standing.ofWords(words);
    if (!words.isEmpty() && standing.isEmpty()) {
      faults.add("'standing: " + words + "' must be one of: " + Standing.allWords());
    }
    String citation = header.getOrDefault("source", "");
    if (!citation.isEmpty()) {
      source = standing.map(known -> new Source(citation, known));
    }
  }
}
