package org.fettlebench.club.store.internal;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Reads the migrations that this version of the suite brings. */
final class Migrations {
  private static final String FOLDER = "migrations/";

  private Migrations() {}

  /** Returns them from the first to the newest. */
  static List<Migration> ofThisVersion() {
    return read("migrations.list")
        .lines()
        .filter(file -> !file.isBlank())
        .map(file -> Migration.ofFile(file, read(file)))
        .toList();
  }

  private static String read(String file) {
    try (InputStream in = Migrations.class.getResourceAsStream(FOLDER + file)) {
      if (in == null) {
        throw new IllegalStateException("the migration " + file + " is missing from its bundle");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }
}
