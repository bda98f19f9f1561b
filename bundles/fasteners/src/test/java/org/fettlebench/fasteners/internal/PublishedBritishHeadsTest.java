package org.fettlebench.fasteners.internal;

import static org.fettlebench.fasteners.internal.ListedHead.LARGEST;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.fettlebench.testkit.published.PublishedRow;
import org.fettlebench.testkit.published.PublishedTable;
import org.junit.jupiter.api.Test;

/** Heads and nuts of Whitworth and BA screws against printed rows. */
class PublishedBritishHeadsTest {
  private static PublishedTable table(String file) {
    return PublishedTable.read(PublishedBritishHeadsTest.class, file).apart("words", "source_id");
  }

  @Test
  void britishStandardBolts() {
    table("bs1083-bsw-bsf-bolts.csv")
        .apart("words", "standard", "note")
        .apart("pitches: held in threads", "tpi_bsw", "tpi_bsf")
        .apart(LARGEST, "shank_min_in", "af_min_in", "washer_face_min_in", "head_height_min_in")
        .apart("under the head", "under_head_radius_max_in", "under_head_radius_min_in")
        .holdEach(
            row -> {
              String size = row.cell("size_in");
              row.check("shank_max_in", ListedHead.major("BSW", size).inches());
              for (String series : List.of("BSW", "BSF")) {
                ListedHead head = ListedHead.of("hexagon", series, size);
                row.check("af_max_in", head.flats());
                row.check("corners_max_in", head.corners());
                row.check("washer_face_max_in", head.washerFace());
                row.check("head_height_max_in", head.height());
              }
            });
  }

  @Test
  void britishStandardNuts() {
    table("bs1083-bsw-bsf-nuts.csv")
        .apart("words", "standard")
        .apart(LARGEST, "af_min_in", "washer_face_min_in", "nut_thickness_min_in")
        .apart(LARGEST, "lock_nut_thickness_min_in", "lock_nut_alt_thickness_min_in")
        .apart("not of the nut's room", "squareness_tol_max_in")
        .holdEach(PublishedBritishHeadsTest::britishStandardNut);
  }

  private static void britishStandardNut(PublishedRow row) {
    // Of two prints of the smaller lock nuts the thicker stands; one rounds 0.666 to 0.66.
    boolean thinner =
        row.cell("note").contains("MH31 on lock nut") || row.cell("note").contains("0.66 (MH31");
    for (String series : List.of("BSW", "BSF")) {
      ListedHead nut = ListedHead.of("hexagon-nut", series, row.cell("size_in"));
      row.check("af_max_in", nut.flats());
      row.check("corners_max_in", nut.corners());
      row.check("washer_face_max_in", nut.washerFace());
      row.check("nut_thickness_max_in", nut.height());
      ListedHead lock = ListedHead.of("lock-nut", series, row.cell("size_in"));
      row.checkUnless(thinner, "lock_nut_thickness_max_in", lock.height(), "the thicker stands");
      row.refuse("lock_nut_alt_thickness_max_in", lock.height(), "the thicker stands");
    }
  }

  @Test
  void blackNuts() {
    table("bs916-black-nuts.csv")
        .apart("words", "standard", "note")
        .apart(LARGEST, "af_min_in", "nut_second_column_min_in", "lock_nut_min_in")
        .apart("square nuts are not listed", "corners_max_square_in")
        .apart("its heading was not readable", "nut_first_column_in")
        .holdEach(
            row -> {
              ListedHead nut = ListedHead.of("hexagon-nut", "BSW", row.cell("size_in"));
              row.check("af_max_in", nut.flats());
              row.check("corners_max_hexagon_in", nut.corners());
              row.check("nut_second_column_max_in", nut.height());
              ListedHead lock = ListedHead.of("lock-nut", "BSW", row.cell("size_in"));
              row.check("lock_nut_max_in", lock.height());
            });
  }

  @Test
  void whitworthLargeHexagons() {
    table("whitworth-large-hexagon.csv")
        .apart("words", "series", "note")
        .apart("the decimals again", "head_thickness_fraction_in", "af_fraction_in")
        .apart("the decimals again", "corners_fraction_in")
        .holdEach(
            row -> {
              for (String series : List.of("BSW", "BSF")) {
                ListedHead head = ListedHead.of("large-hexagon", series, row.cell("bolt_dia_in"));
                row.check("head_thickness_in", head.height());
                row.check("af_in", head.flats());
                row.check("corners_in", head.corners());
                // Nut as thick as the bolt's diameter, by the title of the table.
                ListedHead nut =
                    ListedHead.of("large-hexagon-nut", series, row.cell("bolt_dia_in"));
                assertEquals(
                    ListedHead.major("BSW", row.cell("bolt_dia_in")).inches(), nut.height(), 5e-4);
              }
            });
  }

