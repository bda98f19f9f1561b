package org.fettlebench.testkit.trade;

import static org.mockito.Mockito.mock;

import org.fettlebench.castings.CastingDrawings;
import org.fettlebench.castings.Castings;
import org.fettlebench.castings.internal.CastingPainter;
import org.fettlebench.castings.internal.CastingPlacer;
import org.fettlebench.fasteners.HeadSinks;
import org.fettlebench.fasteners.Heads;
import org.fettlebench.fasteners.internal.HeadTables;
import org.fettlebench.fasteners.internal.SinkService;
import org.fettlebench.fits.HoleMethods;
import org.fettlebench.fits.SeatDrawings;
import org.fettlebench.fits.Seats;
import org.fettlebench.fits.Spanners;
import org.fettlebench.fits.internal.HoleMethodTable;
import org.fettlebench.fits.internal.SeatChecker;
import org.fettlebench.fits.internal.SeatPainter;
import org.fettlebench.fits.internal.SpannerTables;
import org.fettlebench.holes.chance.Chances;
import org.fettlebench.holes.chance.MethodEstimates;
import org.fettlebench.holes.correct.Corrections;
import org.fettlebench.holes.correct.HoleMeasuring;
import org.fettlebench.holes.correct.Pilots;
import org.fettlebench.holes.internal.chance.ChanceService;
import org.fettlebench.holes.internal.chance.EstimateService;
import org.fettlebench.holes.internal.correct.CorrectionFinder;
import org.fettlebench.holes.internal.correct.HoleFitter;
import org.fettlebench.holes.internal.correct.PilotChooser;
import org.fettlebench.holes.internal.otherface.FaceMarker;
import org.fettlebench.holes.internal.patterns.EdgeRuleTables;
import org.fettlebench.holes.internal.patterns.PatternPainter;
import org.fettlebench.holes.internal.patterns.PatternsService;
import org.fettlebench.holes.otherface.OtherFaces;
import org.fettlebench.holes.patterns.EdgeRules;
import org.fettlebench.holes.patterns.PatternDrawings;
import org.fettlebench.holes.patterns.Patterns;
import org.fettlebench.kits.ClubMethods;
import org.fettlebench.kits.ErrorFiles;
import org.fettlebench.kits.KitCheck;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.kits.KitReports;
import org.fettlebench.kits.StockFiles;
import org.fettlebench.kits.internal.ClubMethodsService;
import org.fettlebench.kits.internal.EdgeDistanceRule;
import org.fettlebench.kits.internal.ErrorFilesService;
import org.fettlebench.kits.internal.KitCheckService;
import org.fettlebench.kits.internal.KitFilesService;
import org.fettlebench.kits.internal.KitReportsService;
import org.fettlebench.kits.internal.StockFilesService;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.tables.Table;
import org.fettlebench.threads.ThreadClasses;
import org.fettlebench.threads.ThreadLimits;
import org.fettlebench.threads.Threads;
import org.fettlebench.threads.identify.ThreadIdentifier;
import org.fettlebench.threads.internal.ThreadRegistry;
import org.fettlebench.threads.internal.identify.IdentifyService;
import org.fettlebench.threads.internal.strength.MaterialRegistry;
import org.fettlebench.threads.internal.strength.StrengthService;
import org.fettlebench.threads.internal.wires.WireService;
import org.fettlebench.threads.strength.Materials;
import org.fettlebench.threads.strength.ThreadStrength;
import org.fettlebench.threads.wires.MeasuringWires;
import org.fettlebench.tooling.Drills;
import org.fettlebench.tooling.HoleChooser;
import org.fettlebench.tooling.drilled.DrilledHoles;
import org.fettlebench.tooling.internal.DrillRegistry;
import org.fettlebench.tooling.internal.HoleChoice;
import org.fettlebench.tooling.internal.drilled.DrilledHoleService;
import org.fettlebench.tooling.internal.risk.TapRiskService;
import org.fettlebench.tooling.internal.speed.SpeedService;
import org.fettlebench.tooling.internal.work.WorkRegistry;
import org.fettlebench.tooling.risk.TapRisks;
import org.fettlebench.tooling.speed.SpindleSpeeds;
import org.fettlebench.tooling.work.WorkMaterials;
import org.osgi.framework.BundleContext;

/** The suite's own providers, put together without a framework. */
public final class RealTrade {
  /** The tables that the providers carry. */
  public static final FixedTables TABLES =
      FixedTables.carriedBy(
          ThreadRegistry.class,
          HeadTables.class,
          DrillRegistry.class,
          HoleMethodTable.class,
          EdgeRuleTables.class);

  private static final ThreadRegistry REGISTRY = new ThreadRegistry(TABLES, RealTrade::faulty);

  /** The shipped threads. */
  public static final Threads THREADS = REGISTRY;

  /** Their classes. */
  public static final ThreadClasses THREAD_CLASSES = REGISTRY;

