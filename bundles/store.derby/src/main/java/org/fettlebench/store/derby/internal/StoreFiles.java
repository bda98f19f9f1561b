package org.fettlebench.store.derby.internal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.fettlebench.store.StoreException;

/** Where the store, its log and its backups lie, and whether what lies there can be opened. */
final class StoreFiles {
  private final Path data;

  StoreFiles(Path data) {
    this.data = data.toAbsolutePath().normalize();
    if (this.data.toString().contains(";")) {
      throw new StoreException(
          "the data directory "
              + this.data
              + " has a semicolon in its name, which the store cannot open; choose another name");
    }
  }

  Path store() {
    return data.resolve("store");
  }

  Path log() {
    return data.resolve("log");
  }

  Path backups() {
    return data.resolve("backups");
  }

  private Path makingMark() {
    return data.resolve("store.unfinished");
  }

  /** Returns whether there is no store yet, and one may be made. */
  boolean isNew() {
    if (Files.exists(makingMark())) {
      removeUnfinishedStore();
    }
    if (Files.exists(store())) {
      refuseForeignFolder();
      return false;
    }
    refuseLostStore();
    return true;
  }

  private void refuseForeignFolder() {
    // The engine would begin a new log for a store that has lost its own, and say nothing.
    for (Path needed : List.of(Path.of("service.properties"), Path.of("log", "log.ctrl"))) {
      if (!Files.isRegularFile(store().resolve(needed))) {
        throw new StoreException(
            "the store in %s is damaged or is not a store: %s is missing; %s"
                .formatted(store(), needed, remedy()));
      }
    }
  }

  private void refuseLostStore() {
    List<Path> copies = copies();
    if (!copies.isEmpty()) {
      throw new StoreException(
          "the store in "
              + store()
              + " is missing although there are backups of it; "
              + remedy()
              + ", or move the folder "
              + backups()
              + " away to begin with an empty store");
    }
  }

  /** Says how to get a store back, naming the newest backup if there is one. */
  String remedy() {
    List<Path> copies = copies();
    if (copies.isEmpty()) {
      return "put back a copy of that folder, or move it away to begin with an empty store";
    }
    Path newest = copies.get(copies.size() - 1).resolve("store");
    return "move it away and copy the newest backup, " + newest + ", to " + store();
  }

  private List<Path> copies() {
    if (!Files.isDirectory(backups())) {
      return List.of();
    }
    try (Stream<Path> entries = Files.list(backups())) {
      return entries.filter(copy -> Files.isDirectory(copy.resolve("store"))).sorted().toList();
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  void prepare() {
    try {
      Files.createDirectories(log());
    } catch (IOException fault) {
      throw cannotWrite(fault);
    }
  }

  /** Makes a new store; if that is broken off, the next opening begins it again. */
  void make(Runnable making) {
    try (MakingMark mark = MakingMark.set(makingMark())) {
      making.run();
      mark.remove();
    } catch (IOException fault) {
      throw cannotWrite(fault);
    }
  }

  private void removeUnfinishedStore() {
    try (MakingMark mark = MakingMark.set(makingMark())) {
      delete(store());
      mark.remove();
    } catch (IOException fault) {
      throw cannotWrite(fault);
    }
  }

  private StoreException cannotWrite(IOException fault) {
    return new StoreException(
        "the data directory " + data + " cannot be written; check who may write there", fault);
  }

  /** Deletes a folder with all that is in it, if it is there. */
  static void delete(Path folder) {
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
