package org.fettlebench.desktop.stock.internal;

import static org.mockito.Mockito.mock;

import org.fettlebench.fasteners.internal.HeadTables;
import org.fettlebench.fits.internal.HoleMethodTable;
import org.fettlebench.fits.internal.SeatChecker;
import org.fettlebench.fits.internal.SpannerTables;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.kits.StockFiles;
import org.fettlebench.kits.internal.KitFilesService;
import org.fettlebench.kits.internal.StockFilesService;
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.threads.internal.ThreadRegistry;
import org.fettlebench.tooling.internal.DrillRegistry;
import org.fettlebench.tooling.internal.HoleChoice;
import org.osgi.framework.BundleContext;

/** The real readers of lists over the shipped tables, without a framework. */
record Bench(KitFiles texts, StockFiles files) {
  private static final Faults NO_FAULTS =
      (contribution, doing, cause) -> {
        throw new AssertionError(doing, cause);
      };

  /** A list as a club might keep it, with a low mark, a worn tap and a drill among its lines. */
  static final String LIST =
      """
      kind,name,thread,style,diameter,length,material,place,condition,quantity,low-mark
      fastener,,2 BA,hexagon,,1/2 in,steel,Cabinet / Drawer 3,good,12,
      fastener,,2 BA,hexagon,,5/8 in,steel,Cabinet / Drawer 3,good,9,10
      fastener,,M5,socket-cap,,16 mm,steel,Metric / M5,good,40,
      drill,,,,No 22,,,Drill stand / Number,good,2,
      drill,,,,5/32 in,,,Drill stand / Fractional,good,1,
      tap,,2 BA,taper,,,,Tap box / BA,worn,1,
      sundry,Cutting oil,,,,,,Shelf 1,good,3,1
      """;

  static final Bench SET = set();

  private static Bench set() {
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
        new StockFilesService(threads, heads, drills, holes, methods, seats));
  }

  /** Returns a stock that holds a list. */
  PaperStock holding(String list) {
    PaperStock stock = new PaperStock();
    stock.receive(files.readStock("list.csv", list), "Ann Hall", "");
    return stock;
  }
}
