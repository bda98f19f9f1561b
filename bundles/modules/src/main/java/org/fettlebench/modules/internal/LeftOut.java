package org.fettlebench.modules.internal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Remembers which modules are left out, in a file of the data directory: the framework's own memory
 * goes with its cache.
 */
final class LeftOut {
  static final String FILE = "modules-left-out.txt";

  private final Path file;
  private final Set<String> names = new TreeSet<>();

  /**
   * Reads what was remembered.
   *
   * @throws UncheckedIOException if the file is there and cannot be read
   */
  LeftOut(Path dataDirectory) {
    file = dataDirectory.resolve(FILE);
    if (Files.exists(file)) {
      try {
        Files.readAllLines(file).stream()
            .map(String::strip)
            .filter(name -> !name.isEmpty())
            .forEach(names::add);
      } catch (IOException unreadable) {
        throw new UncheckedIOException(file + " cannot be read", unreadable);
      }
    }
  }

  synchronized boolean contains(String symbolicName) {
    return names.contains(symbolicName);
  }

  /**
   * Remembers a module as left out or not.
   *
   * @throws UncheckedIOException if it cannot be written; then nothing is changed
   */
  synchronized void set(String symbolicName, boolean leftOut) {
    Set<String> changed = new TreeSet<>(names);
    boolean different = leftOut ? changed.add(symbolicName) : changed.remove(symbolicName);
    if (different) {
      write(List.copyOf(changed));
      names.clear();
      names.addAll(changed);
    }
  }

  private void write(List<String> lines) {
    Path partial = file.resolveSibling(FILE + ".part");
    try {
      Files.createDirectories(file.getParent());
      Files.write(partial, lines);
      Files.move(partial, file, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException unwritable) {
      throw new UncheckedIOException(file + " cannot be written", unwritable);
    }
  }
}
