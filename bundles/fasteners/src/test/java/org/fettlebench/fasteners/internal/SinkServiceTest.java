package org.fettlebench.fasteners.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.fettlebench.fasteners.Head;
import org.fettlebench.fasteners.HeadSink;
import org.fettlebench.fasteners.SinkWanted;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthReader;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFile;
import org.fettlebench.threads.ScrewThread;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Cuts for heads against listed ones, and by the geometry of a cone. */
class SinkServiceTest {
  private final List<String> faults = new ArrayList<>();
  private final HeadTables heads =
      new HeadTables(FixedTables.of(HeadTablesTest.shipped()), this::told);
  private final SinkService sinks = sinks(HeadTablesTest.shipped());

  private SinkService sinks(List<Table> tables) {
    return new SinkService(FixedTables.of(tables), heads, this::told);
  }

  private void told(Table table, RuntimeException fault) {
    faults.add(fault.getMessage());
  }

  private static ScrewThread metric(double mm) {
    return HeadTablesTest.thread("M", Length.ofMillimetres(mm));
  }

  private Head head(String style, ScrewThread thread) {
    return heads.find(style, thread).orElseThrow(() -> new AssertionError(style));
  }

  private static SinkWanted wanted(double holeMm, double belowMm, boolean washer) {
    return new SinkWanted(
        Optional.of(Length.ofMillimetres(holeMm)), Length.ofMillimetres(belowMm), washer);
  }

  private HeadSink sink(String style, double mm, SinkWanted wanted) {
    return sinks.of(metric(mm), head(style, metric(mm)), wanted);
  }

  /** Listed cuts and countersunk heads as printed by a second source. */
  @ParameterizedTest(name = "{0} {1} {2}: {3}")
  @CsvFileSource(resources = "/expected/sinks.csv", numLinesToSkip = 2)
  void agreesWithPrint(
      String style, String series, String major, String what, String unit, String printed) {
    LengthUnit in = unit.equals("in") ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
    LengthUnit majorUnit = series.equals("M") ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
    ScrewThread thread = HeadTablesTest.thread(series, LengthReader.read(major, majorUnit));
    Head head = head(style, thread);
    HeadSink sink =
        sinks.of(
            thread, head, new SinkWanted(Optional.empty(), Length.ZERO, what.endsWith("washer")));

    Length ours =
        switch (what) {
          case "head diameter" -> head.acrossCorners();
          case "head height" -> head.height().orElseThrow();
          default -> sink.diameter();
        };

    int point = printed.indexOf('.');
    double half = 0.5 * Math.pow(10, point < 0 ? 0 : point + 1 - printed.length());
    assertEquals(Double.parseDouble(printed), ours.in(in), half + 1e-9);
  }

  @Test
  void coneMeetsTheHoleWhereGeometrySays() {
    // ISO 2009 M4: sharp cone 9.4 at 90°; hole 4.5: (9.4 - 4.5) / 2 = 2.45 deep.
    HeadSink flush = sink("countersunk", 4, wanted(4.5, 0, false));
    assertEquals(HeadSink.Kind.COUNTERSINK, flush.kind());
    assertEquals(9.4, flush.diameter().millimetres(), 1e-9);
    assertEquals(2.45, flush.depth().millimetres(), 1e-6);
    assertEquals(Optional.of(90.0), flush.angleDegrees());
    assertEquals(8.4, flush.head().acrossCorners().millimetres(), 1e-9);
    // Half a millimetre below: a millimetre wider at 90°.
    assertEquals(
        10.4, sink("countersunk", 4, wanted(4.5, 0.5, false)).diameter().millimetres(), 1e-6);
    assertEquals(2.95, sink("countersunk", 4, wanted(4.5, 0.5, false)).depth().millimetres(), 1e-6);
  }

  @Test
  void unifiedConeIsOfEightyTwoDegrees() {
    ScrewThread quarter = HeadTablesTest.thread("UNC", Length.ofInches(0.25));
    HeadSink sink =
        sinks.of(
            quarter,
            head("countersunk", quarter),
            new SinkWanted(Optional.of(Length.ofInches(0.266)), Length.ZERO, false));

    assertEquals(0.477, sink.diameter().inches(), 1e-7);
    // (0.477 - 0.266) / 2 / tan 41° = 0.12136.
    assertEquals(0.12136, sink.depth().inches(), 5e-6);
  }

