package org.fettlebench.kits.internal;

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
import java.util.Optional;
import java.util.stream.Stream;
import org.fettlebench.club.Receipt;
import org.fettlebench.club.StockLine;
import org.fettlebench.fasteners.internal.HeadTables;
import org.fettlebench.fits.internal.HoleMethodTable;
import org.fettlebench.fits.internal.SeatChecker;
import org.fettlebench.kits.Holdings;
import org.fettlebench.kits.Kit;
import org.fettlebench.kits.KitReport;
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.tables.Table;
import org.fettlebench.threads.internal.ThreadRegistry;
import org.fettlebench.tooling.internal.DrillRegistry;
import org.fettlebench.tooling.internal.HoleChoice;
import org.osgi.framework.BundleContext;

/** The real services over the shipped tables, without a framework. */
final class Bench {
  private static final Faults NO_FAULTS =
      (contribution, doing, cause) -> {
        throw new AssertionError(doing, cause);
      };

  static final Trade TRADE = trade();

  static final KitFilesService FILES =
      new KitFilesService(
          TRADE.threads(),
          TRADE.heads(),
          TRADE.drills(),
          TRADE.holes(),
          TRADE.methods(),
          TRADE.seats());

  static final StockFilesService STOCK =
      new StockFilesService(
          TRADE.threads(),
          TRADE.heads(),
          TRADE.drills(),
          TRADE.holes(),
          TRADE.methods(),
          TRADE.seats());

  private Bench() {}

  static KitCheckService check(Faults faults) {
    return new KitCheckService(
        TRADE.threads(),
        TRADE.heads(),
        TRADE.drills(),
        TRADE.holes(),
        TRADE.methods(),
        TRADE.seats(),
        faults);
  }

  /** Checks a kit text against a stock list; any fault reported fails the test. */
  static KitReport check(String kit, String stock) {
    Kit read = FILES.readKit("a.kit.toml", kit);
    return check(NO_FAULTS).check(read, holdings(stock));
  }

  /** Makes holdings of a stock list, nothing on loan. */
  static Holdings holdings(String stock) {
    return stock.isBlank() ? Holdings.none() : holdings(STOCK.readStock("stock.csv", stock));
  }

  static Holdings holdings(List<Receipt> receipts) {
    List<StockLine> lines = new ArrayList<>();
    for (Receipt receipt : receipts) {
      lines.add(
          new StockLine(
              lines.size() + 1,
              receipt.goods(),
              receipt.place(),
              receipt.condition(),
              receipt.quantity(),
              0,
              "",
              Optional.empty()));
    }
    return new Holdings(lines);
  }

  private static Trade trade() {
    BundleContext none = mock(BundleContext.class);
    List<Table> all = new ArrayList<>();
    for (Class<?> anchor :
        List.of(ThreadRegistry.class, HeadTables.class, HoleChoice.class, HoleMethodTable.class)) {
      all.addAll(FixedTables.fromResources(anchor, names(anchor)).all());
    }
    FixedTables tables = FixedTables.of(all);
    ThreadRegistry threads = new ThreadRegistry(none, tables, NO_FAULTS);
    return new Trade(
        threads,
        new HeadTables(none, tables, NO_FAULTS),
        new DrillRegistry(none, tables, NO_FAULTS),
        new HoleChoice(none, tables, threads, NO_FAULTS),
        new HoleMethodTable(none, tables, NO_FAULTS),
        new SeatChecker());
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
