package org.fettlebench.desktop.kits.internal;

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

/** The real services over the shipped tables, without a framework. */
final class RealTrade {
  static final KitFiles FILES;
  static final StockFiles STOCK_FILES;
  static final KitCheck CHECK;

  static {
    BundleContext none = mock(BundleContext.class);
    Faults loud =
        (contribution, doing, cause) -> {
          throw new AssertionError(doing, cause);
        };
    List<Table> all = new ArrayList<>();
    for (Class<?> anchor :
        List.of(ThreadRegistry.class, HeadTables.class, HoleChoice.class, HoleMethodTable.class)) {
      all.addAll(FixedTables.fromResources(anchor, names(anchor)).all());
    }
    FixedTables tables = FixedTables.of(all);
    ThreadRegistry threads = new ThreadRegistry(none, tables, loud);
    HeadTables heads = new HeadTables(none, tables, loud);
    DrillRegistry drills = new DrillRegistry(none, tables, loud);
    HoleChoice holes = new HoleChoice(none, tables, threads, loud);
    HoleMethodTable methods = new HoleMethodTable(none, tables, loud);
    SeatChecker seats = new SeatChecker();
    FILES = new KitFilesService(threads, heads, drills, holes, methods, seats);
    STOCK_FILES = new StockFilesService(threads, heads, drills, holes, methods, seats);
    CHECK = new KitCheckService(threads, heads, drills, holes, methods, seats, loud);
  }

  private RealTrade() {}

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
