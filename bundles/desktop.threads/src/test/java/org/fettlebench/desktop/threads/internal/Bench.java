package org.fettlebench.desktop.threads.internal;

import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.club.Goods;
import org.fettlebench.club.Loan;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.desktop.threads.internal.compare.CrossingBook;
import org.fettlebench.testkit.trade.RealTrade;
import org.fettlebench.tooling.DrillSize;

/** The page and its parts over the real threads and drills; and a tool rack. */
public final class Bench {
  private Bench() {}

  static ThreadsBook book() {
    return new ThreadsBook(
        RealTrade.THREADS,
        RealTrade.THREAD_LIMITS,
        RealTrade.DRILLS,
        RealTrade.HOLES,
        RealTrade.TABLES);
  }

  static ThreadsPage page(Stock stock) {
    ThreadsPage page =
        new ThreadsPage(
            RealTrade.THREADS,
            RealTrade.THREAD_LIMITS,
            new ThreadBooks(
                RealTrade.THREAD_CLASSES,
                RealTrade.IDENTIFIER,
                RealTrade.MATERIALS,
                RealTrade.STRENGTH,
                RealTrade.WIRES),
            RealTrade.DRILLS,
            RealTrade.HOLES,
            RealTrade.TABLES,
            stock);
    page.setRisks(RealTrade.TAP_RISKS);
    page.setSpeeds(RealTrade.SPEEDS);
    return page;
  }

  /** Returns the real crossings. */
  public static CrossingBook crossings() {
    return new CrossingBook(RealTrade.THREADS, RealTrade.THREAD_CLASSES, RealTrade.IDENTIFIER);
  }

  /** Returns a stock that holds a club's rack. */
  static Stock stock() {
    Stock stock = mock(Stock.class);
    List<StockLine> lines = rack();
    when(stock.lines()).thenReturn(lines);
    when(stock.revision()).thenReturn(7L);
    return stock;
  }

  /** Number drills without every seventh, tenths of a millimetre, one out, one worn; some taps. */
  static List<StockLine> rack() {
    List<StockLine> lines = new ArrayList<>();
    for (int number = 1; number <= 60; number++) {
      if (number % 7 != 0) {
        drill(lines, "No " + number, "Drill stand / Number");
      }
    }
    for (int tenths = 10; tenths <= 100; tenths += 2) {
      drill(lines, tenths / 10 + "." + tenths % 10 + " mm", "Drill stand / Metric");
    }
    tap(lines, "taper", StockLine.Condition.GOOD, "");
    tap(lines, "second", StockLine.Condition.WORN, "");
    tap(lines, "bottoming", StockLine.Condition.GOOD, "Tom Reed until 3 May 2027");
    return lines;
  }

  private static void drill(List<StockLine> lines, String name, String place) {
    DrillSize size = RealTrade.DRILLS.find(name).orElseThrow();
    Goods goods =
        new Goods(
            Goods.Kind.DRILL,
            name + " drill",
            "",
            "",
            Optional.of(size.diameter()),
            Optional.empty(),
            "");
    boolean out = name.equals("No 24");
    StockLine.Condition condition =
        name.equals("No 25") ? StockLine.Condition.WORN : StockLine.Condition.GOOD;
    String holder = out ? "Grace Webb" : "";
    lines.add(
        new StockLine(
            lines.size() + 1, goods, place, condition, 1, loans(holder), Optional.empty()));
  }

  private static void tap(
      List<StockLine> lines, String lead, StockLine.Condition condition, String holder) {
    Goods goods =
        new Goods(
            Goods.Kind.TAP,
            "2 BA " + lead + " tap",
            "2 BA",
            lead,
            Optional.empty(),
            Optional.empty(),
            "");
    lines.add(
        new StockLine(
            lines.size() + 1,
            goods,
            "Tap box / BA",
            condition,
            1,
            loans(holder),
            Optional.empty()));
  }

  private static List<Loan> loans(String holder) {
    return holder.isEmpty() ? List.of() : List.of(new Loan(holder, 1, Optional.empty()));
  }
}
