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
import org.fettlebench.measure.Length;
import org.fettlebench.paper.internal.HoleCardService;
import org.fettlebench.paper.internal.SeatCardService;
import org.fettlebench.testkit.trade.RealTrade;
import org.osgi.framework.BundleContext;

/** The page with the real services over the shipped tables, without a framework. */
final class RealPage {
  private RealPage() {}

  static SeatBook book() {
    HeldHeads heads = new HeldHeads(RealTrade.HEADS, RealTrade.THREADS);
    heads.stock(lines());
    return new SeatBook(
        new SeatBook.Trade(
            RealTrade.THREADS,
            RealTrade.DRILLS,
            RealTrade.HOLES,
            RealTrade.METHODS,
            RealTrade.SEATS,
            () -> Optional.of(RealTrade.SPANNERS)),
        heads);
  }

  /** A page with a stock of a few screws and drills, and every optional service. */
  static SeatPage page(KitShelf shelf) {
    Stock stock = mock(Stock.class);
    lenient().when(stock.lines()).thenReturn(lines());
    SeatPage page =
        new SeatPage(
            RealTrade.THREADS,
            RealTrade.HEADS,
            RealTrade.DRILLS,
            RealTrade.HOLES,
            RealTrade.METHODS,
            RealTrade.SEATS,
            RealTrade.DRAWINGS,
            RealTrade.KIT_FILES,
            stock,
            shelf,
            mock(BundleContext.class));
    page.setCorrections(RealTrade.CORRECTIONS);
    page.setMeasuring(RealTrade.MEASURING);
    page.setFaces(RealTrade.OTHER_FACES);
    page.setSpanners(RealTrade.SPANNERS);
    page.setCards(new SeatCardService());
    page.setHoleCards(new HoleCardService(RealTrade.CORRECTIONS, RealTrade.OTHER_FACES));
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
