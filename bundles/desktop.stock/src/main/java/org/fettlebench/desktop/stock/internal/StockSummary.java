package org.fettlebench.desktop.stock.internal;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.desktop.widgets.Figures;

/** Sums the stock up in one sentence: what asks for somebody's care first. */
final class StockSummary {
  private StockSummary() {}

  static String of(List<StockRow> rows) {
    List<String> parts = new ArrayList<>();
    for (Standing standing : Standing.values()) {
      long count = rows.stream().filter(row -> row.is(standing)).count();
      if (count > 0 && standing != Standing.GOOD) {
        parts.add(count + " " + standing.word());
      }
    }
    String lines = Figures.count(rows.size(), "line", "lines");
    return parts.isEmpty()
        ? lines + ", all in good order"
        : lines + ": " + String.join(", ", parts);
  }
}
