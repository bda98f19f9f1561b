package org.fettlebench.command.internal;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFile;
import org.fettlebench.tables.Tables;

/** The tables that provider bundles carry, read as a framework would read them. */
public final class ShippedTables {
  private ShippedTables() {}

  /** Returns all tables of the bundles (jars or class folders) that hold the given classes. */
  public static Tables of(Class<?>... carriers) {
    List<Table> tables = new ArrayList<>();
    for (Class<?> carrier : carriers) {
      tables.addAll(tablesOf(carrier));
    }
    return FixedTables.of(tables);
  }

  private static List<Table> tablesOf(Class<?> carrier) {
    try {
      Path place = Path.of(carrier.getProtectionDomain().getCodeSource().getLocation().toURI());
      if (Files.isDirectory(place)) {
        return read(place.resolve("FETTLEBENCH/tables"));
      }
      try (FileSystem jar =
          FileSystems.newFileSystem(URI.create("jar:" + place.toUri()), Map.of())) {
        return read(jar.getPath("FETTLEBENCH/tables"));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<Table> read(Path folder) throws IOException {
    List<Table> tables = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.sorted().toList()) {
        try (Reader text = Files.newBufferedReader(file)) {
          tables.add(TableFile.read(file.getFileName().toString(), "org.fettlebench", text));
        }
      }
    }
    return tables;
  }
}
