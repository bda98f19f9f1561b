package org.fettlebench.tooling.internal.drilled;

import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Table;
import org.fettlebench.tooling.drilled.DrilledHole.Tolerance;
import org.fettlebench.tooling.internal.RowFaults;

/** A table of kind drill-tolerances. */
final class ToleranceTable {
  static final String KIND = "drill-tolerances";

  private record Span(Length from, Length to, Tolerance tolerance) {
    boolean holds(Length drill) {
      return drill.compareTo(from) >= 0 && drill.compareTo(to) <= 0;
    }
  }

  private final List<Span> spans;

  private ToleranceTable(List<Span> spans) {
    this.spans = spans;
  }

  /**
   * Reads a table.
   *
   * @throws org.fettlebench.tables.TableFormatException with every fault of the table
   */
  static ToleranceTable read(Table table) {
    return new ToleranceTable(RowFaults.read(table, ToleranceTable::span));
  }

  private static Span span(Table.Row row) {
    Length from = RowFaults.needed(row, "from");
    Length to = RowFaults.needed(row, "to");
    if (to.compareTo(from) < 0) {
      throw RowFaults.fault(row, "from " + from + " is above to " + to);
    }
    return new Span(
        from,
        to,
        new Tolerance(
            RowFaults.needed(row, "above"), RowFaults.needed(row, "below"), row.source()));
  }

  /** Returns what is allowed; a drill between two rows, such as 0.1255 in, has the next row's. */
  Optional<Tolerance> of(Length drill) {
    boolean reached = false;
    for (Span span : spans) {
      reached |= drill.compareTo(span.from()) >= 0;
      if (span.holds(drill) || reached && drill.compareTo(span.from()) < 0) {
        return Optional.of(span.tolerance());
      }
    }
    return Optional.empty();
  }
}
