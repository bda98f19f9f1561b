package org.fettlebench.threads.internal.limits;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.fettlebench.tables.Table;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadSide;

/**
 * Tolerances and deviations of ISO 965-1: its table where it has the pitch, else its formula
 * rounded to the R40 series.
 */
final class MetricTolerances {
  static final String TOLERANCES = "thread-tolerances";
  static final String DEVIATIONS = "thread-deviations";

  private static final double MM_PER_UM = 0.001;

  /** ISO 965-1: the formulas take the geometric mean of the range that the diameter falls in. */
  private static final double[] RANGES_MM = {0.99, 1.4, 2.8, 5.6, 11.2, 22.4, 45, 90, 180, 355};

  /**
   * A grade is four steps of R40 wider than the one before, and the nut's five steps wider than the
   * screw's: so every row of the standard's tables runs, though its shares (0.8, 1.25, 1.32) would
   * round to another number here and there.
   */
  private static final int STEPS_PER_GRADE = 4;

  private static final int STEPS_FROM_SCREW_TO_NUT = 5;

  private static final Source STANDARD = new Source("ISO 965-1", Standing.PUBLISHED);
  private static final Source SEEN =
      new Source("ISO 965-1, as printed limits and tables bear out", Standing.PUBLISHED);
  private static final Tolerance NONE = new Tolerance(0, STANDARD);
  private static final String POSITIONS = "efg";
  private static final int COARSEST = 9;

  /**
   * The tolerances of a row by grade and the range of diameters it is for. They are read once:
   * lists of threads run to hundreds of thousands.
   */
  private record Band(Length over, Length to, List<Optional<Tolerance>> grades) {
    boolean holds(Length major) {
      return over.compareTo(major) < 0 && major.compareTo(to) <= 0;
    }

    Optional<Tolerance> grade(int grade) {
      return grades.get(grade);
    }
  }

  /** The bands of each quantity by pitch. */
  private final Map<String, Map<Length, List<Band>>> tolerances = new HashMap<>();

  private final Map<Length, Map<Character, Tolerance>> deviations = new HashMap<>();

  MetricTolerances(List<Table> tables) {
    rows(tables, TOLERANCES)
        .forEach(
            row ->
                tolerances
                    .computeIfAbsent(row.requiredText("quantity"), quantity -> new HashMap<>())
                    .computeIfAbsent(row.requiredLength("pitch_mm"), pitch -> new ArrayList<>())
                    .add(band(row)));
    rows(tables, DEVIATIONS)
        .forEach(row -> deviations.putIfAbsent(row.requiredLength("pitch_mm"), positions(row)));
  }

  private static Band band(Table.Row row) {
    List<Optional<Tolerance>> grades = new ArrayList<>();
    for (int grade = 0; grade <= COARSEST; grade++) {
      grades.add(printed(row, "grade_" + grade, "printed_grades", String.valueOf(grade)));
    }
    return new Band(
        row.length("over_mm").orElse(Length.ZERO),
        row.length("to_mm").orElse(Length.ofNanometres(Long.MAX_VALUE)),
        grades);
  }

  private static Map<Character, Tolerance> positions(Table.Row row) {
    Map<Character, Tolerance> positions = new HashMap<>();
    for (char position : POSITIONS.toCharArray()) {
      printed(row, position + "_um", "printed", String.valueOf(position))
          .ifPresent(there -> positions.put(position, there));
    }
    return positions;
  }

  private static Stream<Table.Row> rows(List<Table> tables, String kind) {
    return tables.stream()
        .filter(table -> table.kind().equals(kind) && table.id().equals("ISO 965-1"))
        .flatMap(table -> table.rows().stream());
  }

