package org.fettlebench.tooling.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fettlebench.testkit.published.PublishedRow;
import org.fettlebench.testkit.published.PublishedTable;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.ClearanceChoice;
import org.fettlebench.tooling.ClearanceFit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Clearance holes against printed ones. */
@ExtendWith(OurTooling.Fresh.class)
class PublishedHolesTest {
  private static final String TAPPING = "tapping: held in PublishedTappingTest";

  private static PublishedTable table(String file) {
    return PublishedTable.read(PublishedHolesTest.class, file);
  }

  private static Map<ClearanceFit, ClearanceChoice> clearance(ScrewThread thread) {
    return OurTooling.holes().clearance(thread, OurTooling.drills().catalogue()).stream()
        .collect(Collectors.toMap(ClearanceChoice::fit, Function.identity()));
  }

  @Test
  void metric() {
    table("metric-clearance.csv").apart("words", "check_note").holdEach(this::metric);
  }

  private void metric(PublishedRow row) {
    Map<ClearanceFit, ClearanceChoice> holes = clearance(OurTooling.thread("M" + row.cell("d_mm")));
    double close = holes.get(ClearanceFit.CLOSE).listed().millimetres();
    double medium = holes.get(ClearanceFit.MEDIUM).listed().millimetres();
    double free = holes.get(ClearanceFit.FREE).listed().millimetres();
    row.checkTo("iso273_fine_mm", 6, close);
    row.checkTo("iso273_medium_mm", 6, medium);
    row.checkTo("iso273_coarse_mm", 6, free);
    row.checkTo("bs4186_close_mm", 6, close);
    row.checkTo("cq_close_mm", 6, close);
    boolean freer = row.cell("check_note").contains("medium: ISO 273");
    older(row, freer, "bs4186_medium_mm", medium);
    older(row, freer, "bs4186_free_mm", free);
    older(row, freer, "cq_normal_mm", medium);
    older(row, freer, "cq_loose_mm", free);
  }

  private static void older(PublishedRow row, boolean freer, String column, double ours) {
    if (freer) {
      row.refuseTo(column, 1, ours, "BS 4186 of 1967 is 0.5 mm freer than ISO 273");
    } else {
      row.checkTo(column, 6, ours);
    }
  }

  @Test
  void unified() {
    table("unified-clearance.csv").apart("words", "check_note").holdEach(this::unified);
  }

  private void unified(PublishedRow row) {
    String size = row.cell("size");
    Map<ClearanceFit, ClearanceChoice> holes =
        clearance(OurTooling.thread(size.equals("#0") ? "#0 UNF" : size + " UNC"));
    fit(row, "close", holes.get(ClearanceFit.CLOSE));
    fit(row, "normal", holes.get(ClearanceFit.MEDIUM));
    fit(row, "loose", holes.get(ClearanceFit.FREE));
    // Older lists: their own drill and decimal agree, and their holes are above the screw.
    older(row, "am_nat_close_in", "am_nat_close_drill", holes);
    older(row, "am_nat_free_in", "am_nat_free_drill", holes);
    older(row, "one_size_in_contrails", "one_size_drill_contrails", holes);
  }

  private static void fit(PublishedRow row, String name, ClearanceChoice hole) {
    String column = "b18_2_8_" + name + "_cq";
    String drill = row.cell(column);
    if (drill.startsWith("0.")) {
      row.check(column, hole.listed().inches());
    } else {
      row.that(
          column,
          () -> OurTooling.printed(drill).diameter().equals(hole.listed()),
          "the suite lists " + hole.listed());
    }
    row.checkWithin(
        "b18_2_8_" + name + "_mm_freecad",
        hole.listed().millimetres(),
        row.cell("check_note").contains(name + ": cq") ? 0.06 : 0.0505,
        "rounded to 0.1 mm, 1/4 close and 5/8 loose the wrong way");
  }

  private static void older(
      PublishedRow row, String decimal, String drill, Map<ClearanceFit, ClearanceChoice> ours) {
    if (row.has(decimal)) {
      PublishedTappingTest.decimal(row, decimal, drill);
      double free = ours.get(ClearanceFit.FREE).listed().inches();
      row.that(decimal, () -> row.number(decimal) < free, "is freer than our free hole");
    }
  }

  @Test
  void whitworth() {
    table("bsw-drills.csv")
        .apart("words", "check_note")
        .apart(TAPPING, "tap_tt", "tap_in_tt", "tap_mm_freecad", "tap_mm_mhb")
        .apart(TAPPING, "tap_mm_ibe_series1", "tap_mm_ibe_series2")
        .apart(TAPPING, "tap_mm_ministeam", "tap_drill_ministeam")
        .holdEach(this::whitworth);
  }

  private void whitworth(PublishedRow row) {
    ScrewThread thread = OurTooling.thread(row.cell("size_in") + " BSW");
    ministeam(row, thread);
    if (row.has("clearance_in_tt")) {
      if (!row.cell("size_in").equals("1 1/8")) {
        // 1 9/64 stands there as 1.1405 for 1.1406.
        PublishedTappingTest.decimal(row, "clearance_in_tt", "clearance_tt");
      }
      row.that(
          "clearance_tt",
          () -> ListedDrills.drill(row, "clearance_tt").diameter().inches() > row.number("size_in"),
          "is not above the screw");
      // 3/16 and 5/16 differ by 0.1 and 0.2 mm between the two lists; the other one is taken.
      double medium = clearance(thread).get(ClearanceFit.MEDIUM).listed().inches();
      row.checkWithin("clearance_in_tt", medium, 0.0085, "of two lists one is followed");
    }
  }

