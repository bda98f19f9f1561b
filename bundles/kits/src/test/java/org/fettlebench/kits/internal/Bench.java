package org.fettlebench.kits.internal;

import static org.mockito.Mockito.mock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.club.Receipt;
import org.fettlebench.club.StockLine;
import org.fettlebench.fasteners.internal.HeadTables;
import org.fettlebench.fits.internal.HoleMethodTable;
import org.fettlebench.fits.internal.SeatChecker;
import org.fettlebench.fits.internal.SpannerTables;
import org.fettlebench.holes.internal.chance.ChanceService;
import org.fettlebench.holes.internal.chance.EstimateService;
import org.fettlebench.holes.internal.patterns.EdgeRuleTables;
import org.fettlebench.kits.Holdings;
import org.fettlebench.kits.Kit;
import org.fettlebench.kits.KitReport;
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.FixedTables;
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
          TRADE.seats(),
          new SpannerTables(
              mock(BundleContext.class), FixedTables.carriedBy(SpannerTables.class), NO_FAULTS));

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
    KitCheckService check =
        new KitCheckService(
            TRADE.threads(),
            TRADE.heads(),
            TRADE.drills(),
            TRADE.holes(),
            TRADE.methods(),
            TRADE.seats(),
            new ChanceService(),
            new EstimateService(),
            faults);
    check.addRule(
        new EdgeDistanceRule(
            new EdgeRuleTables(
                FixedTables.carriedBy(EdgeRuleTables.class),
                (table, fault) -> {
                  throw fault;
                })));
    return check;
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
              List.of(),
              Optional.empty()));
    }
    return new Holdings(lines);
  }

  private static Trade trade() {
    BundleContext none = mock(BundleContext.class);
    FixedTables tables =
        FixedTables.carriedBy(
            ThreadRegistry.class, HeadTables.class, HoleChoice.class, HoleMethodTable.class);
    ThreadRegistry threads = new ThreadRegistry(none, tables, NO_FAULTS);
    return new Trade(
        threads,
        new HeadTables(none, tables, NO_FAULTS),
        new DrillRegistry(none, tables, NO_FAULTS),
        new HoleChoice(none, tables, threads, NO_FAULTS),
        new HoleMethodTable(none, tables, NO_FAULTS),
        new SeatChecker());
  }
}
