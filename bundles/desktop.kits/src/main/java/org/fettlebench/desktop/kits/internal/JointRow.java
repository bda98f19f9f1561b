package org.fettlebench.desktop.kits.internal;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fettlebench.desktop.widgets.VerdictMark;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.Verdict;
import org.fettlebench.kits.JointReport;
import org.fettlebench.kits.JointReport.Fetch;
import org.fettlebench.kits.JointReport.Supply;
import org.fettlebench.measure.Length;

/**
 * A joint as a row of the list.
 *
 * @param place of the joint in the kit file, from 0
 * @param report what the check says of it
 */
record JointRow(int place, JointReport report) {
  /** What cannot be made before what is only short; least allowance first among equals. */
  static final Comparator<JointRow> WORST_FIRST =
      Comparator.comparingInt(JointRow::rank)
          .thenComparing(row -> row.allowance().map(Length::nanometres).orElse(Long.MAX_VALUE))
          .thenComparingInt(JointRow::place);

  String name() {
    return report.joint().name();
  }

  String part() {
    return report.joint().part();
  }

  int count() {
    return report.joint().count();
  }

  String fastener() {
    return report.joint().fastener().title();
  }

  /** Returns the verdict in a word; one that fails for another reason than its seat says so. */
  String word() {
    boolean seatFouls = report.verdict().filter(v -> v == Verdict.FOULS).isPresent();
    if (report.fails() && !seatFouls) {
      return "fails";
    }
    return report.verdict().map(Verdict::word).orElse("not measured");
  }

  VerdictMark mark() {
    return report.fails()
        ? VerdictMark.STRUCK
        : report.verdict().map(Marks::of).orElse(VerdictMark.OPEN);
  }

  Optional<Length> allowance() {
    return report.seat().map(SeatAnswer::allowanceAtIntendedMm).map(Length::ofMillimetres);
  }

  String supply() {
    return report.supply().words();
  }

  VerdictMark supplyMark() {
    boolean toolsLack = report.supply() == Supply.COMPLETE && !lacks().isEmpty();
    return toolsLack ? VerdictMark.HALF : Marks.of(report.supply());
  }

  /** Returns how the fasteners stand, and what else lacks. */
  String supplyInFull() {
    return supply() + (lacks().isEmpty() ? "" : "; " + lacks());
  }

  /** Returns the same in fewer words, for a narrow column. */
  String supplyInShort() {
    List<String> tools =
        report.fetch().stream()
            .filter(fetch -> !fetch.atHand() && fetch.role() != Fetch.Role.FASTENER)
            .map(fetch -> fetch.role() == Fetch.Role.TAP ? "tap" : "drill")
            .distinct()
            .toList();
    String tool = tools.size() == 1 ? tools.get(0) : "tools";
    return supply() + (tools.isEmpty() ? "" : "; lacks " + tool);
  }

  /** Returns what cannot be fetched now; empty when all is at hand. */
  String lacks() {
    return report.fetch().stream()
        .filter(fetch -> !fetch.atHand())
        .map(JointRow::lack)
        .distinct()
        .collect(Collectors.joining("; "));
  }

  private static String lack(Fetch fetch) {
    boolean held = fetch.state() != Fetch.State.NOT_HELD;
    if (fetch.role() == Fetch.Role.FASTENER) {
      return fetch.count() + (held ? " of the fasteners " + fetch.state().words() : " missing");
    }
    return held ? fetch.what() + " " + fetch.state().words() : "no " + fetch.what();
  }

  private int rank() {
    if (report.fails()) {
      return report.verdict().filter(v -> v == Verdict.FOULS).isPresent() ? 0 : 1;
    }
    if (report.verdict().filter(v -> v == Verdict.TIGHT).isPresent()) {
      return 2;
    }
    if (report.wanting()) {
      return 3;
    }
    if (!lacks().isEmpty()) {
      return 4;
    }
    return report.supply() == Supply.BETTER_FROM_STOCK ? 5 : report.verdict().isEmpty() ? 6 : 7;
  }
}
