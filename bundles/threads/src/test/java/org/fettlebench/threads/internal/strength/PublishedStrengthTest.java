package org.fettlebench.threads.internal.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.fettlebench.testkit.published.PublishedRow;
import org.fettlebench.testkit.published.PublishedTable;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadForm;
import org.fettlebench.threads.internal.OurThreads;
import org.fettlebench.threads.internal.ThreadRegistry;
import org.fettlebench.threads.strength.Material;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;

/** Areas and strip lengths against printed ones. */
@TestInstance(Lifecycle.PER_CLASS)
class PublishedStrengthTest {
  /** Each is one unit off the rule that all other cells meet, but 5-44, which is a slip. */
  private static final Set<String> NOT_FOLLOWED =
      Set.of(
          "M20 As_mm2_gbt16823",
          "M18x1.5 As_mm2_gbt16823",
          "M10 As_mm2_uis",
          "#6-32 As_in2_mhb31",
          "#6-32 As_in2_shigley",
          "5/16-24 As_in2_mhb31",
          "5/16-24 As_in2_shigley",
          "#5-44 As_in2_shigley");

  private static final double MM2_PER_IN2 = 645.16;

  private final ThreadRegistry threads = OurThreads.fresh();
  private final StrengthService strength = new StrengthService(threads);

  private ScrewThread thread(String designation) {
    return threads.find(designation).orElseThrow();
  }

  private static PublishedTable table(String file) {
    return PublishedTable.read(PublishedStrengthTest.class, file);
  }

  @Test
  void metricStressArea() {
    table("metric-stress-area.csv")
        .apart("words", "check_note")
        .holdEach(
            row -> {
              ScrewThread thread = thread(row.cell("designation"));
              row.checkTo("d_mm", 6, thread.major().millimetres());
              row.checkTo("pitch_mm", 6, thread.pitch().millimetres());
              List.of("iso898_1", "shayona", "bickford", "gbt16823", "uis")
                  .forEach(
                      source ->
                          area(
                              row,
                              row.cell("designation"),
                              "As_mm2_" + source,
                              strength.stressArea(thread).mm2()));
              double root = thread.minorExternal().millimetres();
              row.checkWithin(
                  "minor_area_mm2_shayona",
                  Math.PI / 4 * root * root,
                  root * root / 400,
                  "the list rounds the diameter first; the suite shows no such area");
            });
  }

  /** GB/T 16823.1 rounds d2 and d3 first; UIS writes ISO 898-1's 58.0 as 58.00. */
  private static void area(PublishedRow row, String size, String column, double area) {
    row.checkUnless(
        NOT_FOLLOWED.contains(size + " " + column), column, area, "a unit off the rule, or a slip");
  }

  @Test
  void unifiedStressArea() {
    String sizes = "sizes: held in PublishedSizesTest";
    table("unified-basic.csv")
        .apart("words", "check_note")
        .apart(sizes, "major_in", "pitch_dia_in", "minor_ext_unr_d3_in", "minor_int_D1_in")
        .apart(sizes, "minor_area_in2_mhb31", "minor_area_in2_shigley")
        .holdEach(
            row -> {
              String size = row.cell("size") + "-" + row.cell("tpi");
              ScrewThread thread = thread(size + " " + row.cell("series"));
              double in2 = strength.stressArea(thread).mm2() / MM2_PER_IN2;
              area(row, size, "As_in2_mhb31", in2);
              area(row, size, "As_in2_shigley", in2);
            });
  }

  @Test
  void leastEngagementOfTheNut() {
    table("strip-examples.csv")
        .apart("words", "example_id", "source_id", "confidence", "thread", "result_name", "note")
        .holdEach(
            row -> {
              double perMm =
                  ShearArea.ofNut(
                      ThreadForm.ISO,
                      1.5,
                      row.number("external_major_min_mm"),
                      row.number("internal_pitch_max_mm"));
              double load = row.number("bolt_load_n");
              row.check("result_mm", load / (perMm * row.number("internal_shear_strength_mpa")));
              row.check(
                  "bolt_load_n", row.number("bolt_tensile_mpa") * row.number("stress_area_mm2"));
              row.check("stress_area_mm2", strength.stressArea(thread("M10")).mm2());
            });
  }

  /** Shear over tensile strength: half is taken, below every printed ratio. */
  @Test
  void shearIsCountedLow() {
    Material plain =
        new MaterialRegistry(
                OurThreads.TABLES,
                (table, fault) -> {
                  throw new AssertionError(table.id(), fault);
                })
            .find("en8")
            .orElseThrow();
    assertEquals(plain.tensileMpa() / 2, plain.threadShearMpa());
    table("shear-ratio-rules.csv")
        .apart("words", "source_id", "confidence", "material", "rule", "note")
        .holdEach(
            row -> {
              row.refuse("value_low", 0.5, "half the tensile strength, as FED-STD-H28 counts it");
              row.refuse("value_high", 0.5, "the same");
              assertTrue(row.number("value_low") > 0.5);
            });
  }

  @Test
  void stripFormulas() {
    table("strip-formulas.csv")
        .apart("words", "source_id", "confidence", "symbols", "note")
        .holdEach(
            row -> {
              String subject = row.cell("subject");
              if (subject.startsWith("tensile stress area, inch")) {
                row.that("formula", () -> areaByFormula("1/4-20 UNC", 0.9743), "another area");
              } else if (subject.startsWith("tensile stress area, metric")) {
                row.that("formula", () -> areaByFormula("M6", 0.9382), "another area");
              } else if (subject.startsWith("minimum engagement")) {
                row.that("formula", this::sameAsHandbook, "another least engagement");
              } else {
                row.passOver("formula", "no formula to hold, or one that is not followed");
              }
            });
  }

  private boolean areaByFormula(String designation, double constant) {
    ScrewThread thread = thread(designation);
    double across = thread.major().millimetres() - constant * thread.pitch().millimetres();
    return Math.abs(0.7854 * across * across / strength.stressArea(thread).mm2() - 1) < 1e-3;
  }

  /** Le = 2 At / (pi K (1/2 + 0.57735 n (E - K))): the screw's area with shear half of tension. */
  private boolean sameAsHandbook() {
    double at = 20.1;
    double k = 5.153;
    double e = 5.212;
    double printed = 2 * at / (Math.PI * k * (0.5 + 0.57735 * (e - k)));
    return Math.abs(2 * at / ShearArea.ofScrew(ThreadForm.ISO, 1, e, k) - printed) < 1e-4;
  }
}
