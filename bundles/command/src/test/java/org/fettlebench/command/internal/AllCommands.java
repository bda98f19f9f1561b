package org.fettlebench.command.internal;

import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.nio.file.Path;
import java.util.List;
import org.fettlebench.club.MeasuredErrors;
import org.fettlebench.club.Stock;
import org.fettlebench.command.Command;
import org.fettlebench.command.internal.casting.CastingPapers;
import org.fettlebench.command.internal.casting.CastingPlace;
import org.fettlebench.command.internal.chart.ChartPrint;
import org.fettlebench.command.internal.head.HeadScale;
import org.fettlebench.command.internal.head.HeadShow;
import org.fettlebench.command.internal.head.HeadSinkCommand;
import org.fettlebench.command.internal.hole.DrillNear;
import org.fettlebench.command.internal.hole.DrillShow;
import org.fettlebench.command.internal.hole.DrillSpeed;
import org.fettlebench.command.internal.hole.HolePlan;
import org.fettlebench.command.internal.hole.HoleReam;
import org.fettlebench.command.internal.holeplace.Bench;
import org.fettlebench.command.internal.holeplace.HoleCorrect;
import org.fettlebench.command.internal.holeplace.HoleMark;
import org.fettlebench.command.internal.holeplace.HoleMeasure;
import org.fettlebench.command.internal.holeplace.HolePilot;
import org.fettlebench.command.internal.holeplace.PlacePapers;
import org.fettlebench.command.internal.joint.JointEdge;
import org.fettlebench.command.internal.joint.JointLength;
import org.fettlebench.command.internal.joint.JointZone;
import org.fettlebench.command.internal.kit.KitCheckCommand;
import org.fettlebench.command.internal.kit.KitList;
import org.fettlebench.command.internal.kit.KitRemove;
import org.fettlebench.command.internal.kit.PapersForTests;
import org.fettlebench.command.internal.method.MethodErrors;
import org.fettlebench.command.internal.method.MethodList;
import org.fettlebench.command.internal.method.MethodMeasure;
import org.fettlebench.command.internal.method.MethodShow;
import org.fettlebench.command.internal.method.MethodStrike;
import org.fettlebench.command.internal.method.MethodTakeIn;
import org.fettlebench.command.internal.method.Placings;
import org.fettlebench.command.internal.pattern.PatternChance;
import org.fettlebench.command.internal.pattern.PatternDrill;
import org.fettlebench.command.internal.pattern.PatternFitCommand;
import org.fettlebench.command.internal.seat.SeatChance;
import org.fettlebench.command.internal.seat.SeatCheck;
import org.fettlebench.command.internal.seat.SeatPapers;
import org.fettlebench.command.internal.seat.SeatTrade;
import org.fettlebench.command.internal.stock.StockCount;
import org.fettlebench.command.internal.stock.StockExport;
import org.fettlebench.command.internal.stock.StockHistory;
import org.fettlebench.command.internal.stock.StockList;
import org.fettlebench.command.internal.stock.StockPutBack;
import org.fettlebench.command.internal.stock.StockReceive;
import org.fettlebench.command.internal.stock.StockScrap;
import org.fettlebench.command.internal.stock.StockTake;
import org.fettlebench.command.internal.stock.StockUndo;
import org.fettlebench.command.internal.stock.ToolLend;
import org.fettlebench.command.internal.stock.ToolOut;
import org.fettlebench.command.internal.stock.ToolReturn;
import org.fettlebench.command.internal.suite.About;
import org.fettlebench.command.internal.suite.DbBackup;
import org.fettlebench.command.internal.suite.ModuleLeaveOut;
import org.fettlebench.command.internal.suite.ModuleLetIn;
import org.fettlebench.command.internal.suite.ModuleList;
import org.fettlebench.command.internal.tap.TapRiskCommand;
import org.fettlebench.command.internal.thread.MaterialList;
import org.fettlebench.command.internal.thread.ThreadBatch;
import org.fettlebench.command.internal.thread.ThreadIdentify;
import org.fettlebench.command.internal.thread.ThreadLimitsCommand;
import org.fettlebench.command.internal.thread.ThreadList;
import org.fettlebench.command.internal.thread.ThreadPairs;
import org.fettlebench.command.internal.thread.ThreadShow;
import org.fettlebench.command.internal.thread.ThreadStrengthCommand;
import org.fettlebench.command.internal.thread.ThreadWires;
import org.fettlebench.modules.Modules;
import org.fettlebench.paper.internal.CastingCardService;
import org.fettlebench.paper.internal.HoleCardService;
import org.fettlebench.paper.internal.SeatCardService;
import org.fettlebench.testkit.trade.RealTrade;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.Version;

