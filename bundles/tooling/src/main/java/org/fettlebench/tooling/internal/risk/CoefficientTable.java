package org.fettlebench.tooling.internal.risk;

import java.util.List;
import java.util.Optional;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Table;
import org.fettlebench.tooling.internal.RowFaults;
import org.fettlebench.tooling.risk.TapSort;

/** Coefficients and leads of taps, by a table of kind tap-coefficients. */
record CoefficientTable(List<Coefficient> rows) {
  static final String KIND = "tap-coefficients";
  private static final double LARGEST = 10;
  private static final double LONGEST_LEAD = 30;

  /** What a tap adds to the torque in a group of materials, and its lead in pitches. */
  record Coefficient(
      TapSort tap, String group, double coarse, Optional<Double> fine, double lead, Source source) {
    /** Returns the coefficient; that for coarse threads where none is printed for fine ones. */
    double of(boolean fineThread) {
      return fineThread ? fine.orElse(coarse) : coarse;
    }
  }

  /**
   * Reads a table.
   *
   * @throws org.fettlebench.tables.TableFormatException with every fault of the table
   */
  static CoefficientTable read(Table table) {
    return new CoefficientTable(RowFaults.read(table, CoefficientTable::coefficient));
  }

  private static Coefficient coefficient(Table.Row row) {
    String word = row.requiredText("tap");
    TapSort tap =
        TapSort.ofWord(word)
            .orElseThrow(() -> RowFaults.fault(row, "tap '" + word + "' is no sort of tap"));
    return new Coefficient(
        tap,
        ResistanceTable.group(row),
        RowFaults.within(row, "coarse", 0, LARGEST),
        row.text("fine").map(printed -> RowFaults.within(row, "fine", 0, LARGEST)),
        RowFaults.within(row, "lead_pitches", 0, LONGEST_LEAD),
        row.source());
  }
}
