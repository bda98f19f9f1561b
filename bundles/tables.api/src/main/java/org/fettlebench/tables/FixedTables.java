package org.fettlebench.tables;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Tables that never change, without a framework: for tests, and for programs that use the
 * mathematics alone.
 */
public final class FixedTables implements Tables {
  private final List<Table> tables;

  private FixedTables(List<Table> tables) {
    this.tables = List.copyOf(tables);
  }

  /** Returns the given tables, in the given order. */
  public static FixedTables of(List<Table> tables) {
    return new FixedTables(tables);
  }

  /**
   * Reads tables from resources beside a class.
   *
   * @param anchor whose class loader finds them; its package's name becomes the tables' module
   * @param names as {@link Class#getResourceAsStream} takes them, such as {@code
   *     /FETTLEBENCH/tables/ba.csv}
   * @throws TableFormatException if one is faulty
   * @throws IllegalArgumentException if one is not there
   */
  public static FixedTables fromResources(Class<?> anchor, String... names) {
    List<Table> tables = new ArrayList<>();
    for (String name : names) {
      tables.add(read(anchor, name));
    }
    return new FixedTables(tables);
  }

  private static Table read(Class<?> anchor, String name) {
    try (InputStream bytes = anchor.getResourceAsStream(name)) {
      if (bytes == null) {
        throw new IllegalArgumentException("no table " + name + " beside " + anchor.getName());
      }
      return TableFile.read(
          name, anchor.getPackageName(), new InputStreamReader(bytes, StandardCharsets.UTF_8));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(name + " cannot be read", unreadable);
    }
  }

  @Override
  public List<Table> ofKind(String kind) {
    return tables.stream().filter(table -> table.kind().equals(kind)).toList();
  }

  @Override
  public List<Table> all() {
    return tables;
  }

  @Override
  public long revision() {
    return 0;
  }
}
