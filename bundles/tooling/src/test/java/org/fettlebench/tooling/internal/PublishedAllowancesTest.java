package org.fettlebench.tooling.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthReader;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.ClearanceChoice;
import org.fettlebench.tooling.ClearanceFit;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.HoleChooser.PercentWanted;
import org.fettlebench.tooling.TappingChoice;
import org.fettlebench.tooling.ThreadDepth;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Oversizes, per cents and recommended drills of British and pipe threads against printed rows. */
class PublishedAllowancesTest {
  private static Map<ClearanceFit, ClearanceChoice> clearance(String designation) {
    return OurTooling.HOLES
        .clearance(OurTooling.thread(designation), OurTooling.DRILLS.catalogue())
        .stream()
        .collect(Collectors.toMap(ClearanceChoice::fit, Function.identity()));
  }

  static List<Published> oversizes() throws IOException {
    return Published.rows("drilled-hole-oversize.csv").stream()
        .filter(row -> row.has("oversize_mean_in"))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("oversizes")
  void oversizeOfADrilledHole(Published row) {
    Length drill = LengthReader.read(row.cell("drill_dia_from_in"), LengthUnit.INCH);
    DrillSize size = OurTooling.DRILLS.ofDiameter(drill);
    // A thread of which that drill leaves 60 per cent, whatever it may be.
    TappingChoice choice =
        OurTooling.THREADS.series().stream()
            .flatMap(series -> series.threads().stream())
            .filter(thread -> within(thread.percentOfThread(drill), 20, 100))
            .flatMap(thread -> OurTooling.HOLES.tapping(thread, 60, List.of(size)).stream())
            .findFirst()
            .orElseThrow();

    row.check("oversize_mean_in", choice.oversize().orElseThrow().inches(), 1e-3);
  }

  private static boolean within(double percent, double least, double most) {
    return percent >= least && percent <= most;
  }

  static List<Published> singleHoles() throws IOException {
    return Published.rows("clearance-holes-single.csv");
  }

  /** Another list's one hole is tighter: above the screw, and below our medium hole. */
  @ParameterizedTest
  @MethodSource("singleHoles")
  void oneHoleOfACompanyIsTighterThanOurMedium(Published row) {
    double medium =
        clearance(row.cell("screw_size") + " UNC").get(ClearanceFit.MEDIUM).listed().inches();

    assertTrue(row.number("single_hole_smaller_in") > row.number("screw_dia_in"), row.toString());
    assertTrue(row.number("single_hole_larger_in") < medium, row + " medium " + medium);
  }

  static List<Published> habits() throws IOException {
    return Published.rows("engagement-recommendations.csv").stream()
        .filter(row -> row.cell("source").startsWith("OSG"))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("habits")
  void perCentIsTheMiddleOfTheRangePrinted(Published row) {
    boolean free = row.cell("material_group").equals("free cutting");
    String use = row.cell("use");
    ThreadDepth depth =
        use.startsWith("deep")
            ? ThreadDepth.DEEP
            : use.startsWith("thin") ? ThreadDepth.THIN : ThreadDepth.USUAL;
    List<String> materials =
        free
            ? List.of(
                "aluminium", "brass", "bronze", "cast iron", "copper", "mild steel", "tool steel")
            : List.of("cast steel", "drop forging", "Monel", "nickel steel", "stainless steel");
    for (String material : materials) {
      PercentWanted wanted = OurTooling.HOLES.usualPercent(material, depth);
      assertEquals(
          (row.number("percent_from") + row.number("percent_to")) / 2, wanted.percent(), material);
    }
  }

  static List<Published> modelEngineer() throws IOException {
    // 3/8 x 32 with drill Q would leave 107 per cent: a slip of that list, told in docs/sources.md.
    return Published.rows("me-threads.csv").stream()
        .filter(row -> !(row.cell("source").equals("ibls") && row.cell("tap_drill").equals("Q")))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("modelEngineer")
  void modelEngineerDrills(Published row) {
    ScrewThread thread = OurTooling.thread(row.cell("size_in") + " x " + row.cell("tpi") + " ME");
    recommended(thread, row, 60, 103);
  }

  static List<Published> brass() throws IOException {
    return Published.rows("bsb-26tpi.csv").stream()
        .filter(row -> row.has("tap_mm_ministeam"))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("brass")
  void brassThreadDrills(Published row) {
    ScrewThread thread = OurTooling.thread(row.cell("size_in") + " BSB");
    double percent = percent(thread, row.cell("tap_mm_ministeam"));
    assertTrue(within(percent, 55, 103), row + " leaves " + percent);
  }

  static List<Published> pipe() throws IOException {
    return Published.rows("bsp-g-iso228.csv");
  }

  /** G1/16: 6.6 and 6.8 mm are recommended; all leave most of the thread. */
  @ParameterizedTest
  @MethodSource("pipe")
  void pipeThreadDrills(Published row) {
    ScrewThread thread = OurTooling.thread("G" + row.cell("size"));
    for (String column : List.of("tap_mm_freecad", "tap_mm_0685")) {
      if (row.has(column)) {
        double percent = percent(thread, row.cell(column));
        assertTrue(within(percent, 70, 100.5), column + " of " + row + " leaves " + percent);
      }
    }
  }

  private static double percent(ScrewThread thread, String mm) {
    return thread.percentOfThread(OurTooling.mm(mm).diameter());
  }

  private static void recommended(ScrewThread thread, Published row, double least, double most) {
    if (row.has("tap_mm")) {
      double percent = percent(thread, row.cell("tap_mm"));
      assertTrue(within(percent, least, most), row + " leaves " + percent);
    }
    if (row.has("tap_drill")) {
      double percent = thread.percentOfThread(OurTooling.printed(row.cell("tap_drill")).diameter());
      assertTrue(within(percent, least, most), row + " leaves " + percent);
    }
  }
}
