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
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.threads.internal.ThreadRegistry;
import org.fettlebench.threads.internal.identify.IdentifyService;
import org.fettlebench.threads.internal.strength.MaterialRegistry;
import org.fettlebench.threads.internal.strength.StrengthService;
import org.fettlebench.threads.internal.wires.WireService;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.internal.DrillRegistry;
import org.fettlebench.tooling.internal.HoleChoice;
import org.fettlebench.tooling.internal.risk.TapRiskService;
import org.fettlebench.tooling.internal.speed.SpeedService;
import org.fettlebench.tooling.internal.work.WorkRegistry;
import org.osgi.framework.BundleContext;

/** The real threads and drills over the shipped tables, without a framework; and a tool rack. */
public record Bench(
    FixedTables tables, ThreadRegistry threads, DrillRegistry drills, HoleChoice holes) {
  private static final Faults NO_FAULTS =
      (contribution, doing, cause) -> {
        throw new AssertionError(doing, cause);
      };

  /** The one over the shipped tables. */
  public static final Bench SET = set();

  private static Bench set() {
    BundleContext none = mock(BundleContext.class);
    FixedTables tables = FixedTables.carriedBy(ThreadRegistry.class, HoleChoice.class);
    ThreadRegistry threads = new ThreadRegistry(none, tables, NO_FAULTS);
    return new Bench(
        tables,
        threads,
        new DrillRegistry(none, tables, NO_FAULTS),
        new HoleChoice(none, tables, threads, NO_FAULTS));
  }

  ThreadsBook book() {
    return new ThreadsBook(threads, threads, drills, holes, tables);
  }

  ThreadsPage page(Stock stock) {
    ThreadsPage page =
        new ThreadsPage(
            threads,
            threads,
            new ThreadBooks(
                threads,
                identifier(),
                new MaterialRegistry(tables, (table, fault) -> fail(fault)),
                new StrengthService(threads),
                new WireService()),
            drills,
            holes,
            tables,
            stock);
    WorkRegistry work = new WorkRegistry(tables, (table, fault) -> fail(fault));
    page.setRisks(new TapRiskService(tables, work, (table, fault) -> fail(fault)));
    page.setSpeeds(new SpeedService(tables, work, (table, fault) -> fail(fault)));
    return page;
  }

  private static void fail(RuntimeException fault) {
    throw new AssertionError("a shipped table has a fault", fault);
  }

  /** Returns the real identifier over the shipped series. */
  public IdentifyService identifier() {
    return new IdentifyService(threads, threads, tables);
  }

  /** Returns the real crossings. */
  public CrossingBook crossings() {
    return new CrossingBook(threads, threads, identifier());
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
    DrillSize size = SET.drills.find(name).orElseThrow();
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