  /** Returns the deviation of position e, f, g, h, G or H from the basic size, without its sign. */
  Tolerance deviation(ScrewThread thread, char position) {
    if (position == 'h' || position == 'H') {
      return NONE;
    }
    Map<Character, Tolerance> known = deviations.getOrDefault(thread.pitch(), Map.of());
    return Optional.ofNullable(known.get(Character.toLowerCase(position)))
        .orElseThrow(
            () ->
                new MeasureException(
                    "ISO 965-1 has no position %s for a pitch of %s: take g or h (G or H)"
                        .formatted(position, thread.pitch())));
  }

  /** Returns Td of the screw's crest; empty where there is no such grade. */
  Optional<Tolerance> major(ScrewThread thread, int grade) {
    return band("Td", thread).flatMap(band -> band.grade(grade));
  }

  /** Returns TD1 of the nut's crest, of the coarsest grade there is where the asked is not. */
  Tolerance minor(ScrewThread thread, int grade) {
    Band band =
        band("TD1", thread)
            .orElseThrow(() -> new MeasureException("ISO 965-1 has no pitch of " + thread.pitch()));
    for (int there = grade; there >= 4; there--) {
      Optional<Tolerance> found = band.grade(there);
      if (found.isPresent()) {
        return there == grade ? found.get() : instead(found.get(), there, grade);
      }
    }
    throw new MeasureException("ISO 965-1 has no grade " + grade + " for " + thread.designation());
  }

  private static Tolerance instead(Tolerance found, int there, int asked) {
    return new Tolerance(
        found.mm(),
        found.source(),
        List.of(
            "the minor diameter has no grade %d at this pitch: its coarsest, grade %d, stands"
                .formatted(asked, there)));
  }

  /** Returns Td2 or TD2. */
  Tolerance effective(ScrewThread thread, int grade, ThreadSide side) {
    return band(side == ThreadSide.EXTERNAL ? "Td2" : "TD2", thread)
        .flatMap(band -> band.grade(grade))
        .orElseGet(() -> byFormula(thread, grade, side));
  }

  private static Tolerance byFormula(ScrewThread thread, int grade, ThreadSide side) {
    // Td2(6) = 90 P^0.4 d^0.1 in micrometres (ISO 965-1).
    double um =
        90
            * Math.pow(thread.pitch().millimetres(), 0.4)
            * Math.pow(meanMm(thread.major().millimetres()), 0.1);
    int steps =
        STEPS_PER_GRADE * (grade - 6) + (side == ThreadSide.INTERNAL ? STEPS_FROM_SCREW_TO_NUT : 0);
    return new Tolerance(
        PreferredNumbers.r40(um, steps) * MM_PER_UM,
        new Source("ISO 965-1 formula 90 P^0.4 d^0.1 rounded to R40", Standing.RULE),
        List.of(
            "the table has no grade %d of the effective diameter for this pitch and diameter: by its"
                    .formatted(grade)
                + " formula"));
  }

  private static double meanMm(double majorMm) {
    for (int i = 1; i < RANGES_MM.length; i++) {
      if (majorMm > RANGES_MM[i - 1] && majorMm <= RANGES_MM[i]) {
        return Math.sqrt(RANGES_MM[i - 1] * RANGES_MM[i]);
      }
    }
    throw new MeasureException(
        "major diameter %s mm is outside 0.99 to 355 mm (ISO 965-1)".formatted(majorMm));
  }

  private Optional<Band> band(String quantity, ScrewThread thread) {
    List<Band> bands =
        tolerances.getOrDefault(quantity, Map.of()).getOrDefault(thread.pitch(), List.of());
    for (Band band : bands) {
      if (band.holds(thread.major())) {
        return Optional.of(band);
      }
    }
    return Optional.empty();
  }

  private static Optional<Tolerance> printed(
      Table.Row row, String column, String printedColumn, String which) {
    if (row.text(column).isEmpty()) {
      return Optional.empty();
    }
    boolean seen = Arrays.asList(row.text(printedColumn).orElse("").split(" ")).contains(which);
    double mm = row.requiredNumber(column).doubleValue() * MM_PER_UM;
    return Optional.of(new Tolerance(mm, seen ? SEEN : row.source()));
  }
}