/** Every command of the suite, over the real providers and one club. */
public final class AllCommands {
  private AllCommands() {}

  /** Returns the commands for a club whose data is in a folder. */
  public static Command[] of(FreshClub club, Path folder) {
    Modules modules = mock(Modules.class);
    when(modules.folder()).thenReturn(folder.resolve("modules"));
    when(modules.installed()).thenReturn(List.of());
    Placings placings = new Placings(RealTrade.CLUB_METHODS, club.errors());
    Bench bench = bench(club.stock(), club.errors());
    PlacePapers papers = placePapers();
    return new Command[] {
      new CastingPlace(
          RealTrade.KIT_FILES, RealTrade.CASTINGS, RealTrade.CASTING_DRAWINGS, castingPapers()),
      new HolePilot(bench, RealTrade.PILOTS),
      new HoleMeasure(bench, RealTrade.MEASURING),
      new HoleCorrect(bench, RealTrade.CORRECTIONS, papers),
      new HoleMark(bench, RealTrade.OTHER_FACES, papers),
      new ThreadShow(RealTrade.THREADS),
      new ThreadList(RealTrade.THREADS),
      new ThreadLimitsCommand(RealTrade.THREADS, RealTrade.THREAD_CLASSES),
      new ThreadStrengthCommand(RealTrade.THREADS, RealTrade.STRENGTH, RealTrade.MATERIALS),
      new ThreadBatch(
          RealTrade.THREADS,
          RealTrade.THREAD_CLASSES,
          RealTrade.STRENGTH,
          RealTrade.WIRES,
          RealTrade.MATERIALS,
          RealTrade.DRILLS,
          RealTrade.HOLES),
      new ThreadWires(
          RealTrade.THREADS,
          RealTrade.THREAD_CLASSES,
          RealTrade.WIRES,
          RealTrade.DRILLS,
          club.stock()),
      new MaterialList(RealTrade.MATERIALS),
      new ThreadIdentify(RealTrade.IDENTIFIER),
      new ThreadPairs(RealTrade.THREADS, RealTrade.IDENTIFIER),
      new HeadShow(RealTrade.THREADS, RealTrade.HEADS),
      new HeadScale(RealTrade.THREADS, RealTrade.HEADS),
      new JointZone(RealTrade.THREADS),
      new JointEdge(RealTrade.THREADS, RealTrade.EDGE_RULES),
      new JointLength(RealTrade.THREADS, RealTrade.HEADS, club.stock()),
      new PatternChance(RealTrade.KIT_FILES, RealTrade.PATTERNS, placings),
      new PatternDrill(
          RealTrade.KIT_FILES, RealTrade.PATTERNS, RealTrade.DRILLS, club.stock(), placings),
      new PatternFitCommand(RealTrade.KIT_FILES, RealTrade.PATTERNS, RealTrade.PATTERN_DRAWINGS),
      new DrillNear(RealTrade.DRILLS, club.stock()),
      new DrillShow(RealTrade.DRILLS, club.stock(), RealTrade.DRILLED),
      new HoleReam(RealTrade.DRILLS, club.stock(), RealTrade.DRILLED, RealTrade.WORK),
      new ChartPrint(PaperTrade.WALL_CHARTS, RealTrade.DRILLS, club.stock()),
      new DrillSpeed(RealTrade.THREADS, RealTrade.DRILLS, RealTrade.SPEEDS, RealTrade.WORK),
      new TapRiskCommand(
          RealTrade.THREADS,
          RealTrade.DRILLS,
          RealTrade.HOLES,
          RealTrade.TAP_RISKS,
          RealTrade.WORK,
          club.stock()),
      new HeadSinkCommand(
          RealTrade.THREADS,
          RealTrade.HEADS,
          RealTrade.SINKS,
          RealTrade.HOLES,
          RealTrade.DRILLS,
          club.stock()),
      new HolePlan(RealTrade.THREADS, RealTrade.DRILLS, RealTrade.HOLES, club.stock()),
      new SeatCheck(
          RealTrade.KIT_FILES,
          RealTrade.SEATS,
          placings,
          seatPapers(),
          new SeatTrade(RealTrade.THREADS, RealTrade.HEADS, RealTrade.SPANNERS)),
      new SeatChance(RealTrade.KIT_FILES, RealTrade.SEATS, placings, RealTrade.CHANCES),
      new MethodList(RealTrade.CLUB_METHODS, club.errors()),
      new MethodShow(RealTrade.CLUB_METHODS, club.errors()),
      new MethodMeasure(RealTrade.METHODS, RealTrade.CLUB_METHODS, club.errors()),
      new MethodErrors(club.errors(), RealTrade.ERROR_FILES),
      new MethodTakeIn(club.errors(), RealTrade.ERROR_FILES),
      new MethodStrike(club.errors()),
      new KitCheckCommand(
          RealTrade.KIT_FILES,
          RealTrade.KIT_CHECK,
          RealTrade.KIT_REPORTS,
          club.stock(),
          club.errors(),
          club.shelf(),
          PapersForTests.printing(RealTrade.DRAWINGS, RealTrade.KIT_REPORTS)),
      new KitList(club.shelf()),
      new KitRemove(club.shelf()),
      new StockList(club.stock()),
      new StockReceive(club.stock(), RealTrade.STOCK_FILES),
      new StockTake(club.stock()),
      new StockPutBack(club.stock()),
      new StockScrap(club.stock()),
      new StockCount(club.stock()),
      new StockUndo(club.stock()),
      new StockHistory(club.stock()),
      new StockExport(club.stock(), RealTrade.STOCK_FILES),
      new ToolLend(club.stock()),
      new ToolReturn(club.stock()),
      new ToolOut(club.stock()),
      new ModuleList(modules),
      new ModuleLeaveOut(modules),
      new ModuleLetIn(modules),
      new DbBackup(club.engine()),
      new About(context(folder), club.engine(), modules)
    };
  }

