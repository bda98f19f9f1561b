package org.fettlebench.fasteners.internal;

import static org.fettlebench.fasteners.internal.ListedHead.LARGEST;

import java.util.List;
import org.fettlebench.testkit.published.PublishedRow;
import org.fettlebench.testkit.published.PublishedTable;
import org.junit.jupiter.api.Test;

/** Heads, nuts and washers of metric screws against printed rows. */
class PublishedMetricHeadsTest {
  private static PublishedTable table(String file) {
    return PublishedTable.read(PublishedMetricHeadsTest.class, file)
        .apart("words", "source_id", "note");
  }

  @Test
  void hexagons() {
    table("iso4014-4017-hex-bolts.csv")
        .apart("threads: held in threads", "pitch_mm")
        .apart("not of the head", "thread_length_b_le125_mm", "da_max_mm")
        .apart("washer faces are not listed", "washer_face_c_max_mm", "washer_face_c_min_mm")
        .apart("washer faces are not listed", "washer_face_dw_min_mm")
        .apart(LARGEST, "head_height_k_min_mm", "af_s_min_mm", "wrenching_height_kw_min_mm")
        .holdEach(PublishedMetricHeadsTest::hexagon);
  }

  private static void hexagon(PublishedRow row) {
    row.cell("standard");
    for (String series : List.of("M", "MF")) {
      ListedHead head = ListedHead.of("hexagon", series, row.cell("size"));
      boolean withdrawn = row.cell("size").equals("M14") && row.cell("af_s_max_mm").equals("22");
      row.checkUnless(
          withdrawn, "af_s_max_mm", head.flats(), "the withdrawn DIN 933 has 22 mm at M14");
      row.checkTo("head_height_k_max_mm", 3, head.height());
      // A list of nominal heights mixes in the largest ones, at M18 and M20 those of grade B.
      row.that(
          "head_height_k_nom_mm",
          () ->
              row.number("head_height_k_nom_mm") <= head.height() + 0.14
                  && row.number("head_height_k_nom_mm") > 0.85 * head.height(),
          "ours is " + head.height());
      double corners = head.corners();
      boolean old = row.cell("size").matches("M1[024]") && row.number("af_s_max_mm") >= 16;
      if (old && row.has("corners_e_min_mm") && row.number("corners_e_min_mm") > corners) {
        row.refuse("corners_e_min_mm", corners, "the withdrawn DIN 931 has larger corners");
      } else {
        head.leastCorners(row, "corners_e_min_mm");
      }
    }
  }

  @Test
  void nuts() {
    table("iso4032-hex-nuts.csv")
        .apart("threads: held in threads", "pitch_mm")
        .apart(LARGEST, "af_s_min_mm", "nut_thickness_m_min_mm")
        .holdEach(PublishedMetricHeadsTest::nut);
  }

  private static void nut(PublishedRow row) {
    String standard = row.cell("standard");
    boolean thin = standard.contains("4035");
    ListedHead nut = ListedHead.of(thin ? "lock-nut" : "hexagon-nut", "M", row.cell("size"));
    boolean withdrawn = row.cell("note").contains("17/19/22");
    row.checkUnless(withdrawn, "af_s_max_mm", nut.flats(), "the withdrawn DIN 439 had more");
    row.checkUnless(
        standard.contains("4033"),
        "nut_thickness_m_max_mm",
        nut.height(),
        "nuts of style 2 are higher and not listed");
    nut.leastCorners(row, "corners_e_min_mm");
  }

  @Test
  void socketCaps() {
    table("iso4762-socket-caps.csv")
        .apart("threads: held in threads", "standard", "pitch_mm")
        .apart(LARGEST, "head_dia_dk_min_mm", "head_height_k_min_mm")
        .apart("not of the head's room", "da_max_mm", "hex_socket_nom_mm", "hex_socket_s_max_mm")
        .apart("the same", "hex_socket_s_min_mm", "hex_socket_e_min_mm")
        .apart("the same", "key_engagement_t_min_mm", "wall_w_min_mm")
        .holdEach(
            row -> {
              ListedHead head = ListedHead.of("socket-cap", "M", row.cell("size"));
              boolean plain = row.cell("source_id").equals("BOLTS");
              double diameter = head.corners();
              boolean knurled = plain && row.number("head_dia_dk_max_mm") < diameter - 0.05;
              if (knurled) {
                row.refuseTo("head_dia_dk_max_mm", 2, diameter, "plain: a knurled head is larger");
              } else {
                row.check("head_dia_dk_max_mm", diameter);
              }
              row.checkTo("head_height_k_max_mm", 3, head.height());
            });
  }

  @Test
  void washers() {
    table("iso7089-washers.csv")
        .apart("threads: held in threads", "standard")
        .apart("the hole is not of its room", "hole_d1_max_mm", "hole_d1_min_mm")
        .apart(LARGEST, "od_d2_min_mm", "thickness_h_min_mm")
        .holdEach(
            row -> {
              ListedHead washer = ListedHead.of("washer", "M", row.cell("size"));
              row.checkTo("od_d2_max_mm", 3, washer.corners());
              row.checkTo("thickness_h_max_mm", 3, washer.height());
              row.that(
                  "thickness_h_nom_mm",
                  () ->
                      row.number("thickness_h_nom_mm") < washer.height()
                          && row.number("thickness_h_nom_mm") > 0.8 * washer.height(),
                  "ours is at most " + washer.height());
            });
  }

  @Test
  void cheeseHeads() {
    table("iso1207-cheese-heads.csv")
        .apart("threads: held in threads", "standard")
        .apart("slots", "slot_width_n_mm", "slot_depth_t_min_mm")
        .holdEach(
            row -> {
              ListedHead head = ListedHead.of("cheese", "M", row.cell("size"));
              row.check("head_dia_dk_max_mm", head.corners());
              row.check("head_height_k_max_mm", head.height());
            });
  }
}