  @Test
  void capHeadGoesIntoItsListedCounterbore() {
    HeadSink flush = sink("socket-cap", 6, wanted(6.6, 0, false));
    assertEquals(HeadSink.Kind.COUNTERBORE, flush.kind());
    assertEquals(11, flush.diameter().millimetres(), 1e-9);
    assertEquals(6.4, flush.depth().millimetres(), 1e-9);
    assertTrue(
        flush.notes().contains("by the list the head lies 0.40 mm (0.016 in) under the face"),
        flush.notes().toString());
    // The ISO head may be 10.22 when knurled, and is 6 high.
    assertEquals(10.22, flush.leastDiameter().millimetres(), 1e-9);
    assertEquals(7, sink("socket-cap", 6, wanted(6.6, 1, false)).depth().millimetres(), 1e-9);
    assertEquals(15, sink("socket-cap", 6, wanted(6.6, 0, true)).diameter().millimetres(), 1e-9);
    assertEquals(8, sink("socket-cap", 6, wanted(6.6, 0, true)).depth().millimetres(), 1e-9);
  }

  @Test
  void headWithoutAListedCutTakesItsOwnSize() {
    HeadSink cheese = sink("cheese", 6, wanted(6.6, 0.2, false));

    assertEquals(HeadSink.Kind.COUNTERBORE, cheese.kind());
    assertEquals(10, cheese.diameter().millimetres(), 1e-9);
    assertEquals(4.1, cheese.depth().millimetres(), 1e-9);
    assertTrue(cheese.notes().toString().contains("no table lists the cut"));
  }

  @ParameterizedTest
  @CsvSource({"hexagon, 11.5470", "hexagon-nut, 11.5470", "washer, 12"})
  void hexagonsNutsAndWashersBearOnASpotFace(String style, double millimetres) {
    HeadSink sink = sink(style, 6, wanted(6.6, 0, false));

    assertEquals(HeadSink.Kind.SPOT_FACE, sink.kind());
    assertEquals(millimetres, sink.diameter().millimetres(), 1e-4);
    assertEquals(Length.ZERO, sink.depth());
    // With a washer, the wider of the two.
    assertEquals(12, sink(style, 6, wanted(6.6, 0, true)).diameter().millimetres(), 1e-9);
  }

  @Test
  void smallestCutterThatMakesIt() {
    HeadSink sink = sink("socket-cap", 6, wanted(6.6, 0, false));
    Length small = Length.ofMillimetres(10.2);
    Length exact = Length.ofMillimetres(10.22);
    Length large = Length.ofMillimetres(12);

    assertEquals(Optional.of(exact), sink.smallestCutter(List.of(large, small, exact)));
    assertEquals(Optional.empty(), sink.smallestCutter(List.of(small)));
  }

  @Test
  void measuredHeadNeedsNoTable() {
    ScrewThread thread = HeadTablesTest.thread("BA", Length.ofMillimetres(4.7));
    Head measured =
        new Head(
            "measured",
            "2 BA countersunk head as measured",
            "2 BA",
            Optional.empty(),
            Length.ofMillimetres(8.2),
            Optional.empty(),
            Optional.empty(),
            new Source("measured", Standing.MEASURED),
            "",
            Optional.of(90.0));

    HeadSink sink = sinks.of(thread, measured, SinkWanted.FLUSH);

    assertEquals(8.2, sink.diameter().millimetres(), 1e-9);
    assertEquals((8.2 - 4.7) / 2, sink.depth().millimetres(), 1e-6);
    assertTrue(sink.notes().toString().contains("no hole was said"), sink.notes().toString());
    assertTrue(sink.notes().toString().contains("counted as sharp"), sink.notes().toString());
  }

