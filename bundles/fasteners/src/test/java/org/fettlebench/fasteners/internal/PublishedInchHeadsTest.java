package org.fettlebench.fasteners.internal;

import static org.fettlebench.fasteners.internal.ListedHead.LARGEST;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.fettlebench.testkit.published.PublishedTable;
import org.junit.jupiter.api.Test;

/** Heads and nuts of Unified screws, and spanners for them, against printed rows. */
class PublishedInchHeadsTest {
  private static PublishedTable table(String file) {
    return PublishedTable.read(PublishedInchHeadsTest.class, file).apart("words", "source_id");
  }

  @Test
  void capScrews() {
    table("asme-b18-2-1-hex-cap-screws.csv")
        .apart("words", "standard", "note")
        .apart(LARGEST, "body_min_in", "af_min_in", "corners_min_in", "head_height_min_in")
        .apart(LARGEST, "wrenching_height_min_in")
        .apart("not of the head", "thread_length_le6in_in", "runout_fim_in")
        .holdEach(
            row -> {
              String size = row.cell("size");
              row.check("body_max_in", ListedHead.major("UNC", size).inches());
              for (String series : List.of("UNC", "UNF")) {
                ListedHead head = ListedHead.of("hexagon", series, size);
                row.check("af_max_in", head.flats());
                row.check("corners_max_in", head.corners());
                row.check("head_height_max_in", head.height());
                head.nominal(row, "af_basic_in", head.flats());
                row.that(
                    "head_height_basic_in",
                    () -> row.number("head_height_basic_in") < head.height(),
                    "is above the most");
              }
            });
  }

  @Test
  void socketCaps() {
    table("asme-b18-3-socket-caps.csv")
        .apart("words", "standard", "note")
        .apart(LARGEST, "body_min_in", "head_dia_min_in", "head_height_min_in")
        .apart(
            "not of the head's room", "hex_socket_nom_in", "key_engagement_min_in", "wall_min_in")
        .holdEach(
            row -> {
              ListedHead head = ListedHead.of("socket-cap", "UNC", row.cell("size"));
              row.check("body_max_in", ListedHead.major("UNC", row.cell("size")).inches());
              row.check("head_dia_max_in", head.corners());
              row.check("head_height_max_in", head.height());
            });
  }

  @Test
  void machineScrews() {
    table("asme-hex-machine-screws.csv")
        .apart("words", "standard", "note")
        .apart(LARGEST, "af_min_in", "corners_min_in", "large_af_min_in", "large_corners_min_in")
        .apart(LARGEST, "head_height_min_in")
        .apart("slots", "slot_width_max_in", "slot_width_min_in")
        .apart("slots", "slot_depth_max_in", "slot_depth_min_in")
        .holdEach(
            row -> {
              String size = row.cell("size");
              row.check("dia_in", ListedHead.major("UNC", size).inches());
              ListedHead head = ListedHead.of("machine-hexagon", "UNC", size);
              row.check("af_max_in", head.flats());
              row.check("head_height_max_in", head.height());
              if (row.has("large_af_max_in")) {
                ListedHead large = ListedHead.of("large-machine-hexagon", "UNC", size);
                row.check("large_af_max_in", large.flats());
                row.check("head_height_max_in", large.height());
              }
            });
  }

  @Test
  void nuts() {
    table("asme-hex-nuts.csv")
        .apart("words", "note")
        .apart(LARGEST, "af_min_in", "corners_min_in", "nut_thickness_min_in")
        .apart("not of the nut's room", "runout_fim_in")
        .holdEach(
            row -> {
              boolean machine = row.cell("standard").contains("machine");
              ListedHead nut =
                  ListedHead.of(machine ? "machine-nut" : "hexagon-nut", "UNC", row.cell("size"));
              row.check("af_max_in", nut.flats());
              row.check("corners_max_in", nut.corners());
              row.check("nut_thickness_max_in", nut.height());
              nut.nominal(row, "af_basic_in", nut.flats());
              row.that(
                  "nut_thickness_basic_in",
                  () -> row.number("nut_thickness_basic_in") < nut.height(),
                  "is above the most");
            });
  }

  /** Every hexagon that we list with a spanner's size goes into its opening. */
  @Test
  void hexagonsGoIntoTheirSpanners() {
    table("wrench-openings-inch.csv")
        .apart("words", "standard", "note")
        .holdEach(
            row -> {
              double size = row.number("wrench_size_in");
              double largest =
                  List.of(
                          "#4", "#6", "#10", "1/4", "5/16", "3/8", "7/16", "1/2", "9/16", "5/8",
                          "3/4", "7/8", "1")
                      .stream()
                      .mapToDouble(one -> ListedHead.of("hexagon-nut", "UNC", one).flats())
                      .filter(flats -> Math.abs(flats - size) < 0.002)
                      .max()
                      .orElse(size);
              row.checkWithin("max_nut_af_in", largest, 0.0011, "0.8125 in is rounded either way");
              row.that("opening_min_in", () -> largest < row.number("opening_min_in"), "is tight");
              // MH31 p1688 note a: 1.005 W + 0.001, and 0.005 W + 0.004 more.
              row.checkWithin(
                  "opening_min_in",
                  1.005 * size + 0.001,
                  0.0016,
                  "rounded either way; 5/16 in two");
              row.checkWithin(
                  "opening_max_in", 1.01 * size + 0.005, 0.0021, "rounded either way; 5/16 in two");
            });
  }

  /**
   * The rule and its two examples agree with one another and with the 3/8 in hexagon nut of #10.
   */
  @Test
  void rulesOfSpannerOpenings() {
    table("wrench-opening-rules.csv")
        .apart("words", "note")
        .holdEach(
            row -> {
              String formula = row.cell("formula");
              switch (row.cell("rule")) {
                case "minimum wrench opening (inch)" ->
                    row.that("rule", () -> formula.equals("1.005 W + 0.001"), "is another");
                case "tolerance on wrench opening (inch)" ->
                    row.that("rule", () -> formula.startsWith("(0.005 W + 0.004)"), "is another");
                case "3/8 wrench example" ->
                    row.that("rule", () -> opens(formula, 0.375), "is not by the rule");
                default -> row.that("rule", () -> opens(formula, 1.5), "is not by the rule");
              }
            });
    assertEquals(0.375, ListedHead.of("machine-nut", "UNC", "#10").flats(), 5e-4);
  }

  /** {@code opening 0.378 to 0.384}, to half a unit of the last digit. */
  private static boolean opens(String example, double size) {
    String[] words = example.split("[ ,]+");
    double least = 1.005 * size + 0.001;
    return Math.abs(Double.parseDouble(words[1]) - least) <= 5.1e-4
        && Math.abs(Double.parseDouble(words[3]) - (least + 0.005 * size + 0.004)) <= 5.1e-4;
  }
}
