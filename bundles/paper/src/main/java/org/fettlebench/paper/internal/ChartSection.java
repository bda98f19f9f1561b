package org.fettlebench.paper.internal;

import java.util.List;

/**
 * The threads of one series on a wall chart.
 *
 * @param title of the series, with its form
 * @param rows its threads
 * @param notes where its figures come from, with their standing
 */
record ChartSection(String title, List<ChartRow> rows, List<String> notes) {
  /** Copies what could change. */
  ChartSection {
    rows = List.copyOf(rows);
    notes = List.copyOf(notes);
  }
}