  @Test
  void impossibleCutsAreRefused() {
    MeasureException through =
        assertThrows(MeasureException.class, () -> sink("countersunk", 4, wanted(9.4, 0, false)));
    assertTrue(through.getMessage().contains("fall through"), through.getMessage());
    assertThrows(MeasureException.class, () -> wanted(0, 0, false));
    assertThrows(MeasureException.class, () -> wanted(4, -0.1, false));
    ScrewThread unc = HeadTablesTest.thread("UNC", Length.ofInches(0.25));
    Head cap = head("socket-cap", unc);
    SinkWanted washer = new SinkWanted(Optional.empty(), Length.ZERO, true);
    MeasureException none = assertThrows(MeasureException.class, () -> sinks.of(unc, cap, washer));
    assertTrue(none.getMessage().contains("no table lists a washer"), none.getMessage());
  }

  @Test
  void headWithoutHeightCannotBeSunk() {
    ScrewThread thread = HeadTablesTest.thread("BA", Length.ofMillimetres(4.7));
    Head round = head("round", thread);
    if (round.height().isEmpty()) {
      MeasureException refused =
          assertThrows(MeasureException.class, () -> sinks.of(thread, round, SinkWanted.FLUSH));
      assertTrue(refused.getMessage().contains("measure it"), refused.getMessage());
    } else {
      assertEquals(round.height().get(), sinks.of(thread, round, SinkWanted.FLUSH).depth());
    }
  }

  @Test
  void aClubsCutGoesBeforeTheSuites() throws IOException {
    String text =
        "# kind: head-sinks\n# id: club\n# title: Club\n# source: our cutters\n"
            + "# standing: measured by the club\n# style: socket-cap\n# series: M\n"
            + "major_mm,diameter_mm,depth_mm\n6,10.5,\n";
    List<Table> tables = new ArrayList<>(HeadTablesTest.shipped());
    tables.add(TableFile.read("club.csv", "club", new StringReader(text)));

    HeadSink sink =
        sinks(tables).of(metric(6), head("socket-cap", metric(6)), wanted(6.6, 0, false));

    assertEquals(10.5, sink.diameter().millimetres(), 1e-9);
    assertEquals(6, sink.depth().millimetres(), 1e-9);
    assertTrue(sink.sources().toString().contains("our cutters"));
  }

  @Test
  void aFaultyTableIsReported() throws IOException {
    String text =
        "# kind: head-sinks\n# id: club\n# title: Club\n# source: x\n# standing: published\n"
            + "# style: socket-cap\n# series: M\n# with: nut\n"
            + "major_mm,diameter_mm,depth_mm\n6,5,\n,7,\n6,,\n";
    List<Table> tables = new ArrayList<>(HeadTablesTest.shipped());
    tables.add(TableFile.read("club.csv", "club", new StringReader(text)));

    assertEquals(
        11,
        sinks(tables)
            .of(metric(6), head("socket-cap", metric(6)), wanted(6.6, 0, false))
            .diameter()
            .millimetres());
    assertEquals(1, faults.size());
    assertTrue(faults.get(0).contains("line 10: diameter 5 mm is not above"), faults.get(0));
    assertTrue(faults.get(0).contains("line 11: gives no major"), faults.get(0));
    assertTrue(faults.get(0).contains("line 12: gives no diameter"), faults.get(0));
    assertTrue(faults.get(0).contains("can only be washer"), faults.get(0));
  }

  /** Over a seeded stream: deeper under the face is wider and deeper; the cone keeps its angle. */
  @Test
  void laws() {
    Random random = new Random(3);
    for (int i = 0; i < 200; i++) {
      double mm = List.of(2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0).get(random.nextInt(7));
      double hole = mm * (1 + 0.1 * random.nextDouble());
      double below = random.nextDouble();
      HeadSink flush = sink("countersunk", mm, wanted(hole, 0, false));
      HeadSink sunk = sink("countersunk", mm, wanted(hole, below, false));
      assertEquals(2 * below, sunk.diameter().minus(flush.diameter()).millimetres(), 1e-5);
      assertEquals(below, sunk.depth().minus(flush.depth()).millimetres(), 1e-5);
      assertEquals((sunk.diameter().millimetres() - hole) / 2, sunk.depth().millimetres(), 1e-5);
    }
  }
}
