package org.fettlebench.command.internal.tap;

import java.util.Locale;
import org.fettlebench.command.internal.Cautions;
import org.fettlebench.command.internal.Columns;
import org.fettlebench.command.internal.Figures;
import org.fettlebench.command.internal.Footnotes;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.tooling.risk.Assumed;
import org.fettlebench.tooling.risk.TapCure;
import org.fettlebench.tooling.risk.TapJob;
import org.fettlebench.tooling.risk.TapRisk;

/** A tap risk in words. */
record TapRiskText(TapRisk risk, TapHole hole, boolean tapSaid, LengthUnit unit) {
  private static final double LBF_IN_PER_NM = 8.8507457676;

  String text() {
    return head() + cures() + assumed() + "\nCaution: " + Cautions.DRILLING;
  }

  private String head() {
    TapJob job = risk.job();
    return "%s in %s, %s %s deep, %s%s\n"
            .formatted(
                job.thread().designation(),
                job.material().name(),
                job.through() ? "right through," : "blind,",
                LengthFormat.showBoth(job.depth(), unit),
                job.tap().title(),
                tapSaid ? "" : " (none was said)")
        + "through %s, %s: %.0f %% of thread (%s)\n"
            .formatted(
                hole.name(),
                LengthFormat.showBoth(hole.diameter(), unit),
                risk.percentOfThread(),
                hole.why())
        + "\nTorque to cut about %s; what breaks the tap about %s\n"
            .formatted(torque(risk.cuttingTorqueNm()), torque(risk.breakingTorqueNm()))
        + "Ratio %s, from %s to %s by the assumptions below\n"
            .formatted(two(risk.ratio()), two(risk.ratioLeast()), two(risk.ratioMost()))
        + "It says: %s\n".formatted(risk.verdict().words());
  }

  private String cures() {
    if (risk.cures().isEmpty()) {
      return "\nNothing here lowers it further.\n";
    }
    Columns columns = new Columns().indent(2).right(0, 1).row("ratio", "at most", "what lowers it");
    for (TapCure cure : risk.cures()) {
      columns.row(
          two(cure.ratio()), two(cure.ratioMost()), LengthFormat.turned(cure.words(), unit));
    }
    return "\n" + columns.text() + "\n";
  }

  private String assumed() {
    Footnotes notes = new Footnotes();
    Columns columns = new Columns().indent(2);
    for (Assumed assumed : risk.assumed()) {
      columns.row(assumed.what(), assumed.figure(), notes.mark(Figures.source(assumed.source())));
    }
    StringBuilder text = new StringBuilder("\nAssumed\n").append(columns.text());
    risk.notes().forEach(note -> text.append("\n  note: ").append(note));
    return text.append(notes.text().replace("\n", "\n  ")).toString();
  }

  private String torque(double newtonMetres) {
    String metric = String.format(Locale.ROOT, "%.2f N m", newtonMetres);
    String inch = String.format(Locale.ROOT, "%.1f lbf in", newtonMetres * LBF_IN_PER_NM);
    return unit == LengthUnit.INCH ? inch + " (" + metric + ")" : metric + " (" + inch + ")";
  }

  private static String two(double ratio) {
    return String.format(Locale.ROOT, "%.2f", ratio);
  }
}
