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
    Placings placings = new Placings(Providers.CLUB_METHODS, club.errors());
    Bench bench = bench(club.stock(), club.errors());
    PlacePapers papers = placePapers();
    return new Command[] {
      new CastingPlace(
          Providers.KIT_FILES, Providers.CASTINGS, Providers.CASTING_DRAWINGS, castingPapers()),
      new HolePilot(bench, Providers.PILOTS),
      new HoleMeasure(bench, Providers.MEASURING),
      new HoleCorrect(bench, Providers.CORRECTIONS, papers),
      new HoleMark(bench, Providers.OTHER_FACES, papers),
      new ThreadShow(Providers.THREADS),
      new ThreadList(Providers.THREADS),
      new ThreadLimitsCommand(Providers.THREADS, Providers.THREAD_CLASSES),
      new ThreadStrengthCommand(Providers.THREADS, Providers.STRENGTH, Providers.MATERIALS),
      new ThreadBatch(
          Providers.THREADS,
          Providers.THREAD_CLASSES,
          Providers.STRENGTH,
          Providers.WIRES,
          Providers.MATERIALS,
          Providers.DRILLS,
          Providers.HOLES),
      new ThreadWires(
          Providers.THREADS,
          Providers.THREAD_CLASSES,
          Providers.WIRES,
          Providers.DRILLS,
          club.stock()),
      new MaterialList(Providers.MATERIALS),
      new ThreadIdentify(Providers.IDENTIFIER),
      new ThreadPairs(Providers.THREADS, Providers.IDENTIFIER),
      new HeadShow(Providers.THREADS, Providers.HEADS),
      new HeadScale(Providers.THREADS, Providers.HEADS),
      new JointZone(Providers.THREADS),
      new JointEdge(Providers.THREADS, Providers.EDGE_RULES),
      new JointLength(Providers.THREADS, Providers.HEADS, club.stock()),
      new PatternChance(Providers.KIT_FILES, Providers.PATTERNS, placings),
      new PatternDrill(
          Providers.KIT_FILES, Providers.PATTERNS, Providers.DRILLS, club.stock(), placings),
      new PatternFitCommand(Providers.KIT_FILES, Providers.PATTERNS, Providers.PATTERN_DRAWINGS),
      new DrillNear(Providers.DRILLS, club.stock()),
      new DrillShow(Providers.DRILLS, club.stock(), Providers.DRILLED),
      new HoleReam(Providers.DRILLS, club.stock(), Providers.DRILLED, Providers.WORK),
      new ChartPrint(Providers.WALL_CHARTS, Providers.DRILLS, club.stock()),
      new DrillSpeed(Providers.THREADS, Providers.DRILLS, Providers.SPEEDS, Providers.WORK),
      new TapRiskCommand(
          Providers.THREADS,
          Providers.DRILLS,
          Providers.HOLES,
          Providers.TAP_RISKS,
          Providers.WORK,
          club.stock()),
      new HeadSinkCommand(
          Providers.THREADS,
          Providers.HEADS,
          Providers.SINKS,
          Providers.HOLES,
          Providers.DRILLS,
          club.stock()),
      new HolePlan(Providers.THREADS, Providers.DRILLS, Providers.HOLES, club.stock()),
      new SeatCheck(
          Providers.KIT_FILES,
          Providers.SEATS,
          placings,
          seatPapers(),
          new SeatTrade(Providers.THREADS, Providers.HEADS, Providers.SPANNERS)),
      new SeatChance(Providers.KIT_FILES, Providers.SEATS, placings, Providers.CHANCES),
      new MethodList(Providers.CLUB_METHODS, club.errors()),
      new MethodShow(Providers.CLUB_METHODS, club.errors()),
      new MethodMeasure(Providers.METHODS, Providers.CLUB_METHODS, club.errors()),
      new MethodErrors(club.errors(), Providers.ERROR_FILES),
      new MethodTakeIn(club.errors(), Providers.ERROR_FILES),
      new MethodStrike(club.errors()),
      new KitCheckCommand(
          Providers.KIT_FILES,
          Providers.KIT_CHECK,
          Providers.KIT_REPORTS,
          club.stock(),
          club.errors(),
          club.shelf(),
          PapersForTests.printing(Providers.DRAWINGS, Providers.KIT_REPORTS)),
      new KitList(club.shelf()),
      new KitRemove(club.shelf()),
      new StockList(club.stock()),
      new StockReceive(club.stock(), Providers.STOCK_FILES),
      new StockTake(club.stock()),
      new StockPutBack(club.stock()),
      new StockScrap(club.stock()),
      new StockCount(club.stock()),
      new StockUndo(club.stock()),
      new StockHistory(club.stock()),
      new StockExport(club.stock(), Providers.STOCK_FILES),
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
        Providers.KIT_FILES,
        new Placings(Providers.CLUB_METHODS, errors),
        Providers.DRILLS,
        stock,
        Providers.THREADS,
        Providers.HEADS,
        Providers.SPANNERS);
  }

  /** Returns what writes cards about castings. */
  public static CastingPapers castingPapers() {
    CastingPapers papers = new CastingPapers();
    papers.setCards(new CastingCardService(Providers.CASTING_DRAWINGS));
    return papers;
  }

  /** Returns what writes cards about holes. */
  public static PlacePapers placePapers() {
    PlacePapers papers = new PlacePapers();
    papers.setCards(new HoleCardService(Providers.CORRECTIONS, Providers.OTHER_FACES));
    return papers;
  }

  /** Returns what writes cards of seats. */
  public static SeatPapers seatPapers() {
    SeatPapers papers = new SeatPapers(Providers.DRAWINGS);
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
