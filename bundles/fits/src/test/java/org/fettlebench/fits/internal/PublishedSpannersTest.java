package org.fettlebench.fits.internal;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.fettlebench.fits.Spanner;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.testkit.published.PublishedRow;
import org.fettlebench.testkit.published.PublishedTable;
import org.junit.jupiter.api.Test;

/** Heads of spanners and sockets against whole printed tables. */
class PublishedSpannersTest {
  private static final double MM_PER_INCH = 25.4;

  private final SpannerTables spanners =
      new SpannerTables(
          FixedTables.carriedBy(SpannerTables.class),
          (table, fault) -> {
            throw fault;
          });

  private static PublishedTable table(String file) {
    return PublishedTable.read(PublishedSpannersTest.class, file)
        .apart("words", "source_id", "note");
  }

  private Spanner listed(Spanner.Kind kind, double flatsMm) {
    Spanner spanner = spanners.find(kind, flatsMm).orElseThrow();
    assertTrue(spanner.standing().endsWith("(published)"), spanner.standing());
    return spanner;
  }

  @Test
  void ringsInMillimetres() {
    table("ring-spanner-head-od-metric.csv")
        .apart("not of the head", "overall_length_mm")
        .holdEach(
            row -> {
              Spanner ring = listed(Spanner.Kind.RING, row.number("af_mm"));
              row.check("ring_head_od_mm", ring.headDiameterMm());
              row.check("ring_head_height_mm", ring.heightMm().orElseThrow());
              // The remembered rule is for the greatest size; rings of bronze are 0.5 mm wider.
              assertTrue(ring.headDiameterMm() <= 1.5 * row.number("af_mm") + 4.5, ring.title());
            });
  }

  @Test
  void ringsInInches() {
    table("ring-spanner-head-od-inch.csv")
        .apart("words", "standard")
        .holdEach(
            row -> {
              double flats = row.number("wrench_opening_in") * MM_PER_INCH;
              Spanner ring = listed(Spanner.Kind.RING, flats);
              row.check("head_od_max_in", ring.headDiameterMm() / MM_PER_INCH);
              row.checkTo("head_thickness_max_in", 6, ring.heightMm().orElseThrow() / MM_PER_INCH);
              assertTrue(ring.headDiameterMm() <= 1.5 * flats + 4, ring.title());
            });
  }

  @Test
  void sockets() {
    String unseen = "a letter of a figure that was not seen";
    table("spanner-clearances-metric.csv")
        .apart("words", "standard", "size")
        .apart("ISO 273, held in tooling", "hole_dia_mm")
        .apart(unseen, "min_pitch_p_mm", "clearance_a_mm", "clearance_b_mm", "clearance_c_mm")
        .apart("not of its room", "socket_square_drive_mm")
        .holdEach(this::socket);
  }

  private void socket(PublishedRow row) {
    if (row.has("dimension_g_mm")) {
      Spanner socket = listed(Spanner.Kind.SOCKET, row.number("spanner_af_mm"));
      row.check("dimension_g_mm", socket.headDiameterMm());
      row.check("socket_h_mm", socket.heightMm().orElseThrow());
    } else {
      // M3: no circle is printed.
      row.passOver("socket_h_mm", "of no use without the circle");
      row.that(
          "spanner_af_mm",
          () -> spanners.find(Spanner.Kind.SOCKET, row.number("spanner_af_mm")).isEmpty(),
          "is listed all the same");
    }
  }
}
