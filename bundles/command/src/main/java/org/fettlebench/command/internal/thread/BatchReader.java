package org.fettlebench.command.internal.thread;

import java.io.BufferedReader;
import java.io.Closeable;
import java.io.FilterReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.fettlebench.command.CommandException;

/**
 * Reads rows one after the other and holds no more than one: comma- or semicolon-separated values
 * in UTF-8 with a header.
 */
final class BatchReader implements Closeable {
  /** Signs of one row. A quote mark that is never closed must not fill the memory. */
  private static final int LONGEST = 100_000;

  private final CSVParser parser;
  private final Iterator<CSVRecord> records;
  private final Guard guard;
  private final Map<String, Integer> places = new HashMap<>();
  private final List<String> header;
  private long line;

  /**
   * Reads the header.
   *
   * @throws CommandException if there is none, or a name is there twice or missing
   */
  BatchReader(InputStream in) {
    try {
      guard =
          new Guard(
              new BufferedReader(
                  new InputStreamReader(
                      in,
                      StandardCharsets.UTF_8
                          .newDecoder()
                          .onMalformedInput(CodingErrorAction.REPORT)
                          .onUnmappableCharacter(CodingErrorAction.REPORT))));
      char delimiter = guard.start();
      parser =
          CSVParser.builder()
              .setReader(guard)
              .setFormat(CSVFormat.RFC4180.builder().setDelimiter(delimiter).get())
              .get();
      records = parser.iterator();
      header = header();
    } catch (IOException unreadable) {
      throw refused(unreadable);
    }
  }

  private List<String> header() {
    List<String> names =
        next()
            .orElseThrow(
                () ->
                    new CommandException(
                        "the list is empty: its first line names"
                            + " its columns, such as designation,class"))
            .stream()
            .map(name -> name.strip().toLowerCase(Locale.ROOT).replace(' ', '_'))
            .toList();
    for (int i = 0; i < names.size(); i++) {
      if (names.get(i).isEmpty() || places.put(names.get(i), i) != null) {
        throw new CommandException(
            "line 1: column %d %s"
                .formatted(
                    i + 1,
                    names.get(i).isEmpty()
                        ? "has no name"
                        : "\"" + names.get(i) + "\" is there twice"));
      }
    }
    return names;
  }

  /** Returns the columns' names in small letters, in order. */
  List<String> columns() {
    return header;
  }

  /** Returns where each column stands. */
  Map<String, Integer> places() {
    return places;
  }

  /** Returns the number of the line on which the row of {@link #next} begins, from 1. */
  long line() {
    return line;
  }

  /**
   * Returns the next row that is not wholly empty.
   *
   * @throws CommandException if the rest cannot be read
   */
  Optional<List<String>> next() {
    try {
      while (true) {
        line = parser.getCurrentLineNumber() + 1;
        guard.next();
        if (!records.hasNext()) {
          return Optional.empty();
        }
        List<String> cells = records.next().toList();
        if (cells.size() > 1 || !cells.get(0).isBlank()) {
          return Optional.of(cells);
        }
      }
    } catch (UncheckedIOException unreadable) {
      throw refused(unreadable.getCause());
    } catch (IllegalStateException unreadable) {
      // Thus the parser wraps a quote mark in the wrong place.
      throw new CommandException(place() + unreadable.getMessage(), unreadable);
    }
  }

  private CommandException refused(IOException unreadable) {
    return new CommandException(
        place()
            + (unreadable instanceof CharacterCodingException
                ? "near here the list is not UTF-8"
                : unreadable.getMessage()),
        unreadable);
  }

  private String place() {
    return "line " + Math.max(1, line) + ": ";
  }

  @Override
  public void close() throws IOException {
    parser.close();
  }

  /** Stops at a row that is longer than any row can be. */
  private static final class Guard extends FilterReader {
    /** The parser reads ahead by a buffer of some thousand signs. */
    private long left = LONGEST;

    Guard(Reader in) {
      super(in);
    }

    /** Skips a byte order mark; returns what parts the cells of the first line. */
    char start() throws IOException {
      in.mark(LONGEST);
      if (in.read() != '\uFEFF') {
        in.reset();
      }
      in.mark(LONGEST);
      char delimiter = ',';
      for (int sign = in.read(), count = 1; sign >= 0 && sign != '\n' && count < LONGEST; count++) {
        if (sign == ',' || sign == ';') {
          delimiter = (char) sign;
          break;
        }
        sign = in.read();
      }
      in.reset();
      return delimiter;
    }

    void next() {
      left = LONGEST;
    }

    @Override
    public int read() throws IOException {
      int sign = in.read();
      count(sign >= 0 ? 1 : 0);
      return sign;
    }

    @Override
    public int read(char[] into, int from, int most) throws IOException {
      int count = in.read(into, from, most);
      count(count);
      return count;
    }

    private void count(int read) throws IOException {
      left -= read;
      if (left < 0) {
        throw new IOException(
            "the row is longer than " + LONGEST + " signs; is a quote mark left open?");
      }
    }
  }
}
