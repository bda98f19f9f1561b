package org.fettlebench.demo.internal;

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

/** The real readers and the real check over the shipped tables, without a framework. */
record Bench(KitFiles kitFiles, StockFiles stockFiles, KitCheck check) {
  private static final Faults NO_FAULTS =
      (contribution, doing, cause) -> {
        throw new AssertionError(doing, cause);
      };

  static Bench set() {
    BundleContext none = mock(BundleContext.class);
    FixedTables tables =
        FixedTables.carriedBy(
            ThreadRegistry.class,
            HeadTables.class,
            HoleChoice.class,
            HoleMethodTable.class,
            SpannerTables.class);
    ThreadRegistry threads = new ThreadRegistry(none, tables, NO_FAULTS);
    HeadTables heads = new HeadTables(none, tables, NO_FAULTS);
    DrillRegistry drills = new DrillRegistry(none, tables, NO_FAULTS);
    HoleChoice holes = new HoleChoice(none, tables, threads, NO_FAULTS);
    HoleMethodTable methods = new HoleMethodTable(none, tables, NO_FAULTS);
    SeatChecker seats = new SeatChecker();
    return new Bench(
        new KitFilesService(
            threads,
            heads,
            drills,
            holes,
            methods,
            seats,
            new SpannerTables(none, tables, NO_FAULTS)),
        new StockFilesService(threads, heads, drills, holes, methods, seats),
        new KitCheckService(
            threads,
            heads,
            drills,
            holes,
            methods,
            seats,
            new ChanceService(),
            new EstimateService(),
            NO_FAULTS));
  }
}
