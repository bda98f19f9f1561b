package org.fettlebench.threads.internal.strength;

import java.util.List;
import org.fettlebench.testkit.published.PublishedRow;
import org.fettlebench.testkit.published.PublishedTable;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.internal.OurThreads;
import org.fettlebench.threads.internal.ThreadRegistry;
import org.fettlebench.threads.strength.Material;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;

/** Torques and worked examples of bolts against printed ones. */
@TestInstance(Lifecycle.PER_CLASS)
class PublishedTorqueTest {
  private static final double MM2_PER_IN2 = 645.16;

  /** Newtons in 1000 lbf, exactly. */
  private static final double N_PER_KIP = 4448.2216152605;

  private static final double NM_PER_LBF_IN = 0.1129848290276167;

  private final ThreadRegistry threads = OurThreads.fresh();
  private final StrengthService strength = new StrengthService(threads);

  private ScrewThread thread(String designation) {
    return threads.find(designation).orElseThrow();
  }

  private static PublishedTable table(String file) {
    return PublishedTable.read(PublishedTorqueTest.class, file);
  }

  @Test
  void boltExamples() {
    table("bolt-examples.csv")
        .apart("words", "example_id", "source_id", "confidence", "group", "units", "note")
        .holdEach(this::example);
  }

  private void example(PublishedRow row) {
    ScrewThread thread = thread("3/4-16 UNF");
    double preloadN = 25 * N_PER_KIP;
    String name = row.cell("name");
    switch (name) {
      case "thread" -> row.that("value", () -> thread("3/4-16 UNF") != null, "no such thread");
      case "stress area At" -> row.check("value", strength.stressArea(thread).mm2() / MM2_PER_IN2);
      case "proof strength Sp" ->
          row.check("value", grade("grade-5").proofMpa().orElseThrow() / (N_PER_KIP / MM2_PER_IN2));
      case "preload stress" ->
          row.checkWithin(
              "value",
              preloadN / N_PER_KIP / (strength.stressArea(thread).mm2() / MM2_PER_IN2),
              0.02,
              "worked with the area rounded to 0.373");
      case "torque with f = 0.15" ->
          row.checkWithin(
              "value",
              strength.torqueNm(thread, preloadN, 0.15) / NM_PER_LBF_IN,
              1,
              "worked with rounded diameters");
      case "torque with K = 0.2" ->
          row.check("value", strength.torqueByNutFactorNm(thread, preloadN, 0.2) / NM_PER_LBF_IN);
      case "torque" -> {
        // The diameter used is no thread's; the formula alone can be held: K F d.
        double perDiameter =
            strength.torqueByNutFactorNm(thread, 8.4 * N_PER_KIP, 0.20)
                / thread.major().inches()
                / NM_PER_LBF_IN;
        row.check("value", perDiameter * 0.645);
      }
      default -> row.passOver("value", "an input, or stiffness and tests, which are not worked");
    }
  }

  private static Material grade(String id) {
    return new MaterialRegistry(
            OurThreads.TABLES,
            (table, fault) -> {
              throw new AssertionError(table.id(), fault);
            })
        .find(id)
        .orElseThrow();
  }

  /** Every printed factor is allowed, and gives the torque that K F d is: here of 1 N at M10. */
  @Test
  void nutFactors() {
    table("torque-k-factors.csv")
        .apart("words", "source_id", "confidence", "condition", "note")
        .holdEach(
            row ->
                row.checkTo(
                    "k",
                    9,
                    strength.torqueByNutFactorNm(thread("M10"), 1000, row.number("k")) / 10));
  }

  /** Shigley's nut factor over the effective diameter is our torque; the simple one is K F d. */
  @Test
  void torqueFormulas() {
    table("torque-formulas.csv")
        .apart("words", "source_id", "confidence", "note")
        .holdEach(
            row -> {
              String formula = row.cell("formula");
              if (formula.startsWith("T = K F d")) {
                row.that("subject", () -> kFd(0.2) == 0.2, "K F d");
              } else if (formula.contains("sec beta")) {
                row.that("subject", () -> near(shigley(0.15), ours(0.15)), "Shigley's K");
              } else {
                // MIL-HDBK-60 has another form of the same; 1 per cent apart at M10.
                row.that(
                    "subject", () -> Math.abs(handbook(0.15) / ours(0.15) - 1) < 0.02, "another K");
              }
            });
  }

  private double kFd(double factor) {
    return strength.torqueByNutFactorNm(thread("M10"), 1000, factor) / 10;
  }

  private double ours(double friction) {
    return strength.torqueNm(thread("M10"), 1000, friction) / 10;
  }

  private static boolean near(double one, double other) {
    return Math.abs(one - other) < 1e-7;
  }

  /** K = (0.5 dp (tan l + m sec b) / (1 - m tan l sec b) + 0.625 m D) / D of M10. */
  private double shigley(double m) {
    double d = 10;
    double dp = thread("M10").effective().millimetres();
    double tan = 1.5 / (Math.PI * dp);
    double sec = 1 / Math.cos(Math.toRadians(30));
    return (0.5 * dp * (tan + m * sec) / (1 - m * tan * sec) + 0.625 * m * d) / d;
  }

  /** K = (0.5 p / pi + 0.5 m (D - 0.75 p sin a) / sin a + 0.625 m D) / D, a from the axis: 60. */
  private static double handbook(double m) {
    double sin = Math.sin(Math.toRadians(60));
    return (0.5 * 1.5 / Math.PI + 0.5 * m * (10 - 0.75 * 1.5 * sin) / sin + 0.625 * m * 10) / 10;
  }

  /**
   * Recommended torques of a list that says neither factor nor lubrication: each is that of some
   * usual factor at three quarters of the proof load.
   */
  @Test
  void recommendedTorquesNeedUsualFactors() {
    table("torque-suggested-sae.csv")
        .apart("words", "source_id", "confidence", "note")
        .holdEach(
            row -> {
              ScrewThread thread = thread(row.cell("size_in") + " UNC");
              for (String grade : List.of("2", "5", "8")) {
                String column = "grade" + grade + "_lbf_ft";
                row.that(
                    column,
                    () -> {
                      double proof = grade("grade-" + grade).proofMpa().orElseThrow();
                      double load = 0.75 * proof * strength.stressArea(thread).mm2();
                      double unit = strength.torqueByNutFactorNm(thread, load, 0.1) / 0.1;
                      double factor = row.number(column) * 12 * NM_PER_LBF_IN / unit;
                      return factor > 0.09 && factor < 0.30;
                    },
                    "no usual factor gives it");
              }
            });
  }
}
