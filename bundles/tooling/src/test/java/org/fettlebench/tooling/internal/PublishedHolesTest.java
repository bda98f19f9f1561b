package org.fettlebench.tooling.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.ClearanceChoice;
import org.fettlebench.tooling.ClearanceFit;
import org.fettlebench.tooling.DrillSize;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Listed holes against printed ones, and recommended tapping drills as a band. */
class PublishedHolesTest {
  private static Map<ClearanceFit, ClearanceChoice> clearance(String designation) {
    return OurTooling.HOLES
        .clearance(OurTooling.thread(designation), OurTooling.DRILLS.catalogue())
        .stream()
        .collect(Collectors.toMap(ClearanceChoice::fit, Function.identity()));
  }

  static List<Published> metricClearance() throws IOException {
    return Published.rows("metric-clearance.csv");
  }

  @ParameterizedTest
  @MethodSource("metricClearance")
  void metricClearance(Published row) {
    Map<ClearanceFit, ClearanceChoice> holes = clearance("M" + row.cell("d_mm"));
    double close = holes.get(ClearanceFit.CLOSE).listed().millimetres();
    double medium = holes.get(ClearanceFit.MEDIUM).listed().millimetres();
    double free = holes.get(ClearanceFit.FREE).listed().millimetres();
    row.check("iso273_fine_mm", close, 1e-6);
    row.check("iso273_medium_mm", medium, 1e-6);
    row.check("iso273_coarse_mm", free, 1e-6);
    row.check("bs4186_close_mm", close, 1e-6);
    row.check("cq_close_mm", close, 1e-6);
    // M12, M14, M16: BS 4186 of 1967 is 0.5 mm freer than ISO 273.
    if (!row.wrong("medium: ISO 273")) {
      row.check("bs4186_medium_mm", medium, 1e-6);
      row.check("bs4186_free_mm", free, 1e-6);
      row.check("cq_normal_mm", medium, 1e-6);
      row.check("cq_loose_mm", free, 1e-6);
    }
  }

  static List<Published> unifiedClearance() throws IOException {
    return Published.rows("unified-clearance.csv");
  }

  @ParameterizedTest
  @MethodSource("unifiedClearance")
  void unifiedClearance(Published row) {
    String size = row.cell("size");
    String designation = size.equals("#0") ? "#0 UNF" : size + " UNC";
    Map<ClearanceFit, ClearanceChoice> holes = clearance(designation);
    check(row, "close", holes.get(ClearanceFit.CLOSE));
    check(row, "normal", holes.get(ClearanceFit.MEDIUM));
    check(row, "loose", holes.get(ClearanceFit.FREE));
  }

  private static void check(Published row, String name, ClearanceChoice hole) {
    String drill = row.cell("b18_2_8_" + name + "_cq");
    if (drill.startsWith("0.")) {
      row.check("b18_2_8_" + name + "_cq", hole.listed().inches());
    } else {
      assertEquals(OurTooling.printed(drill).diameter(), hole.listed(), row.toString());
    }
    // 1/4 close and 5/8 loose: 6.747 and 18.653 mm stand there as 6.8 and 18.6.
    double tolerance = row.wrong(name + ": cq") ? 0.06 : 0.0505;
    row.checkWithin("b18_2_8_" + name + "_mm_freecad", hole.listed().millimetres(), tolerance);
  }

  static List<Published> bsw() throws IOException {
    return Published.rows("bsw-drills.csv");
  }

  @ParameterizedTest
  @MethodSource("bsw")
  void whitworth(Published row) {
    ScrewThread thread = OurTooling.thread(row.cell("size_in") + " BSW");
    band(thread, row, "tap_mm_freecad", 77, 87);
    band(thread, row, "tap_mm_mhb", 77, 87);
    band(thread, row, "tap_mm_ministeam", 60, 87);
    double medium =
        clearance(thread.designation()).containsKey(ClearanceFit.MEDIUM)
            ? clearance(thread.designation()).get(ClearanceFit.MEDIUM).listed().millimetres()
            : Double.NaN;
    row.checkWithin("clearance_mm_ministeam", medium, 1e-6);
    // 3/16 and 5/16 differ by 0.1 and 0.2 mm between the two lists; the other one is taken.
    if (row.has("clearance_in_tt")) {
      row.checkWithin("clearance_in_tt", medium / 25.4, 0.0085);
    }
  }

  static List<Published> bsf() throws IOException {
    return Published.rows("bsf-drills.csv");
  }

