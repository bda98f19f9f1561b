package org.fettlebench.tooling.internal;

import java.util.List;
import java.util.Locale;
import org.fettlebench.testkit.published.PublishedRow;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.DrillSize;

/** Holds recommended tapping drills of printed rows: named as listed, and within a band. */
final class ListedDrills {
  private ListedDrills() {}

  /** Returns the drill of a cell; columns in {@code _mm} print it without a unit. */
  static DrillSize drill(PublishedRow row, String column) {
    String cell = row.cell(column).replaceAll("(?<=\\d)mm$", " mm");
    return column.contains("_mm") ? OurTooling.mm(cell) : OurTooling.printed(cell);
  }

  /** Holds that the suite names the drill as one of a list, and that it leaves a per cent. */
  static void hold(PublishedRow row, ScrewThread thread, String column, double least, double most) {
    row.that(
        column,
        () -> listed(thread, drill(row, column)),
        "is not among the drills that the suite names for " + thread.designation());
    band(row, thread, column, least, most);
  }

  /** Holds the per cent of thread that a drill leaves, with half a per cent for rounding. */
  static void band(PublishedRow row, ScrewThread thread, String column, double least, double most) {
    if (row.has(column)) {
      double percent = percent(row, thread, column);
      row.that(
          column,
          () -> percent >= least - 0.5 && percent <= most + 0.5,
          String.format(Locale.UK, "leaves %.1f per cent", percent));
    }
  }

  /** Refuses a recommendation: it must not be listed, or leave a per cent outside a band. */
  static void refuse(PublishedRow row, ScrewThread thread, String column, String why) {
    row.that(
        column, () -> !listed(thread, drill(row, column)), "is named by the suite although " + why);
  }

  static double percent(PublishedRow row, ScrewThread thread, String column) {
    return thread.percentOfThread(drill(row, column).diameter());
  }

  private static boolean listed(ScrewThread thread, DrillSize drill) {
    List<DrillSize> named =
        OurTooling.holes().listed(thread).stream().map(one -> one.drill()).toList();
    return named.stream().anyMatch(one -> one.diameter().equals(drill.diameter()));
  }
}
