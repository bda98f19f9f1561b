package org.fettlebench.threads.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fettlebench.measure.Length;
import org.fettlebench.testkit.published.PublishedRow;
import org.fettlebench.testkit.published.PublishedTable;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadSide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;

/** Limits of metric threads against printed ones, to half a unit of the last printed digit. */
@TestInstance(Lifecycle.PER_CLASS)
class PublishedMetricLimitsTest {
  /** Cells that another print contradicts, which is followed. */
  private static final Set<String> CONTRADICTED =
      Set.of(
          // 2.655 - 0.2165 at the flat root rounds to either; threadlib has 2.439.
          "M3 apporo / moonlightbrass chart 6g ext_minor_max_flat_mm",
          "M3 amesweb (ASME B1.13M) 6g ext_minor_max_flat_mm",
          "M3 amesweb (ASME B1.13M) 6h ext_minor_max_flat_mm",
          "M3 amesweb (ASME B1.13M) 4g6g ext_minor_max_flat_mm",
          // ISCAR prints 16.600, which is 16.376 + 0.224.
          "M18 threadlib (Maryland Metrics) 6g int_pitch_max_mm");

  private static final Map<String, String> SCREW =
      Map.of(
          "ext_major_max_mm", "major most",
          "ext_major_min_mm", "major least",
          "ext_pitch_max_mm", "effective most",
          "ext_pitch_min_mm", "effective least",
          "ext_minor_max_flat_mm", "minor most",
          "ext_minor_min_rounded_mm", "minor least");

  private static final Map<String, String> NUT =
      Map.of(
          "int_minor_min_mm", "minor least",
          "int_minor_max_mm", "minor most",
          "int_pitch_min_mm", "effective least",
          "int_pitch_max_mm", "effective most",
          "int_major_min_mm", "major least",
          "int_major_max_mm", "major most");

  private final ThreadRegistry threads = OurThreads.fresh();

  private static PublishedTable table(String file) {
    return PublishedTable.read(PublishedMetricLimitsTest.class, file).apart("words", "check_note");
  }

  @Test
  void limits() {
    table("metric-limits.csv").holdEach(this::limits);
  }

  private void limits(PublishedRow row) {
    String designation = row.cell("designation");
    ScrewThread thread = threads.find(designation).orElseThrow();
    row.checkTo("d_mm", 6, thread.major().millimetres());
    row.checkTo("pitch_mm", 6, thread.pitch().millimetres());
    cells(row, "ext_class", ThreadSide.EXTERNAL, SCREW);
    cells(row, "int_class", ThreadSide.INTERNAL, NUT);
    if (row.has("int_minor_max_mm") && !refused(row, "int_minor_max_mm")) {
      // What a tapping drill is held against is the same.
      var usual = threads.minorOfNut(thread).orElseThrow();
      assertEquals("ISO 965-1 6H", usual.threadClass());
      row.checkTo("int_minor_min_mm", 3, usual.least().millimetres());
      row.checkTo("int_minor_max_mm", 3, usual.most().millimetres());
    }
  }

  private void cells(
      PublishedRow row, String classColumn, ThreadSide side, Map<String, String> columns) {
    if (row.has(classColumn)) {
      LimitsOfThread limits =
          Figures.limits(threads, row.cell("designation"), row.cell(classColumn), side);
      columns.forEach((column, which) -> cell(row, column, Figures.figure(limits, which)));
    }
  }

  private static void cell(PublishedRow row, String column, Length figure) {
    double calculated = figure.millimetres();
    String name = row.cell("designation") + " " + row.cell("source") + " " + row.cell("ext_class");
    if (CONTRADICTED.contains(name + " " + column)) {
      row.checkWithin(column, calculated, 0.0015, "another print is followed");
    } else if (refused(row, column)) {
      row.refuse(column, calculated, row.cell("check_note"));
    } else if (says(row, "rounds the external limits to 0.01")
        && column.matches("ext_(major|pitch).*")) {
      row.checkWithin(column, calculated, 0.005, "threadlib rounds these to 0.01 mm");
    } else {
      // Noughts behind the point are dropped in the list.
      row.checkTo(column, 3, calculated);
    }
  }

