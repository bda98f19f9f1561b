package org.fettlebench.fasteners.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFormatException;
import org.fettlebench.threads.ScrewThread;

/** Listed cuts for one style of head, by a table of kind head-sinks. */
record SinkTable(String style, Set<String> series, boolean washer, List<Listed> rows) {
  static final String KIND = "head-sinks";

  /** A listed cut, the thread told by its major diameter. */
  record Listed(Length major, Length diameter, Optional<Length> depth, Source source) {}

  /**
   * Reads a table.
   *
   * @throws TableFormatException naming all faulty lines
   */
  static SinkTable of(Table table) {
    List<Listed> rows = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    for (Table.Row row : table.rows()) {
      try {
        rows.add(listed(row));
      } catch (TableFormatException faulty) {
        faults.add(faulty.getMessage());
      }
    }
    String with = table.header().getOrDefault("with", "");
    if (!with.isEmpty() && !with.equals("washer")) {
      faults.add("'with: " + with + "' can only be washer");
    }
    if (!faults.isEmpty()) {
      throw new TableFormatException(KIND + " " + table.id(), faults);
    }
    return new SinkTable(
        table.requiredHeader("style"),
        Set.of(table.requiredHeader("series").split("[ ,]+")),
        !with.isEmpty(),
        List.copyOf(rows));
  }

  private static Listed listed(Table.Row row) {
    Length major =
        HeadTable.size(row, "major")
            .orElseThrow(() -> HeadTable.fault(row, "gives no major_mm, major_in"));
    Length diameter =
        HeadTable.size(row, "diameter")
            .orElseThrow(() -> HeadTable.fault(row, "gives no diameter_mm, diameter_in"));
    if (!(diameter.compareTo(major) > 0)) {
      throw HeadTable.fault(row, "diameter " + diameter + " is not above the screw's " + major);
    }
    return new Listed(major, diameter, HeadTable.size(row, "depth"), row.source());
  }

  Optional<Listed> find(String headStyle, ScrewThread thread, boolean withWasher) {
    if (!style.equals(headStyle) || washer != withWasher || !series.contains(thread.series())) {
      return Optional.empty();
    }
    return rows.stream()
        .filter(row -> row.major().minus(thread.major()).abs().compareTo(HeadTable.SAME_MAJOR) <= 0)
        .findFirst();
  }
}