  /** The hole in millimetres is that of the suite; the drill beside it is near. */
  private static void ministeam(PublishedRow row, ScrewThread thread) {
    if (row.has("clearance_mm_ministeam")) {
      double medium = clearance(thread).get(ClearanceFit.MEDIUM).listed().millimetres();
      row.checkTo("clearance_mm_ministeam", 6, medium);
      near(row, "clearance_drill_ministeam", medium);
    }
  }

  private static void near(PublishedRow row, String column, double millimetres) {
    if (row.has(column)) {
      double drill = ListedDrills.drill(row, column).diameter().millimetres();
      row.that(column, () -> Math.abs(drill - millimetres) < 0.21, drill + " mm is far off");
    }
  }

  @Test
  void fineWhitworth() {
    table("bsf-drills.csv")
        .apart("words", "check_note")
        .apart(TAPPING, "tap_mm_freecad_bs1157", "tap_wikipedia")
        .apart(TAPPING, "tap_mm_ministeam", "tap_drill_ministeam")
        .holdEach(row -> ministeam(row, OurTooling.thread(row.cell("size_in") + " BSF")));
  }

  @Test
  void brass() {
    table("bsb-26tpi.csv")
        .apart("words", "check_note")
        .apart("sizes: held in threads", "tpi", "tpi_unik")
        .apart("sizes: held in threads", "major_mm_diracdelta", "minor_mm_diracdelta")
        .apart(TAPPING, "tap_mm_ministeam", "tap_drill_ministeam")
        .holdEach(
            row -> {
              ScrewThread thread = OurTooling.thread(row.cell("size_in") + " BSB");
              if (row.has("clearance_mm_ministeam")) {
                double medium = clearance(thread).get(ClearanceFit.MEDIUM).listed().millimetres();
                row.checkWithin(
                    "clearance_mm_ministeam",
                    medium,
                    0.1001,
                    "of two of its lists one is followed");
                near(row, "clearance_drill_ministeam", medium);
              }
            });
  }

  @Test
  void modelEngineer() {
    table("me-threads.csv")
        .apart(TAPPING, "tap_mm", "tap_drill")
        .apart("who lists it", "source")
        .holdEach(
            row -> {
              ScrewThread thread =
                  OurTooling.thread(row.cell("size_in") + " x " + row.cell("tpi") + " ME");
              double medium = clearance(thread).get(ClearanceFit.MEDIUM).listed().millimetres();
              row.checkWithin(
                  "clearance_mm", medium, 0.2001, "the page's ME list is freer at small sizes");
              near(row, "clearance_drill", medium);
            });
  }

  /** Of the lists of BA clearance drills ibls is followed; ministeam is freer. */
  static void britishAssociation(PublishedRow row, ScrewThread thread) {
    Map<ClearanceFit, ClearanceChoice> holes = clearance(thread);
    double medium =
        holes.containsKey(ClearanceFit.MEDIUM)
            ? holes.get(ClearanceFit.MEDIUM).listed().millimetres()
            : Double.NaN;
    row.checkWithin("clearance_mm", medium, 0.11, "ministeam is freer than the list followed");
    if (row.has("clearance_drill")) {
      double drill = ListedDrills.drill(row, "clearance_drill").diameter().millimetres();
      boolean followed = row.cell("source").equals("ibls");
      row.that(
          "clearance_drill",
          () -> Math.abs(drill - medium) < (followed ? 1e-6 : 0.13),
          "the suite lists " + medium);
    }
  }

  /** Another list's one hole is tighter: above the screw, and below our medium hole. */
  @Test
  void oneHoleOfACompanyIsTighterThanOurMedium() {
    table("clearance-holes-single.csv")
        .apart("words", "source_id", "note")
        .holdEach(
            row -> {
              ScrewThread thread = OurTooling.thread(row.cell("screw_size") + " UNC");
              double medium = clearance(thread).get(ClearanceFit.MEDIUM).listed().inches();
              row.check("screw_dia_in", thread.major().inches());
              row.refuse("single_hole_smaller_in", medium, "ASME B18.2.8 is followed");
              row.refuse("single_hole_larger_in", medium, "ASME B18.2.8 is followed");
              assertTrue(row.number("single_hole_smaller_in") > row.number("screw_dia_in"));
              assertTrue(row.number("single_hole_larger_in") < medium, row.toString());
            });
  }

  @Test
  void everyListedHoleIsAboveTheScrew() {
    OurTooling.threads().series().stream()
        .flatMap(series -> series.threads().stream())
        .forEach(
            thread ->
                clearance(thread)
                    .values()
                    .forEach(
                        hole ->
                            assertEquals(
                                1,
                                Integer.signum(hole.listed().compareTo(thread.major()))
                                    + (hole.fit() == ClearanceFit.CLOSE
                                            && hole.listed().equals(thread.major())
                                        ? 1
                                        : 0),
                                hole.toString())));
  }
}
