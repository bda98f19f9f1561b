package org.fettlebench.kits.internal;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.fits.Verdict;
import org.fettlebench.kits.JointReport.Supply;
import org.fettlebench.kits.KitReport;

/** The sentence that sums up a kit. */
final class ReportSummary {
  private static final int NAMED = 4;

  private ReportSummary() {}

  static String of(KitReport report) {
    int all = report.joints().size();
    List<String> verdicts = new ArrayList<>();
    counted(verdicts, report.count(Verdict.CLEARS), "clears", "clear");
    counted(verdicts, report.count(Verdict.TIGHT), "is tight", "are tight");
    counted(verdicts, report.count(Verdict.FOULS), "fouls", "foul");
    counted(verdicts, report.unmeasured(), "has no measured seat", "have no measured seat");
    return report.kit().name()
        + ": of "
        + all
        + (all == 1 ? " joint " : " joints ")
        + listed(verdicts)
        + work(report)
        + supplies(report)
        + missing(report);
  }

  /** Says when something other than the seat stands in the way. */
  private static String work(KitReport report) {
    long failing =
        report.joints().stream()
            .filter(joint -> joint.fails())
            .filter(joint -> joint.verdict().filter(v -> v == Verdict.FOULS).isEmpty())
            .count();
    return failing == 0
        ? "."
        : "; " + failing + (failing == 1 ? " more fails" : " more fail") + " for another reason.";
  }

  private static String supplies(KitReport report) {
    List<String> supplies = new ArrayList<>();
    for (Supply supply : List.of(Supply.SHORT, Supply.WRONG, Supply.BETTER_FROM_STOCK)) {
      if (report.count(supply) > 0) {
        supplies.add(report.count(supply) + " " + supply.words());
      }
    }
    return supplies.isEmpty() ? "" : " Fasteners: " + listed(supplies) + ".";
  }

  private static String missing(KitReport report) {
    List<String> names = report.shortages().stream().map(KitReport.Shortage::what).toList();
    if (names.isEmpty()) {
      return " Nothing is missing to begin.";
    }
    List<String> said = new ArrayList<>(names.subList(0, Math.min(NAMED, names.size())));
    if (names.size() > NAMED) {
      said.add((names.size() - NAMED) + " more");
    }
    return " Missing to begin: " + listed(said) + ".";
  }

  private static void counted(List<String> parts, int count, String one, String many) {
    if (count > 0) {
      parts.add(count + " " + (count == 1 ? one : many));
    }
  }

  private static String listed(List<String> parts) {
    int last = parts.size() - 1;
    return last <= 0
        ? String.join("", parts)
        // Descriptions have commas in them, so the list is parted more strongly.
        : String.join("; ", parts.subList(0, last)) + " and " + parts.get(last);
  }
}