  private static boolean says(PublishedRow row, String words) {
    return row.cell("check_note").contains(words);
  }

  /** Whether the row's note calls the cell wrong. */
  private static boolean refused(PublishedRow row, String column) {
    if (says(row, "off: d2max")) {
      // M1.4 x 0.3 has the sizes of a finer pitch.
      return !column.equals("int_major_min_mm");
    }
    return says(row, "off: TD1 ") && column.equals("int_minor_max_mm")
        || says(row, "off: TD2 ") && column.matches("int_(pitch|major)_max_mm")
        || says(row, "off: Td 206") && column.equals("ext_major_min_mm")
        || says(row, "off: dmax") && column.equals("ext_major_max_mm");
  }

  @Test
  void effectiveDiameterOfNuts() {
    table("metric-pitch-dia-tolerance-internal.csv").holdEach(this::effectiveDiameterOfNuts);
  }

  private void effectiveDiameterOfNuts(PublishedRow row) {
    for (String size : row.cell("sizes").split(", ")) {
      ScrewThread thread = ofSizeAndPitch(size, row.cell("pitch_mm"));
      for (String grade : List.of("4", "5", "6")) {
        LimitsOfThread nut = threads.limits(thread, grade + "H").get(0);
        row.check("TD2_" + grade + "H_um", 1000 * Figures.width(nut.effective()));
      }
      if (row.has("EI_G_um")) {
        LimitsOfThread free = threads.limits(thread, "6G").get(0);
        double basicMm = Math.round(thread.effective().millimetres() * 1000) / 1000.0;
        double least = Figures.figure(free, "effective least").millimetres();
        double most = Figures.figure(free, "effective most").millimetres();
        row.check("EI_G_um", 1000 * (least - basicMm));
        row.check("ES_6G_um", 1000 * (most - basicMm));
      }
    }
  }

  private ScrewThread ofSizeAndPitch(String size, String pitch) {
    return threads
        .find(size)
        .filter(coarse -> coarse.pitch().millimetres() == Double.parseDouble(pitch))
        .or(() -> threads.find(size + " x " + pitch))
        .orElseThrow();
  }

  private ScrewThread ofPitch(String pitchMm) {
    return threads.series().stream()
        .filter(series -> series.id().equals("M") || series.id().equals("MF"))
        .flatMap(series -> series.threads().stream())
        .filter(thread -> thread.pitch().millimetres() == Double.parseDouble(pitchMm))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void positionG() {
    table("metric-fundamental-deviation-g.csv")
        .holdEach(
            row -> {
              ScrewThread thread = ofPitch(row.cell("pitch_mm"));
              // Of a grade that every pitch has.
              LimitsOfThread nut = threads.limits(thread, "4G").get(0);
              LimitsOfThread screw = threads.limits(thread, "6g").get(0);
              double major = thread.major().millimetres();
              row.check("EI_G_mm", Figures.figure(nut, "major least").millimetres() - major);
              row.check("EI_G_mm", major - Figures.figure(screw, "major most").millimetres());
            });
  }

  @Test
  void minorDiameterOfNuts() {
    table("metric-minor-dia-tolerance-internal.csv")
        .holdEach(
            row -> {
              ScrewThread thread = ofPitch(row.cell("pitch_mm"));
              for (int grade = 4; grade <= 8; grade++) {
                String column = "TD1_grade" + grade + "_mm";
                if (row.has(column)) {
                  LimitsOfThread nut = threads.limits(thread, grade + "H").get(0);
                  row.check(column, Figures.width(nut.minor()));
                }
              }
            });
  }
}
