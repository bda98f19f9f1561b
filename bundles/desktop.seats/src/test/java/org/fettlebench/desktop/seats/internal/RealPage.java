package org.fettlebench.desktop.seats.internal;

import static org.mockito.Mockito.lenient;
import static org.mockito.Mockito.mock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.club.Goods;
import org.fettlebench.club.KitShelf;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.desktop.widgets.trial.TrialDesk;
import org.fettlebench.fasteners.internal.HeadTables;
import org.fettlebench.fits.internal.HoleMethodTable;
import org.fettlebench.fits.internal.SeatChecker;
import org.fettlebench.fits.internal.SeatPainter;
import org.fettlebench.fits.internal.SpannerTables;
import org.fettlebench.holes.internal.correct.CorrectionFinder;
import org.fettlebench.holes.internal.correct.HoleFitter;
import org.fettlebench.holes.internal.otherface.FaceMarker;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.kits.internal.KitFilesService;
import org.fettlebench.measure.Length;
import org.fettlebench.modules.Faults;
import org.fettlebench.paper.internal.HoleCardService;
import org.fettlebench.paper.internal.SeatCardService;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.threads.internal.ThreadRegistry;
import org.fettlebench.tooling.internal.DrillRegistry;
import org.fettlebench.tooling.internal.HoleChoice;
import org.osgi.framework.BundleContext;

/** The page with the real services over the shipped tables, without a framework. */
final class RealPage {
  private static final Faults LOUD =
      (contribution, doing, cause) -> {
        throw new AssertionError(doing, cause);
      };
  private static final BundleContext NONE = mock(BundleContext.class);
  private static final FixedTables TABLES =
      FixedTables.carriedBy(
          ThreadRegistry.class, HeadTables.class, HoleChoice.class, HoleMethodTable.class);
  private static final ThreadRegistry THREADS = new ThreadRegistry(NONE, TABLES, LOUD);
  private static final HeadTables HEADS = new HeadTables(NONE, TABLES, LOUD);
  private static final DrillRegistry DRILLS = new DrillRegistry(NONE, TABLES, LOUD);
  private static final HoleChoice HOLES = new HoleChoice(NONE, TABLES, THREADS, LOUD);
  static final HoleMethodTable METHODS = new HoleMethodTable(NONE, TABLES, LOUD);
  private static final SpannerTables SPANNERS = new SpannerTables(NONE, TABLES, LOUD);
  private static final SeatChecker SEATS = new SeatChecker();
  static final KitFiles FILES =
      new KitFilesService(THREADS, HEADS, DRILLS, HOLES, METHODS, SEATS, SPANNERS);

  private RealPage() {}

  static SeatBook book() {
    HeldHeads heads = new HeldHeads(HEADS, THREADS);
    heads.stock(lines());
    return new SeatBook(
        new SeatBook.Trade(THREADS, DRILLS, HOLES, METHODS, SEATS, () -> Optional.of(SPANNERS)),
        heads);
  }

  /** A page with a stock of a few screws and drills, and every optional service. */
  static SeatPage page(KitShelf shelf) {
    Stock stock = mock(Stock.class);
    lenient().when(stock.lines()).thenReturn(lines());
    SeatPage page =
        new SeatPage(
            THREADS,
            HEADS,
            DRILLS,
            HOLES,
            METHODS,
            SEATS,
            new SeatPainter(),
            FILES,
            stock,
            shelf,
            NONE);
    page.setCorrections(new CorrectionFinder(SEATS));
    page.setMeasuring(new HoleFitter());
    page.setFaces(new FaceMarker(SEATS));
    page.setSpanners(SPANNERS);
    page.setCards(new SeatCardService());
    page.setHoleCards(new HoleCardService(new CorrectionFinder(SEATS), new FaceMarker(SEATS)));
    return page;
  }

  static SeatView open(TrialDesk desk, SeatPage page, int width, int height) {
    SeatView view = (SeatView) page.create(desk.shell(), desk);
    desk.open(width, height);
    page.refresh();
    page.focus();
    desk.settle();
    return view;
  }

  static List<StockLine> lines() {
    List<StockLine> lines = new ArrayList<>();
    lines.add(line(lines, Goods.Kind.FASTENER, "2 BA", "hexagon", Optional.empty()));
    lines.add(line(lines, Goods.Kind.FASTENER, "2 BA", "small-hexagon", Optional.empty()));
    for (double mm : new double[] {3, 3.2, 4, 4.5, 4.8, 4.9, 5.0, 5.5}) {
      lines.add(line(lines, Goods.Kind.DRILL, "", "", Optional.of(Length.ofMillimetres(mm))));
    }
    return lines;
  }

  private static StockLine line(
      List<StockLine> before,
      Goods.Kind kind,
      String thread,
      String style,
      Optional<Length> diameter) {
    Goods goods =
        new Goods(
            kind,
            (thread + " " + style + diameter.map(Length::toString).orElse("")).strip(),
            thread,
            style,
            diameter,
            Optional.empty(),
            "");
    return new StockLine(
        before.size() + 1,
        goods,
        "Drawer",
        StockLine.Condition.GOOD,
        12,
        List.of(),
        Optional.empty());
  }
}
