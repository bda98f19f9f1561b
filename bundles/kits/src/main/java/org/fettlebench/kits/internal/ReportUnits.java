package org.fettlebench.kits.internal;

import org.fettlebench.fits.SeatCure;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.JointReport;
import org.fettlebench.kits.JointReport.Fetch;
import org.fettlebench.kits.JointReport.Substitute;
import org.fettlebench.kits.KitReport;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;

/** A report whose sentences have one unit first; its figures stay as they are. */
final class ReportUnits {
  private final LengthUnit first;

  private ReportUnits(LengthUnit first) {
    this.first = first;
  }

  static KitReport first(KitReport report, LengthUnit first) {
    ReportUnits units = new ReportUnits(first);
    return new KitReport(
        report.kit(),
        report.joints().stream().map(units::turned).toList(),
        report.shortages(),
        report.cautions().stream().map(units::turned).toList());
  }

  private JointReport turned(JointReport joint) {
    return new JointReport(
        joint.joint(),
        joint.verdict(),
        joint.supply(),
        joint.seat(),
        joint.findings().stream().map(this::turned).toList(),
        joint.cures().stream().map(this::turned).toList(),
        joint.substitutes().stream().map(this::turned).toList(),
        joint.fetch().stream().map(this::turned).toList());
  }

  private Finding turned(Finding finding) {
    return new Finding(
        finding.weight(),
        finding.rule(),
        turned(finding.sentence()),
        finding.figures(),
        finding.standing());
  }

  private SeatCure turned(SeatCure cure) {
    return new SeatCure(cure.kind(), turned(cure.sentence()), cure.after());
  }

  private Substitute turned(Substitute other) {
    return new Substitute(
        other.fastener(), turned(other.change()), other.present(), other.place(), other.after());
  }

  private Fetch turned(Fetch fetch) {
    return new Fetch(
        fetch.role(),
        fetch.what(),
        fetch.state(),
        fetch.from(),
        turned(fetch.figures()),
        fetch.count());
  }

  private String turned(String sentence) {
    return LengthFormat.turned(sentence, first);
  }
}
