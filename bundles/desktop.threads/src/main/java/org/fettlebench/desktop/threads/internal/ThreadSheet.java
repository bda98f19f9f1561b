package org.fettlebench.desktop.threads.internal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.fettlebench.desktop.threads.internal.ThreadAnswer.Tapping;
import org.fettlebench.desktop.threads.internal.sheet.FigureTable;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;

/** The sheet of a thread: all that is on show, part after part, as rows to be printed or copied. */
final class ThreadSheet {
  /** Columns of the sheet: a name and the widest table's cells. */
  static final int COLUMNS = 5;

  private ThreadSheet() {}

  /** A part of the sheet. */
  record Part(String title, FigureTable table) {}

  /** Returns the rows: each part under its title; parts without figures are left out. */
  static List<List<String>> rows(ThreadAnswer answer, List<Part> parts, LengthUnit unit) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(row(Stream.of("Tapping drills")));
    for (Tapping tapping : answer.choices()) {
      rows.add(
          row(
              Stream.of(
                  "  " + tapping.drill().name(),
                  LengthFormat.show(tapping.drill().diameter(), unit),
                  DrillRule.percent(tapping.choice().percentOfThread()),
                  tapping.where().orElse("not held"))));
    }
    for (Part part : parts) {
      if (!part.table().rows().isEmpty()) {
        rows.add(row(Stream.empty()));
        rows.add(row(Stream.concat(Stream.of(part.title()), part.table().heads().stream())));
        for (FigureTable.Row each : part.table().rows()) {
          rows.add(row(Stream.concat(Stream.of("  " + each.name()), each.cells().stream())));
        }
      }
    }
    return rows;
  }

  private static List<String> row(Stream<String> cells) {
    List<String> row = new ArrayList<>(cells.limit(COLUMNS).toList());
    row.addAll(Collections.nCopies(COLUMNS - row.size(), ""));
    return row;
  }
}