  /** Returns what the commands about a hole's place need, for a stock. */
  public static Bench bench(Stock stock, MeasuredErrors errors) {
    return new Bench(
        RealTrade.KIT_FILES,
        new Placings(RealTrade.CLUB_METHODS, errors),
        RealTrade.DRILLS,
        stock,
        RealTrade.THREADS,
        RealTrade.HEADS,
        RealTrade.SPANNERS);
  }

  /** Returns what writes cards about castings. */
  public static CastingPapers castingPapers() {
    CastingPapers papers = new CastingPapers();
    papers.setCards(new CastingCardService(RealTrade.CASTING_DRAWINGS));
    return papers;
  }

  /** Returns what writes cards about holes. */
  public static PlacePapers placePapers() {
    PlacePapers papers = new PlacePapers();
    papers.setCards(new HoleCardService(RealTrade.CORRECTIONS, RealTrade.OTHER_FACES));
    return papers;
  }

  /** Returns what writes cards of seats. */
  public static SeatPapers seatPapers() {
    SeatPapers papers = new SeatPapers(RealTrade.DRAWINGS);
    papers.setCards(new SeatCardService());
    return papers;
  }

  private static BundleContext context(Path folder) {
    Bundle bundle = mock(Bundle.class);
    when(bundle.getVersion()).thenReturn(new Version(0, 1, 0));
    BundleContext context = mock(BundleContext.class);
    when(context.getBundle()).thenReturn(bundle);
    when(context.getProperty("fettlebench.data")).thenReturn(folder.toString());
    return context;
  }
}
