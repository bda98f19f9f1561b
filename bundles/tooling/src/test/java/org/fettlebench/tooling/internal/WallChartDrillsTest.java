package org.fettlebench.tooling.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fettlebench.tables.Standing;
import org.fettlebench.tables.Table;
import org.fettlebench.testkit.published.PublishedRow;
import org.fettlebench.testkit.published.PublishedTable;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.HoleChooser.PercentWanted;
import org.fettlebench.tooling.ListedDrill;
import org.fettlebench.tooling.TappingChoice;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Where nobody tells a per cent or a material, the drill chosen is that of published lists: every
 * printed row is met within {@link #NEAR_PERCENT} of thread by one of its drills.
 */
@ExtendWith(OurTooling.Fresh.class)
class WallChartDrillsTest {
  private static final double NEAR_PERCENT = 5.5;

  private static TappingChoice usual(ScrewThread thread, Collection<DrillSize> from) {
    PercentWanted wanted = OurTooling.holes().usualPercent("");
    List<TappingChoice> ranked = OurTooling.holes().tapping(thread, wanted, from);
    return ranked.stream()
        .filter(choice -> choice.concern().isEmpty())
        .findFirst()
        .or(() -> ranked.stream().findFirst())
        .orElseThrow(() -> new AssertionError("no drill for " + thread.designation()));
  }

  private static List<PublishedRow> rowsOf(String file) {
    return PublishedTable.read(WallChartDrillsTest.class, file).rows();
  }

  static Stream<Named> rows() {
    List<Named> rows = new ArrayList<>();
    for (PublishedRow row : rowsOf("ba-drills.csv")) {
      rows.add(Named.of(row, row.cell("number") + " BA", "tap_mm", "tap_drill"));
    }
    for (PublishedRow row : rowsOf("me-threads.csv")) {
      rows.add(
          Named.of(
              row, row.cell("size_in") + " x " + row.cell("tpi") + " ME", "tap_mm", "tap_drill"));
    }
    for (PublishedRow row : rowsOf("bsb-26tpi.csv")) {
      rows.add(
          Named.of(row, row.cell("size_in") + " BSB", "tap_mm_ministeam", "tap_drill_ministeam"));
    }
    for (PublishedRow row : rowsOf("bsw-drills.csv")) {
      rows.add(
          Named.of(
              row,
              row.cell("size_in") + " BSW",
              "tap_tt",
              "tap_mm_freecad",
              "tap_mm_mhb",
              "tap_mm_ibe_series1",
              "tap_mm_ibe_series2",
              "tap_mm_ministeam",
              "tap_drill_ministeam"));
    }
    for (PublishedRow row : rowsOf("bsf-drills.csv")) {
      rows.add(
          Named.of(
              row,
              row.cell("size_in") + " BSF",
              "tap_mm_freecad_bs1157",
              "tap_wikipedia",
              "tap_mm_ministeam",
              "tap_drill_ministeam"));
    }
    for (PublishedRow row : rowsOf("metric-tap-drills.csv")) {
      rows.add(
          Named.of(
              row,
              row.cell("designation"),
              "tap_mm_iso2306_freecad",
              "tap_mm_maryland",
              "tap_mm_cq_soft",
              "tap_mm_ibe",
              "tap_mm_engineersedge"));
    }
    for (PublishedRow row : rowsOf("unified-tap-drills.csv")) {
      rows.add(
          Named.of(
              row,
              row.cell("size") + "-" + row.cell("tpi") + " " + row.cell("series"),
              "tap_75pct_drill_chart",
              "tap_drill_mhb",
              "tap_soft_cq",
              "tap_mm_freecad"));
    }
    for (PublishedRow row : rowsOf("bsp-g-iso228.csv")) {
      rows.add(Named.of(row, "G" + row.cell("size"), "tap_mm_freecad", "tap_mm_0685"));
    }
    // Drills are made to 50 mm: G 1 3/4 and G 2 are bored.
    return rows.stream()
        .filter(row -> !row.drills().isEmpty())
        .filter(row -> row.drills().get(0).diameter().millimetres() <= 50);
  }

  /** What a printed row names. */
  record Named(String thread, List<DrillSize> drills) {
    String key() {
      return thread
          + " "
          + drills.stream().map(DrillSize::name).distinct().collect(Collectors.joining(" "));
    }

    /** Returns whether a drill of the row leaves about as much thread as the one chosen. */
    boolean met() {
      ScrewThread of = OurTooling.thread(thread);
      double chosen = usual(of, OurTooling.drills().catalogue()).percentOfThread();
      return drills.stream()
          .mapToDouble(drill -> of.percentOfThread(drill.diameter()))
          .anyMatch(printed -> Math.abs(chosen - printed) <= NEAR_PERCENT);
    }

    static Named of(PublishedRow row, String thread, String... columns) {
      List<DrillSize> drills = new ArrayList<>();
      for (String column : columns) {
        if (row.has(column)) {
          String cell = row.cell(column);
          boolean bareMm = column.startsWith("tap_mm");
          drills.add(
              bareMm ? OurTooling.mm(cell) : OurTooling.printed(cell.replaceAll("mm$", " mm")));
        }
      }
      return new Named(thread, drills);
    }
  }

  /** Rows that are not met, each with the reason. */
  static Map<String, String> exceptions() {
    return rowsOf("wall-chart-exceptions.csv").stream()
        .collect(
            Collectors.toMap(
                row -> row.cell("thread") + " " + row.cell("printed"), row -> row.cell("reason")));
  }

  @Test
  void everyPrintedRowIsMetButThoseWithAReason() {
    Set<String> missed =
        rows()
            .filter(row -> !row.met())
            .map(Named::key)
            .collect(Collectors.toCollection(TreeSet::new));

    assertEquals(new TreeSet<>(exceptions().keySet()), missed);
    assertTrue(rows().count() > 6 * missed.size(), "most rows are met");
  }

  /** Drills that every wall chart of the trade has; 5/32 in is model engineers' habit. */
  @ParameterizedTest
  @CsvSource({
    "2 BA, 5/32 in",
    "0 BA, 5.1 mm",
    "M3, 2.5 mm",
    "M4, 3.3 mm",
    "M5, 4.2 mm",
    "M6, 5.0 mm",
    "M8, 6.8 mm",
    "M10, 8.5 mm",
    "M12, 10.2 mm",
    "M16, 14.0 mm",
    "1/4-20 UNC, No 7",
    "#4-40 UNC, No 43",
    "#8-32 UNC, No 29",
    "#10-32 UNF, No 21",
    "1/2-13 UNC, 27/64 in",
    "1/4 BSF, 5.3 mm",
    "1/4 BSW, 5.1 mm",
    "1/2 BSW, 10.5 mm",
    "5/32 x 40 ME, 3.3 mm",
    "G1/8, 8.8 mm"
  })
  void namesTheDrillOfTheWallChart(String thread, String drill) {
    DrillSize chosen = usual(OurTooling.thread(thread), OurTooling.drills().catalogue()).drill();

    assertTrue(chosen.names().contains(drill), thread + " through " + chosen.names());
  }

  @Test
  void takesTheListedDrillOfThoseHeldAndElseTheNearest() {
    ScrewThread thread = OurTooling.thread("2 BA");
    DrillSize listed = OurTooling.drill("4.0 mm");
    DrillSize nearer = OurTooling.drill("3.95 mm");
    DrillSize far = OurTooling.drill("3.9 mm");

    assertEquals(listed, usual(thread, List.of(far, nearer, listed)).drill());
    assertEquals(nearer, usual(thread, List.of(far, nearer)).drill());
  }

  @Test
  void saysWhoNamesADrill() {
    ListedDrill habit =
        OurTooling.holes().listed(OurTooling.thread("2 BA")).stream()
            .filter(listed -> listed.drill().names().contains("5/32 in"))
            .findFirst()
            .orElseThrow();

    assertEquals(75.2, habit.percentOfThread(), 0.05);
    assertEquals(Standing.COMMON_PRACTICE, habit.sources().get(0).standing());
    assertEquals(List.of(), OurTooling.holes().listed(OurTooling.thread("24 BA")));
  }

  @Test
  void everyRowOfTheTableIsOfAThreadAsTheSuiteWritesIt() {
    Table table = OurTooling.TABLES.ofKind(TappingLists.KIND).get(0);
    for (Table.Row row : table.rows()) {
      String thread = row.requiredText("thread");
      assertEquals(thread, OurTooling.thread(thread).designation());
    }
  }

  /** A nut's limits may allow nearly a full thread, which breaks taps. */
  @Test
  void tooMuchThreadIsAConcernWithinTheLimitsToo() {
    ScrewThread thread = OurTooling.thread("5/16 x 40 ME");
    TappingChoice nearlyFull =
        OurTooling.holes().tapping(thread, 75, List.of(OurTooling.drill("9/32 in"))).get(0);

    assertEquals(98, nearlyFull.percentOfThread(), 0.5);
    assertEquals(
        "98 per cent of thread is above 90, where taps break (common practice, no source)",
        nearlyFull.concern().orElseThrow());
  }
}