  /** A spanner is marked with the large hexagon of one size and the small one of another. */
  @Test
  void spannersByTheirMarks() {
    table("whitworth-spanner-af.csv")
        .apart("words", "note")
        .holdEach(
            row -> {
              double flats = row.number("af_in");
              row.checkWithin("af_mm", flats * 25.4, 0.01, "11/32 in is 8.731 mm, printed 8.74");
              for (String mark : row.cell("fits_label").split(" and ")) {
                String size = mark.split(" ")[0];
                if (mark.endsWith("BSF")) {
                  near(row, "hexagon", "BSF", size, flats);
                } else if (mark.endsWith("BSW")) {
                  near(row, "large-hexagon", "BSW", size, flats);
                }
              }
            });
  }

  /** The list's sizes are nominal: the hexagon's most is up to 0.006 in away. */
  private static void near(
      PublishedRow row, String style, String series, String size, double flats) {
    double ours = ListedHead.of(style, series, size).flats();
    row.that(
        "fits_label",
        () -> Math.abs(ours - flats) < 0.007,
        style + " of " + size + " " + series + " is " + ours);
  }

  @Test
  void associationHexagons() {
    table("ba-hexagons.csv")
        .apart("words", "confidence", "note")
        .holdEach(
            row -> {
              ListedHead head = ListedHead.of("hexagon", "BA", row.cell("ba_no"));
              ListedHead nut = ListedHead.of("hexagon-nut", "BA", row.cell("ba_no"));
              boolean slip = row.cell("note").contains("printed 0.498");
              row.checkUnless(slip, "af_nominal_in", head.flats(), "a slip of one digit");
              row.checkUnless(slip, "af_nominal_in", nut.flats(), "a slip of one digit");
              // A spanner of 10.5 mm for 0 BA.
              row.check("af_mm", 25.4 * head.flats());
              associationSmaller(row);
            });
  }

  /** The hexagon one size smaller is that of the next number. */
  private static void associationSmaller(PublishedRow row) {
    int number = Integer.parseInt(row.cell("ba_no"));
    if (number > 0 && number <= 11) {
      assertEquals(
          ListedHead.of("hexagon", "BA", String.valueOf(number + 1)).flats(),
          ListedHead.of("small-hexagon", "BA", row.cell("ba_no")).flats(),
          1e-6);
    }
  }

  @Test
  void associationRules() {
    table("ba-hexagon-rules.csv")
        .apart("words", "confidence", "note")
        .holdEach(
            row -> {
              String formula = row.cell("formula");
              if (formula.contains("1.75 x major")) {
                row.that("rule", PublishedBritishHeadsTest::followTheSpannerRule, "is not met");
              } else if (row.cell("rule").startsWith("one size smaller")) {
                double smaller = ListedHead.of("small-hexagon", "BA", "2").flats();
                double three = ListedHead.of("hexagon", "BA", "3").flats();
                row.that("rule", () -> smaller == three, "2 BA has " + smaller);
              } else {
                row.passOver("rule", "one maker's metric hexagons, smaller than ISO: not listed");
              }
            });
  }

  private static boolean followTheSpannerRule() {
    for (int number = 0; number <= 12; number++) {
      double major = ListedHead.major("BA", String.valueOf(number)).inches();
      double flats = ListedHead.of("hexagon", "BA", String.valueOf(number)).flats();
      if (Math.abs(flats - 1.75 * major) > 0.001) {
        return false;
      }
    }
    return true;
  }

  @Test
  void associationRoundHeads() {
    table("ba-round-heads.csv")
        .apart("words", "confidence", "head_form", "note")
        .apart(LARGEST, "head_dia_min_in", "head_depth_min_in")
        .apart("slots", "slot_width_max_in", "slot_width_min_in")
        .holdEach(
            row -> {
              ListedHead head = ListedHead.of("round", "BA", row.cell("ba_no"));
              row.check("head_dia_max_in", head.corners());
              if (row.has("head_depth_max_in")) {
                row.check("head_depth_max_in", head.height());
              }
            });
  }
}
