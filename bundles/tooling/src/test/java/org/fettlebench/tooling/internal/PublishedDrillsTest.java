package org.fettlebench.tooling.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.fettlebench.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Drill sizes against printed ones. */
class PublishedDrillsTest {
  static List<Published> numbers() throws IOException {
    return Published.rows("drills-number.csv");
  }

  @ParameterizedTest
  @MethodSource("numbers")
  void numbers(Published row) {
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
    // No 40: a slip of the printer, .980 for .0980.
    if (!row.wrong("toolmex")) {
      row.check("dia_in_toolmex", diameter.inches());
      row.check("dia_mm_toolmex", diameter.millimetres());
    }
    // Rounded to three places where the note says so.
    if (!row.wrong("cq ")) {
      row.check("dia_in_cq", diameter.inches());
    }
    // No 85: 0.280 mm stands beside 0.0110 in, which is 0.2794 mm.
    row.check("dia_mm_circuitousroot", diameter.millimetres(), 1);
  }

  @Test
  void numbersAreAllThere() throws IOException {
    assertEquals(97, numbers().stream().map(row -> row.cell("number")).distinct().count());
  }

  static List<Published> letters() throws IOException {
    return Published.rows("drills-letter.csv");
  }

  @ParameterizedTest
  @MethodSource("letters")
  void letters(Published row) {
    Length diameter = OurTooling.drill(row.cell("letter")).diameter();
    for (String column :
        List.of(
            "dia_in_units", "dia_in_cq", "dia_in_toolmex", "dia_in_mhb31", "dia_in_thread_chart")) {
      row.check(column, diameter.inches());
    }
    row.check("dia_mm_toolmex", diameter.millimetres());
  }

  static List<Published> fractions() throws IOException {
    return Published.rows("drills-fraction.csv");
  }

  @ParameterizedTest
  @MethodSource("fractions")
  void fractions(Published row) {
    Length diameter = OurTooling.drill(row.cell("fraction")).diameter();
    assertTrue(OurTooling.DRILLS.catalogue().contains(OurTooling.drill(row.cell("fraction"))));
    // 1/32 in and its like lie halfway between two printed places: sources go either way.
    for (String column :
        List.of("dia_in_toolmex", "dia_in_mhb31", "dia_in_thread_chart", "dia_in_circuitousroot")) {
      row.check(column, diameter.inches(), row.wrong("differently") ? 1 : 0.5);
    }
    row.check("dia_mm_toolmex", diameter.millimetres());
    // Converted from the inches as printed, rounded to 0.0001 in.
    row.checkWithin("dia_mm_circuitousroot", diameter.millimetres(), 0.00005 * 25.4 + 0.0005);
  }

  /** The four rules: tenths with +0.02 +0.05 +0.08, with +0.05, alone, and quarters. */
  @Test
  void metricSteps() throws IOException {
    assertEquals(4, Published.rows("drills-metric-series-bs328.csv").size());
    List<Length> metric =
        OurTooling.DRILLS.catalogue().stream()
            .filter(drill -> drill.names().stream().anyMatch(name -> name.endsWith(" mm")))
            .map(drill -> drill.diameter())
            .filter(size -> size.millimetres() < 26)
            .collect(Collectors.toList());
    List<Length> expected = new ArrayList<>();
    for (int hundredths = 20; hundredths < 2600; hundredths++) {
      int rest = hundredths % 10;
      boolean step =
          hundredths < 100
              ? rest == 0 || rest == 2 || rest == 5 || rest == 8
              : hundredths < 300
                  ? rest % 5 == 0
                  : hundredths < 1400 ? rest == 0 : hundredths % 25 == 0;
      if (step) {
        expected.add(Length.ofNanometres(hundredths * 10_000L));
      }
    }
    assertEquals(230, expected.size());
    assertEquals(expected, metric);
  }
}
