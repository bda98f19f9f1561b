package org.fettlebench.tooling.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.fettlebench.measure.Length;
import org.fettlebench.testkit.published.PublishedRow;
import org.fettlebench.testkit.published.PublishedTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Drill sizes against printed ones. */
@ExtendWith(OurTooling.Fresh.class)
class PublishedDrillsTest {
  private static PublishedTable table(String file) {
    return PublishedTable.read(PublishedDrillsTest.class, file);
  }

  private static boolean says(PublishedRow row, String words) {
    return row.cell("check_note").contains(words);
  }

  @Test
  void numbers() {
    PublishedTable table = table("drills-number.csv").apart("words", "check_note");
    table.holdEach(PublishedDrillsTest::number);
    List<String> listed = table.rows().stream().map(row -> row.cell("number")).sorted().toList();
    assertEquals(IntStream.rangeClosed(1, 97).mapToObj(String::valueOf).sorted().toList(), listed);
  }

  private static void number(PublishedRow row) {
    Length diameter = OurTooling.drill("No " + row.cell("number")).diameter();
    for (String column :
        List.of(
            "dia_in_units",
            "dia_in_circuitousroot",
            "dia_in_mhb31",
            "dia_in_thread_chart",
            "dia_in_units_interpolated")) {
      row.check(column, diameter.inches());
    }
    row.checkUnless(
        says(row, "toolmex"), "dia_in_toolmex", diameter.inches(), "No 40: .980 for .0980");
    row.checkUnless(
        says(row, "toolmex"), "dia_mm_toolmex", diameter.millimetres(), "No 40: to 0.1 mm");
    if (says(row, "cq ")) {
      row.refuseTo("dia_in_cq", 4, diameter.inches(), "rounded to three places");
    } else {
      row.check("dia_in_cq", diameter.inches());
    }
    row.checkWithin(
        "dia_mm_circuitousroot",
        diameter.millimetres(),
        0.001,
        "No 85: 0.280 mm stands beside 0.0110 in, which is 0.2794 mm");
  }

  @Test
  void letters() {
    table("drills-letter.csv")
        .apart("words", "check_note")
        .holdEach(
            row -> {
              Length diameter = OurTooling.drill(row.cell("letter")).diameter();
              for (String column :
                  List.of(
                      "dia_in_units",
                      "dia_in_cq",
                      "dia_in_toolmex",
                      "dia_in_mhb31",
                      "dia_in_thread_chart")) {
                row.check(column, diameter.inches());
              }
              row.check("dia_mm_toolmex", diameter.millimetres());
            });
  }

  @Test
  void fractions() {
    table("drills-fraction.csv")
        .apart("words", "check_note")
        .holdEach(PublishedDrillsTest::fraction);
  }

  private static void fraction(PublishedRow row) {
    Length diameter = OurTooling.drill(row.cell("fraction")).diameter();
    assertTrue(OurTooling.drills().catalogue().contains(OurTooling.drill(row.cell("fraction"))));
    boolean halfway = says(row, "differently");
    for (String column :
        List.of("dia_in_toolmex", "dia_in_mhb31", "dia_in_thread_chart", "dia_in_circuitousroot")) {
      if (halfway) {
        row.checkWithin(column, diameter.inches(), 1e-4, "halfway between two printed places");
      } else {
        row.check(column, diameter.inches());
      }
    }
    row.check("dia_mm_toolmex", diameter.millimetres());
    row.checkWithin(
        "dia_mm_circuitousroot",
        diameter.millimetres(),
        0.00005 * 25.4 + 0.0005,
        "converted from the inches as printed, to 0.0001 in");
  }

  /** The rules of the rows: steps from a size to a size, of 0.02 and more below 1 mm. */
  @Test
  void metricSteps() {
    List<Length> expected = new ArrayList<>();
    table("drills-metric-series-bs328.csv")
        .apart("who says it", "source")
        .holdEach(row -> row.that("rule", () -> expected.addAll(sizes(row)), "gives no size"));
    List<Length> metric =
        OurTooling.drills().catalogue().stream()
            .filter(drill -> drill.names().stream().anyMatch(name -> name.endsWith(" mm")))
            .map(drill -> drill.diameter())
            .filter(size -> size.millimetres() < 26)
            .toList();
    // The page counts 230, which the three quarters above its last figure make up.
    for (int hundredths : new int[] {2525, 2550, 2575}) {
      expected.add(Length.ofNanometres(hundredths * 10_000L));
    }
    assertEquals(230, expected.size());
    assertEquals(expected.stream().sorted().toList(), metric);
  }

  private static List<Length> sizes(PublishedRow row) {
    int from = (int) Math.round(100 * row.number("from_mm"));
    int to = (int) Math.round(100 * row.number("to_mm"));
    String rule = row.cell("rule");
    return IntStream.rangeClosed(from, to)
        .filter(hundredths -> step(rule, hundredths))
        .mapToObj(hundredths -> Length.ofNanometres(hundredths * 10_000L))
        .toList();
  }

  private static boolean step(String rule, int hundredths) {
    if (rule.startsWith("M*1")) {
      return hundredths % 25 == 0;
    }
    int rest = hundredths % 10;
    return rest == 0 || rule.contains(String.format(java.util.Locale.ROOT, "+0.%02d", rest));
  }
}
