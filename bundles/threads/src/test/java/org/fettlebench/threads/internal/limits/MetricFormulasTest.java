package org.fettlebench.threads.internal.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.tables.Table;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadSide;
import org.fettlebench.threads.internal.OurThreads;
import org.fettlebench.threads.internal.ThreadRegistry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The tables of ISO 965-1 against the standard's formulas, and what stands where it has no row. */
@TestInstance(Lifecycle.PER_CLASS)
class MetricFormulasTest {
  /** A step of R40 and the rounding to a whole micrometre. */
  private static final double STEP = Math.pow(10, 1 / 40.0) * 1.005;

  private final ThreadRegistry threads = OurThreads.fresh();

  private static List<Table.Row> rows(String kind) {
    return OurThreads.TABLES.ofKind(kind).stream()
        .filter(table -> table.id().equals("ISO 965-1"))
        .flatMap(table -> table.rows().stream())
        .toList();
  }

  @Test
  void everyToleranceIsWithinAStepOfItsFormula() {
    List<String> off = new ArrayList<>();
    int cells = 0;
    for (Table.Row row : rows("thread-tolerances")) {
      for (int grade = 3; grade <= 9; grade++) {
        Optional<Double> printed = row.number("grade_" + grade).map(Number::doubleValue);
        if (printed.isPresent()) {
          cells++;
          double ratio = printed.get() / formula(row, grade);
          // R40 rounds by up to half a step before the step that a table may be off.
          if (!(ratio < STEP * 1.03 && ratio > 1 / (STEP * 1.03))) {
            off.add(
                row.requiredText("quantity") + " " + row.requiredNumber("pitch_mm") + " " + grade);
          }
        }
      }
    }
    assertEquals(List.of(), off);
    assertTrue(cells > 500, "cells " + cells);
  }

  /** Formulas of ISO 965-1 in micrometres; shares of grade 6 by grade. */
  private static double formula(Table.Row row, int grade) {
    double p = row.requiredNumber("pitch_mm").doubleValue();
    double share = Math.pow(10, (grade - 6) / 10.0);
    return switch (row.requiredText("quantity")) {
      case "Td" -> share * (180 * Math.cbrt(p * p) - 3.15 / Math.sqrt(p));
      case "TD1" -> share * (p < 1 ? 433 * p - 190 * Math.pow(p, 1.22) : 230 * Math.pow(p, 0.7));
      case "Td2" -> share * effective(row, p);
      case "TD2" -> 1.32 * share * effective(row, p);
      default -> throw new AssertionError(row.requiredText("quantity"));
    };
  }

  private static double effective(Table.Row row, double p) {
    double over = row.requiredNumber("over_mm").doubleValue();
    double to = row.requiredNumber("to_mm").doubleValue();
    return 90 * Math.pow(p, 0.4) * Math.pow(Math.sqrt(over * to), 0.1);
  }

  /** 50 + 11 P, 30 + 11 P, 15 + 11 P (ISO 965-1), but for e below 0.8, printed less. */
  @Test
  void everyDeviationIsNearItsFormula() {
    for (Table.Row row : rows("thread-deviations")) {
      double p = row.requiredNumber("pitch_mm").doubleValue();
      near(row, "g_um", 15 + 11 * p, 3);
      near(row, "f_um", 30 + 11 * p, 3);
      near(row, "e_um", 50 + 11 * p, p < 0.8 ? 7 : 3);
    }
  }

  private static void near(Table.Row row, String column, double formula, double within) {
    row.number(column)
        .ifPresent(printed -> assertEquals(formula, printed.doubleValue(), within, column));
  }

  /** From grade to grade four steps of R40, from screw to nut five: in every row of the tables. */
  @Test
  void gradesRunBySteps() {
    for (Table.Row row : rows("thread-tolerances")) {
      String quantity = row.requiredText("quantity");
      if (quantity.endsWith("2")) {
        double six = row.number("grade_6").map(Number::doubleValue).orElse(Double.NaN);
        for (int grade = 3; grade <= 9; grade++) {
          Optional<Double> printed = row.number("grade_" + grade).map(Number::doubleValue);
          if (printed.isPresent() && !Double.isNaN(six)) {
            assertEquals(
                printed.get(),
                PreferredNumbers.r40(six, 4 * (grade - 6)),
                quantity + " " + row.requiredNumber("pitch_mm") + " grade " + grade);
          }
        }
      }
    }
  }

  /** Rows of ISO 965-1 above 90 mm, from memory: no table here has them. */
  @ParameterizedTest
  @CsvSource({
    "M100x2, 3, 95, 0", "M100x2, 4, 118, 160", "M100x2, 6, 190, 250", "M100x2, 8, 300, 400",
    "M120x3, 6, 224, 300", "M120x3, 4, 140, 190", "M150x4, 6, 250, 335", "M150x6, 5, 236, 315",
    "M160x6, 6, 300, 400", "M160x8, 6, 335, 450", "M200x4, 6, 280, 375", "M200x6, 6, 315, 425",
    "M200x8, 6, 355, 475"
  })
  void aboveNinetyMillimetres(String designation, int grade, double screwUm, double nutUm) {
    ScrewThread thread = threads.find(designation).orElseThrow();
    MetricTolerances tolerances = new MetricTolerances(OurThreads.TABLES.all());
    Tolerance screw = tolerances.effective(thread, grade, ThreadSide.EXTERNAL);
    assertEquals(screwUm / 1000, screw.mm(), 1e-9);
    assertEquals(1, screw.notes().size());
    assertTrue(screw.notes().get(0).contains("grade " + grade), screw.notes().get(0));
    if (nutUm > 0) {
      assertEquals(
          nutUm / 1000, tolerances.effective(thread, grade, ThreadSide.INTERNAL).mm(), 1e-9);
    }
  }

  /** The series of ISO 3, with what is printed as whole numbers below 100. */
  @ParameterizedTest
  @CsvSource({
    "100, 0, 100", "101, 0, 100", "103.1, 0, 106", "975, 0, 1000", "970, 0, 950", "95, 1, 100",
    "100, -1, 95", "100, 40, 1000", "1000, -40, 100", "42.4, 0, 42", "47.6, 0, 48", "26.4, 0, 26",
    "10, 0, 10", "9500, 0, 9500", "63, -8, 40", "118, 4, 150"
  })
  void preferredNumbers(double value, int steps, long expected) {
    assertEquals(expected, PreferredNumbers.r40(value, steps));
  }
}
