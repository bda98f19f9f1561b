package org.fettlebench.testkit.published;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;

/**
 * A published table under {@code /expected} of a test's resources. Its first line names the
 * sources; the second heads the columns. Sizes such as {@code #10} are rows, not remarks.
 */
public final class PublishedTable {
  private final String file;
  private final List<String> columns;
  private final List<PublishedRow> rows;
  private final Set<String> apart = new TreeSet<>();

  private PublishedTable(String file, List<String> columns, List<PublishedRow> rows) {
    this.file = file;
    this.columns = columns;
    this.rows = rows;
  }

  /**
   * Reads a table.
   *
   * @param test beside whose class loader's root {@code expected/} lies
   * @param file its name there
   * @throws IllegalArgumentException if it is not there, or its first line names no source
   */
  public static PublishedTable read(Class<?> test, String file) {
    try (InputStream bytes = test.getResourceAsStream("/expected/" + file)) {
      if (bytes == null) {
        throw new IllegalArgumentException("no table expected/" + file);
      }
      return read(file, new BufferedReader(new InputStreamReader(bytes, StandardCharsets.UTF_8)));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(file, unreadable);
    }
  }

  private static PublishedTable read(String file, BufferedReader text) throws IOException {
    String sources = text.readLine();
    if (sources == null || !sources.startsWith("#")) {
      throw new IllegalArgumentException(file + ": the first line must name the sources, behind #");
    }
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    CSVParser parsed = CSVParser.parse(text, format);
    List<PublishedRow> rows =
        parsed.getRecords().stream().map(row -> new PublishedRow(row.toMap())).toList();
    return new PublishedTable(file, parsed.getHeaderNames(), rows);
  }

  /** Returns the rows, as printed; nobody's account is kept for them. */
  public List<PublishedRow> rows() {
    return rows;
  }

  /**
   * Sets columns apart that are not figures of this test.
   *
   * @param why they are words, or where else they are held
   * @throws IllegalArgumentException if there is no such column
   */
  public PublishedTable apart(String why, String... names) {
    assertFalse(why.isBlank(), "a reason for " + Arrays.toString(names));
    for (String name : names) {
      if (!columns.contains(name)) {
        throw new IllegalArgumentException(file + " has no column " + name);
      }
      apart.add(name);
    }
    return this;
  }

  /**
   * Gives each row to a test and collects what fails, then fails itself for every printed cell that
   * nobody looked at.
   */
  public void holdEach(Consumer<PublishedRow> test) {
    List<String> faults = new ArrayList<>();
    int held = 0;
    for (PublishedRow row : rows) {
      try {
        test.accept(row);
      } catch (RuntimeException broken) {
        faults.add(row + ": " + broken);
      }
      faults.addAll(row.faults());
      row.unread(columns).stream()
          .filter(column -> !apart.contains(column))
          .forEach(column -> faults.add("nobody looked at " + row.name(column)));
      held += row.heldCells();
    }
    if (!faults.isEmpty()) {
      fail(file + ": " + faults.size() + " faults\n" + String.join("\n", faults));
    }
    if (held == 0) {
      fail(file + ": no figure was held");
    }
  }
}
