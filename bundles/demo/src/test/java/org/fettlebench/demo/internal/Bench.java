package org.fettlebench.demo.internal;

import static org.mockito.Mockito.mock;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.fettlebench.fasteners.internal.HeadTables;
import org.fettlebench.fits.internal.HoleMethodTable;
import org.fettlebench.fits.internal.SeatChecker;
import org.fettlebench.kits.KitCheck;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.kits.StockFiles;
import org.fettlebench.kits.internal.KitCheckService;
import org.fettlebench.kits.internal.KitFilesService;
import org.fettlebench.kits.internal.StockFilesService;
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.tables.Table;
import org.fettlebench.threads.internal.ThreadRegistry;
import org.fettlebench.tooling.internal.DrillRegistry;
import org.fettlebench.tooling.internal.HoleChoice;
import org.osgi.framework.BundleContext;

/** The real readers and the real check over the shipped tables, without a framework. */
record Bench(KitFiles kitFiles, StockFiles stockFiles, KitCheck check) {
  private static final Faults NO_FAULTS =
      (contribution, doing, cause) -> {
        throw new AssertionError(doing, cause);
      };

  static Bench set() {
    BundleContext none = mock(BundleContext.class);
    List<Table> all = new ArrayList<>();
    for (Class<?> anchor :
        List.of(ThreadRegistry.class, HeadTables.class, HoleChoice.class, HoleMethodTable.class)) {
      all.addAll(FixedTables.fromResources(anchor, names(anchor)).all());
    }
    FixedTables tables = FixedTables.of(all);
    ThreadRegistry threads = new ThreadRegistry(none, tables, NO_FAULTS);
    HeadTables heads = new HeadTables(none, tables, NO_FAULTS);
    DrillRegistry drills = new DrillRegistry(none, tables, NO_FAULTS);
    HoleChoice holes = new HoleChoice(none, tables, threads, NO_FAULTS);
    HoleMethodTable methods = new HoleMethodTable(none, tables, NO_FAULTS);
    SeatChecker seats = new SeatChecker();
    return new Bench(
        new KitFilesService(threads, heads, drills, holes, methods, seats),
        new StockFilesService(threads, heads, drills, holes, methods, seats),
        new KitCheckService(threads, heads, drills, holes, methods, seats, NO_FAULTS));
  }

  private static String[] names(Class<?> anchor) {
    try {
      Path home = Path.of(anchor.getProtectionDomain().getCodeSource().getLocation().toURI());
      if (Files.isDirectory(home)) {
        return names(home.resolve("FETTLEBENCH/tables"));
      }
      try (FileSystem jar = FileSystems.newFileSystem(home)) {
        return names(jar.getPath("/FETTLEBENCH/tables"));
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    } catch (URISyntaxException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private static String[] names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> "/FETTLEBENCH/tables/" + file.getFileName())
          .sorted()
          .toArray(String[]::new);
    }
  }
}
