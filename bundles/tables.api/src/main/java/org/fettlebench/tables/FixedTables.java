package org.fettlebench.tables;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Tables that never change, without a framework: for tests, and for programs that use the
 * mathematics alone.
 */
public final class FixedTables implements Tables {
  private static final String FOLDER = "FETTLEBENCH/tables";

  /** How the one package of a providing bundle is named after the bundle's own name. */
  private static final String HIDDEN = ".internal";

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
   * @param anchor whose class loader finds them; its package's name, less a last {@code .internal},
   *     becomes the tables' module
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

  /**
   * Reads every table that the jars or class folders of some classes carry, as the registry would
   * when their bundles start.
   *
   * @param anchors one class of each jar; the name of its package, less a last {@code .internal},
   *     becomes the tables' module, as it is the bundle's name
   * @throws TableFormatException if one is faulty
   * @throws UncheckedIOException if a jar carries no tables or cannot be read
   */
  public static FixedTables carriedBy(Class<?>... anchors) {
    List<Table> tables = new ArrayList<>();
    for (Class<?> anchor : anchors) {
      tables.addAll(fromResources(anchor, names(anchor)).tables);
    }
    return new FixedTables(tables);
  }

  private static String[] names(Class<?> anchor) {
    try {
      Path home = Path.of(anchor.getProtectionDomain().getCodeSource().getLocation().toURI());
      if (Files.isDirectory(home)) {
        return names(home.resolve(FOLDER));
      }
      try (FileSystem jar = FileSystems.newFileSystem(home)) {
        return names(jar.getPath(FOLDER));
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException("the tables beside " + anchor.getName(), unreadable);
    } catch (URISyntaxException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private static String[] names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> "/" + FOLDER + "/" + file.getFileName())
          .filter(name -> name.endsWith(".csv"))
          .sorted()
          .toArray(String[]::new);
    }
  }

  private static Table read(Class<?> anchor, String name) {
    try (InputStream bytes = anchor.getResourceAsStream(name)) {
      if (bytes == null) {
        throw new IllegalArgumentException("no table " + name + " beside " + anchor.getName());
      }
      return TableFile.read(
          name, module(anchor), new InputStreamReader(bytes, StandardCharsets.UTF_8));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(name + " cannot be read", unreadable);
    }
  }

  private static String module(Class<?> anchor) {
    String name = anchor.getPackageName();
    return name.endsWith(HIDDEN) ? name.substring(0, name.length() - HIDDEN.length()) : name;
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