  @ParameterizedTest
  @MethodSource("bsf")
  void fineWhitworth(Published row) {
    ScrewThread thread = OurTooling.thread(row.cell("size_in") + " BSF");
    // The note names the drills that are outside what BS 1157 states.
    if (!row.wrong("freecad drill gives")) {
      band(thread, row, "tap_mm_freecad_bs1157", 77, 87);
    }
    row.checkWithin(
        "clearance_mm_ministeam",
        row.has("clearance_mm_ministeam")
            ? clearance(thread.designation()).get(ClearanceFit.MEDIUM).listed().millimetres()
            : 0,
        1e-6);
  }

  private static void band(
      ScrewThread thread, Published row, String column, double least, double most) {
    if (row.has(column)) {
      within(thread, OurTooling.mm(row.cell(column)), least, most);
    }
  }

  private static void within(ScrewThread thread, DrillSize drill, double least, double most) {
    double percent = thread.percentOfThread(drill.diameter());
    // Half a per cent for the rounding of the stated band.
    assertTrue(
        percent >= least - 0.5 && percent <= most + 0.5,
        thread.designation() + " with " + drill.name() + " leaves " + percent);
  }

  static List<Published> ba() throws IOException {
    return Published.rows("ba-drills.csv");
  }

  @ParameterizedTest
  @MethodSource("ba")
  void britishAssociation(Published row) {
    ScrewThread thread = OurTooling.thread(row.cell("number") + " BA");
    // Recommendations for small numbers stray far: from 58 to 100 per cent.
    if (row.has("tap_mm")) {
      within(thread, OurTooling.mm(row.cell("tap_mm")), 58, 100);
    }
    if (row.has("tap_drill") && row.cell("source").equals("ministeam")) {
      within(thread, OurTooling.printed(row.cell("tap_drill")), 70, 90);
    }
    if (row.has("clearance_drill") && row.cell("source").equals("ibls")) {
      assertEquals(
          OurTooling.printed(row.cell("clearance_drill")).diameter(),
          clearance(thread.designation()).get(ClearanceFit.MEDIUM).listed());
    }
  }

  static List<Published> metricTaps() throws IOException {
    return Published.rows("metric-tap-drills.csv");
  }

  @ParameterizedTest
  @MethodSource("metricTaps")
  void metricTaps(Published row) {
    ScrewThread thread = OurTooling.thread(row.cell("designation"));
    // Drill = major - pitch and its rounding: 77 per cent and a little either way.
    band(thread, row, "tap_mm_iso2306_freecad", 72, 83);
    band(thread, row, "tap_mm_maryland", 72, 83);
    band(thread, row, "tap_mm_cq_hard", 44, 58);
  }

  static List<Published> unifiedTaps() throws IOException {
    return Published.rows("unified-tap-drills.csv");
  }

  @ParameterizedTest
  @MethodSource("unifiedTaps")
  void unifiedTaps(Published row) {
    ScrewThread thread =
        OurTooling.thread(row.cell("size") + "-" + row.cell("tpi") + " " + row.cell("series"));
    if (row.has("tap_75pct_drill_chart")) {
      within(thread, OurTooling.printed(row.cell("tap_75pct_drill_chart")), 65, 84);
      within(thread, OurTooling.printed(row.cell("tap_50pct_drill_chart")), 43, 68);
    }
    if (row.has("tap_drill_mhb")) {
      within(thread, OurTooling.printed(row.cell("tap_drill_mhb")), 65, 84);
    }
  }

  static List<Published> percents() throws IOException {
    return Published.rows("percent-thread-mhb31.csv").stream()
        // 4-36 is in no series here.
        .filter(row -> !row.cell("tpi").equals("36"))
        .toList();
  }

  /** The convention behind a printed per cent. */
  @ParameterizedTest
  @MethodSource("percents")
  void perCentOfThread(Published row) {
    ScrewThread thread = OurTooling.thread(row.cell("size") + "-" + row.cell("tpi"));
    if (row.wrong("does not match drill 46")) {
      // The printed decimal belongs to another drill than the printed number.
      return;
    }
    double percent =
        thread.percentOfThread(
            OurTooling.printed(row.cell("drill").replace("mm", " mm")).diameter());
    double halfDigitOfDrill = 100 * 0.00005 / (1.299 / row.number("tpi"));
    row.checkWithin("percent_thread", percent, 0.5 + halfDigitOfDrill);
  }
}