  /** The limits in those. */
  public static final ThreadLimits THREAD_LIMITS = REGISTRY;

  /** The strength of threads. */
  public static final ThreadStrength STRENGTH = new StrengthService(REGISTRY);

  /** The shipped materials. */
  public static final Materials MATERIALS = new MaterialRegistry(TABLES, RealTrade::faulty);

  /** Naming threads from measurements. */
  public static final ThreadIdentifier IDENTIFIER = new IdentifyService(REGISTRY, REGISTRY, TABLES);

  /** Measuring over wires. */
  public static final MeasuringWires WIRES = new WireService();

  /** The shipped heads. */
  public static final Heads HEADS =
      new HeadTables(mock(BundleContext.class), TABLES, RealTrade::failed);

  /** The shipped drills. */
  public static final Drills DRILLS = new DrillRegistry(TABLES, RealTrade::faulty);

  /** The choice of holes. */
  public static final HoleChooser HOLES = new HoleChoice(TABLES, REGISTRY, RealTrade::faulty);

  /** How drilled holes come out. */
  public static final DrilledHoles DRILLED = new DrilledHoleService(TABLES, RealTrade::faulty);

  /** The cuts for heads. */
  public static final HeadSinks SINKS =
      new SinkService(mock(BundleContext.class), TABLES, HEADS, RealTrade::failed);

  /** The materials that are worked. */
  public static final WorkMaterials WORK = new WorkRegistry(TABLES, RealTrade::faulty);

  /** Spindle speeds. */
  public static final SpindleSpeeds SPEEDS = new SpeedService(TABLES, WORK, RealTrade::faulty);

  /** Tap risk. */
  public static final TapRisks TAP_RISKS = new TapRiskService(TABLES, WORK, RealTrade::faulty);

  /** The shipped ways of placing a hole. */
  public static final HoleMethods METHODS =
      new HoleMethodTable(mock(BundleContext.class), TABLES, RealTrade::failed);

  /** Spanners of the shipped tables. */
  public static final Spanners SPANNERS =
      new SpannerTables(mock(BundleContext.class), TABLES, RealTrade::failed);

  /** The seat check. */
  public static final Seats SEATS = new SeatChecker();

  /** The drawing of seats. */
  public static final SeatDrawings DRAWINGS = new SeatPainter();

  /** Patterns of holes. */
  public static final Patterns PATTERNS = new PatternsService();

  /** The placing of castings. */
  public static final Castings CASTINGS = new CastingPlacer();

  /** The drawing of castings. */
  public static final CastingDrawings CASTING_DRAWINGS = new CastingPainter();

  /** The drawing of patterns. */
  public static final PatternDrawings PATTERN_DRAWINGS = new PatternPainter();

  /** Rules of edge distance. */
  public static final EdgeRules EDGE_RULES = new EdgeRuleTables(TABLES, RealTrade::faulty);

  /** The choice of pilots. */
  public static final Pilots PILOTS = new PilotChooser();

  /** The fitting of measured holes. */
  public static final HoleMeasuring MEASURING = new HoleFitter();

  /** The correction of holes. */
  public static final Corrections CORRECTIONS = new CorrectionFinder(SEATS);

  /** Marking from the other face. */
  public static final OtherFaces OTHER_FACES = new FaceMarker(SEATS);

  /** The reader of kit and seat files. */
  public static final KitFiles KIT_FILES =
      new KitFilesService(THREADS, HEADS, DRILLS, HOLES, METHODS, SEATS, SPANNERS);

  /** The reader of stock lists. */
  public static final StockFiles STOCK_FILES =
      new StockFilesService(THREADS, HEADS, DRILLS, HOLES, METHODS, SEATS);

  /** Chances over seats. */
  public static final Chances CHANCES = new ChanceService();

  /** What measured errors say. */
  public static final MethodEstimates ESTIMATES = new EstimateService();

  /** Methods as the club measured them. */
  public static final ClubMethods CLUB_METHODS = new ClubMethodsService(METHODS, ESTIMATES);

  /** The lists of measured errors. */
  public static final ErrorFiles ERROR_FILES = new ErrorFilesService(METHODS);

  /** The kit check. */
  public static final KitCheck KIT_CHECK = kitCheck();

  /** The wording of kit reports. */
  public static final KitReports KIT_REPORTS = new KitReportsService();

  private RealTrade() {}

  private static KitCheck kitCheck() {
    KitCheckService check =
        new KitCheckService(
            THREADS, HEADS, DRILLS, HOLES, METHODS, SEATS, CHANCES, ESTIMATES, RealTrade::failed);
    check.addRule(new EdgeDistanceRule(EDGE_RULES));
    return check;
  }

  private static void faulty(Table table, RuntimeException fault) {
    throw fault;
  }

  private static void failed(Object contribution, String doing, Throwable cause) {
    throw new AssertionError(doing, cause);
  }
}
