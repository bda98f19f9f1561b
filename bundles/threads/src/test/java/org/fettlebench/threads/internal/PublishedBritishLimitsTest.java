package org.fettlebench.threads.internal;

import static org.fettlebench.threads.internal.Figures.width;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fettlebench.measure.Length;
import org.fettlebench.testkit.published.PublishedRow;
import org.fettlebench.testkit.published.PublishedTable;
import org.fettlebench.threads.DiameterRange;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ThreadSide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;

/** Limits of British threads: ISO 228-1 as printed, BS 93 and BS 84 by their printed formulas. */
@TestInstance(Lifecycle.PER_CLASS)
class PublishedBritishLimitsTest {
  private static final List<String> WHITWORTH =
      List.of("1/8 BSW", "1/4 BSW", "1 BSW", "1/4 BSF", "3/8 x 40 ME", "5/16 BSF", "5/16 BSB");

  private final ThreadRegistry threads = OurThreads.fresh();

  private static PublishedTable table(String file) {
    return PublishedTable.read(PublishedBritishLimitsTest.class, file);
  }

  private LimitsOfThread limits(String designation, String threadClass, ThreadSide side) {
    return Figures.limits(threads, designation, threadClass, side);
  }

  @Test
  void parallelPipe() {
    String sizes = "sizes: held in PublishedBritishSizesTest";
    table("bsp-g-iso228.csv")
        .apart("words", "check_note")
        .apart(sizes, "tpi", "pitch_mm", "height_mm", "major_mm", "effective_mm", "minor_mm")
        .apart(sizes, "major_mm_medh", "minor_mm_medh", "major_mm_freecad")
        .apart(sizes, "major_mm_gost6357_52", "mean_mm_gost6357_52", "minor_mm_gost6357_52")
        .apart("drills: held in tooling", "tap_mm_freecad", "tap_mm_0685")
        .holdEach(this::parallelPipe);
  }

  private void parallelPipe(PublishedRow row) {
    String designation = "G " + row.cell("size");
    LimitsOfThread screwA = limits(designation, "A", ThreadSide.EXTERNAL);
    LimitsOfThread screwB = limits(designation, "B", ThreadSide.EXTERNAL);
    LimitsOfThread nut = limits(designation, "A", ThreadSide.INTERNAL);
    row.checkTo("Td2_A_mm", 3, -width(screwA.effective()));
    row.checkTo("Td2_B_mm", 3, -width(screwB.effective()));
    row.checkTo("Td_mm", 3, -width(screwA.major()));
    row.checkTo("Td_mm", 3, -width(screwB.major()));
    row.checkTo("TD2_mm", 3, width(nut.effective()));
    row.checkTo("TD1_mm", 3, width(nut.minor()));
    var usual = threads.minorOfNut(nut.thread()).orElseThrow();
    row.checkTo("TD1_mm", 3, usual.most().minus(usual.least()).millimetres());
  }

  /** The figure before p and the figure alone are taken out of the printed formula. */
  @Test
  void britishAssociation() {
    table("ba-tolerance-formulas.csv")
        .apart("who says it", "source")
        .holdEach(
            row ->
                row.that("formula_mm", () -> britishAssociation(row), "is not what BA limits are"));
  }

  private boolean britishAssociation(PublishedRow row) {
    String[] numbers = row.cell("numbers").split("-");
    for (int n = Integer.parseInt(numbers[0]); n <= Integer.parseInt(numbers[1]); n++) {
      String threadClass = row.cell("class").equals("all") ? "close" : row.cell("class");
      ThreadSide side = ThreadSide.valueOf(row.cell("side").toUpperCase(Locale.ROOT));
      if (!fits(row, limits(n + " BA", threadClass, side))) {
        return false;
      }
    }
    return true;
  }

  private static boolean fits(PublishedRow row, LimitsOfThread limits) {
    String formula = row.cell("formula_mm");
    if (row.cell("diameter").equals("allowance_all_diameters")) {
      double allowance = Double.parseDouble(formula.replace(" mm", ""));
      return near(allowance, below(limits.thread().major(), limits.major()))
          && near(allowance, below(limits.thread().effective(), limits.effective()))
          && near(allowance, below(limits.thread().minorExternal(), limits.minor()));
    }
    if (formula.startsWith("none")) {
      return limits.major().most().equals(Optional.empty());
    }
    double p = limits.thread().pitch().millimetres();
    double sum =
        Arrays.stream(formula.replaceAll("[()+-]", " ").strip().split("\\s+"))
            .mapToDouble(term -> term(term, p))
            .sum();
    return near(sum, width(Figures.range(limits, row.cell("diameter"))));
  }

  private static double term(String term, double p) {
    return Double.parseDouble(term.replace("p", "")) * (term.endsWith("p") ? p : 1);
  }

  private static boolean near(double one, double other) {
    return Math.abs(one - other) <= 1.1e-6;
  }

  private static double below(Length basic, DiameterRange range) {
    return basic.minus(range.most().orElseThrow()).millimetres();
  }

  /** Shares of T are read out of the printed formula; BS 84 prints each to 0.0001 in. */
  @Test
  void whitworth() {
    table("whitworth-tolerance-formulas.csv")
        .apart("who says it", "source")
        .holdEach(
            row -> {
              if (row.cell("diameter").equals("T")) {
                row.passOver("class", "the unit: it is in every other row");
                row.passOver("side", "the unit: it is in every other row");
                row.passOver("formula_in", "the unit: it is in every other row");
              } else {
                row.that("formula_in", () -> whitworth(row), "is not what BS 84 limits are");
              }
            });
  }

  private boolean whitworth(PublishedRow row) {
    ThreadSide side = ThreadSide.valueOf(row.cell("side").toUpperCase(Locale.ROOT));
    for (String designation : WHITWORTH) {
      for (String threadClass : row.cell("class").split(" ")) {
        LimitsOfThread limits = limits(designation, threadClass, side);
        double toleranceIn = width(Figures.range(limits, row.cell("diameter"))) / 25.4;
        assertEquals(printed(row, limits, threadClass), toleranceIn, 5e-5 + 1e-9, row.toString());
      }
    }
    return true;
  }

  private static double printed(PublishedRow row, LimitsOfThread limits, String threadClass) {
    double major = limits.thread().major().inches();
    double p = limits.thread().pitch().inches();
    double t = 0.002 * Math.cbrt(major) + 0.003 * Math.sqrt(major) + 0.005 * Math.sqrt(p);
    double effective =
        Map.of("close", 2 * t / 3, "medium", t, "free", 1.5 * t, "normal", 1.5 * t)
            .get(threadClass);
    String formula = row.cell("formula_in");
    Matcher root = Pattern.compile("effective tolerance \\+ ([\\d.]+)\\*p\\^.*").matcher(formula);
    if (root.matches()) {
      return effective + Double.parseDouble(root.group(1)) * Math.sqrt(p);
    }
    if (formula.startsWith("0.2p")) {
      double tpi = Math.round(1 / p);
      return 0.2 * p + (tpi >= 26 ? 0.004 : tpi >= 22 ? 0.005 : 0.007);
    }
    assertTrue(
        Map.of("2/3 T", "close", "T", "medium", "3/2 T", "free normal")
            .get(formula)
            .contains(threadClass));
    return effective;
  }
}
