package org.fettlebench.club.store.internal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;
import org.fettlebench.store.derby.internal.DerbyStoreEngine;

/** Gives each test a store of its own: a copy of an empty one, which is quicker than a new one. */
final class FreshDerby {
  private static final Path EMPTY = make();

  private FreshDerby() {}

  static DerbyStoreEngine open(Path directory) {
    if (!Files.exists(directory.resolve("store"))) {
      copy(EMPTY.resolve("store"), directory.resolve("store"));
    }
    return new DerbyStoreEngine(directory);
  }

  private static Path make() {
    Path data = Path.of("target", "empty-store");
    delete(data);
    try (DerbyStoreEngine engine = new DerbyStoreEngine(data);
        ClubDatabase database = new ClubDatabase(engine)) {
      new SqlStock(database).lines();
    }
    return data;
  }

  private static void copy(Path from, Path to) {
    try (Stream<Path> entries = Files.walk(from)) {
      for (Path entry : entries.toList()) {
        Files.copy(entry, to.resolve(from.relativize(entry).toString()));
      }
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  private static void delete(Path folder) {
    if (!Files.exists(folder)) {
      return;
    }
    try (Stream<Path> entries = Files.walk(folder)) {
      for (Path entry : entries.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(entry);
      }
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }
}
