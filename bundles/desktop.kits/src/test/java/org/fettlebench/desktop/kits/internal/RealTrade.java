package org.fettlebench.desktop.kits.internal;

import static org.mockito.Mockito.mock;

import org.fettlebench.fasteners.internal.HeadTables;
import org.fettlebench.fits.internal.HoleMethodTable;
import org.fettlebench.fits.internal.SeatChecker;
import org.fettlebench.fits.internal.SpannerTables;
import org.fettlebench.holes.internal.chance.ChanceService;
import org.fettlebench.holes.internal.chance.EstimateService;
import org.fettlebench.kits.KitCheck;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.kits.StockFiles;
import org.fettlebench.kits.internal.KitCheckService;
import org.fettlebench.kits.internal.KitFilesService;
import org.fettlebench.kits.internal.StockFilesService;
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.FixedTables;
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
    FixedTables tables =
        FixedTables.carriedBy(
            ThreadRegistry.class,
            HeadTables.class,
            HoleChoice.class,
            HoleMethodTable.class,
            SpannerTables.class);
    ThreadRegistry threads = new ThreadRegistry(none, tables, loud);
    HeadTables heads = new HeadTables(none, tables, loud);
    DrillRegistry drills = new DrillRegistry(none, tables, loud);
    HoleChoice holes = new HoleChoice(none, tables, threads, loud);
    HoleMethodTable methods = new HoleMethodTable(none, tables, loud);
    SeatChecker seats = new SeatChecker();
    FILES =
        new KitFilesService(
            threads, heads, drills, holes, methods, seats, new SpannerTables(none, tables, loud));
    STOCK_FILES = new StockFilesService(threads, heads, drills, holes, methods, seats);
    CHECK =
        new KitCheckService(
            threads,
            heads,
            drills,
            holes,
            methods,
            seats,
            new ChanceService(),
            new EstimateService(),
            loud);
  }

  private RealTrade() {}
}
