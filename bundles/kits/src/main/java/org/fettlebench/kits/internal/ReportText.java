package org.fettlebench.kits.internal;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatCure;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.Joint;
import org.fettlebench.kits.JointReport;
import org.fettlebench.kits.KitReport;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;

/** A kit report as lines for people. */
final class ReportText {
  private static final int MOST_CURES = 3;

  private final KitReport report;
  private final LengthUnit unit;
  private final List<String> lines = new ArrayList<>();

  ReportText(KitReport report, LengthUnit unit) {
    this.report = report;
    this.unit = unit;
  }

  String lines() {
    lines.add(ReportSummary.of(report));
    lines.add(
        "Asked: "
            + Expected.percent(report.kit().confidence())
            + " of holes within their expected error"
            + report.kit().scale().map(scale -> "; scale 1:" + scale).orElse("")
            + ".");
    report.joints().forEach(this::joint);
    shortages();
    cautions();
    return String.join("\n", lines);
  }

  private void joint(JointReport joint) {
    Joint what = joint.joint();
    lines.add("");
    lines.add(
        what.name()
            + (what.part().isBlank() ? "" : " (" + what.part() + ")")
            + ": "
            + what.count()
            + " off "
            + what.fastener().title()
            + ": "
            + verdict(joint)
            + ", "
            + joint.supply().words());
    if (!what.note().isBlank()) {
      lines.add("  kit says   " + what.note());
    }
    for (Finding finding : joint.findings()) {
      if (finding.rule().equals(Cautions.PRESSURE)) {
        lines.add("  " + padded("caution") + "pressure: this holds pressure; see the end.");
        continue;
      }
      lines.add("  " + padded(finding.weight().word()) + finding.rule() + ": " + finding.spoken());
    }
    for (SeatCure cure : joint.cures().stream().limit(MOST_CURES).toList()) {
      lines.add("  " + padded("cure") + cure.sentence());
    }
    joint.substitutes().forEach(this::substitute);
    joint.fetch().forEach(this::fetch);
  }

  private String verdict(JointReport joint) {
    return joint
        .seat()
        .map(seat -> SeatRule.phrase(seat.verdict()) + ", allowance " + allowance(seat))
        .orElse(joint.joint().seat().isPresent() ? "seat not checked" : "no measured seat");
  }

  private void substitute(JointReport.Substitute other) {
    lines.add(
        "  "
            + padded("or take")
            + other.fastener().title()
            + ": "
            + other.change()
            + "; "
            + other.present()
            + " in "
            + other.place()
            + other
                .after()
                .map(
                    seat ->
                        "; then it "
                            + SeatRule.phrase(seat.verdict())
                            + ", allowance "
                            + allowance(seat))
                .orElse(""));
  }

  private void fetch(JointReport.Fetch fetch) {
    lines.add(
        "  "
            + padded("fetch")
            + fetch.role().words()
            + " "
            + fetch.what()
            + (fetch.figures().isEmpty() ? "" : ", " + fetch.figures())
            + ": "
            + fetch.state().words()
            + (fetch.from().isBlank() ? "" : ", " + fetch.from()));
  }

  private void shortages() {
    if (!report.shortages().isEmpty()) {
      lines.add("");
      lines.add("Missing to begin");
    }
    for (KitReport.Shortage shortage : report.shortages()) {
      lines.add(
          "  "
              + shortage.what()
              + ": "
              + (shortage.role() == JointReport.Fetch.Role.FASTENER
                  ? shortage.present() + " of " + shortage.needed() + " there; "
                  : "")
              + shortage.why()
              + "; for "
              + String.join(", ", shortage.joints()));
    }
  }

  private void cautions() {
    if (!report.cautions().isEmpty()) {
      lines.add("");
    }
    report.cautions().forEach(caution -> lines.add("Caution. " + caution.sentence()));
  }

  private String allowance(SeatAnswer seat) {
    return LengthFormat.allowanceBoth(Length.ofMillimetres(seat.allowanceAtIntendedMm()), unit);
  }

  private static String padded(String word) {
    return String.format("%-9s", word);
  }
}
