package org.fettlebench.paper.internal;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.fettlebench.fits.SeatWords;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.JointReport;
import org.fettlebench.kits.KitReport;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** The report of a whole kit, on as many pages as it takes. */
final class KitReportPages {
  private static final double LEFT = 14;
  private static final double WIDTH = PdfSheet.WIDTH_MM - 2 * LEFT;
  private static final double BOTTOM = PdfSheet.HEIGHT_MM - 16;

  private final KitReport report;
  private final LengthUnit first;
  private final PDDocument document;
  private final Lettering lettering;
  private final List<PdfSheet> sheets = new ArrayList<>();
  private Flow flow;

  KitReportPages(KitReport report, LengthUnit first, PDDocument document, Lettering lettering)
      throws IOException {
    this.report = report;
    this.first = first;
    this.document = document;
    this.lettering = lettering;
    turnOver();
  }

  private void turnOver() throws IOException {
    PdfSheet sheet = new PdfSheet(document, lettering);
    sheets.add(sheet);
    flow = new Flow(sheet, LEFT, 12, WIDTH, BOTTOM);
  }

  private void need(double mm) throws IOException {
    if (!flow.room(mm)) {
      turnOver();
    }
  }

  /** Writes everything; the summary sentence stands under the title. */
  void write(String summary) throws IOException {
    flow.words(Style.REMARK, "Kit check");
    flow.words(Style.TITLE, report.kit().name());
    flow.gap(1);
    flow.words(new Style(10.5, false, Ink.BLACK), summary);
    flow.gap(2);
    for (Finding caution : report.cautions()) {
      flow.words(Style.TEXT, "Caution. " + caution.sentence());
    }
    flow.gap(3);
    shortages();
    for (JointReport joint : report.joints()) {
      joint(joint);
    }
    foot();
  }

  private void shortages() throws IOException {
    if (report.shortages().isEmpty()) {
      return;
    }
    flow.heading("Missing to begin");
    for (KitReport.Shortage shortage : report.shortages()) {
      boolean counted = shortage.role() == JointReport.Fetch.Role.FASTENER;
      String count = counted ? ": " + shortage.present() + " of " + shortage.needed() : "";
      point(
          Marks.STRUCK,
          shortage.what() + count + "; " + shortage.why(),
          "For " + String.join(", ", shortage.joints()));
    }
    flow.gap(3);
  }

  private void joint(JointReport joint) throws IOException {
    need(30);
    flow.heading(joint.joint().name());
    String supply = joint.supply().words();
    String verdict = CardWords.verdict(joint) + "; fasteners " + supply;
    String room = joint.seat().map(seat -> " " + SeatWords.room(seat, first)).orElse("");
    point(Marks.of(joint), CardWords.begun(verdict) + "." + room, CardWords.what(joint.joint()));
    if (!joint.joint().note().isBlank()) {
      point(Marks.OPEN, "The kit says: " + joint.joint().note(), "");
    }
    for (Finding finding : joint.findings()) {
      point(Marks.of(finding.weight()), CardWords.begun(finding.sentence()), finding.standing());
    }
    list("Cure", joint.cures().stream().map(CardWords::cure).toList());
    list(
        "Or take",
        joint.substitutes().stream().map(other -> CardWords.substitute(other, first)).toList());
    for (JointReport.Fetch fetch : joint.fetch()) {
      point(Marks.of(fetch.state()), "Fetch " + CardWords.fetch(fetch), CardWords.from(fetch));
    }
    flow.gap(3);
  }

  private void list(String head, List<String> lines) throws IOException {
    for (String line : lines) {
      point(Marks.OPEN, head + ": " + line, "");
    }
  }

  private void point(Marks mark, String words, String remark) throws IOException {
    need(flow.pointMm(words, remark));
    flow.point(mark, words, remark);
  }

  private void foot() throws IOException {
    for (int i = 0; i < sheets.size(); i++) {
      try (PdfSheet sheet = sheets.get(i)) {
        String words = report.kit().name() + ", page " + (i + 1) + " of " + sheets.size();
        sheet.text(Style.REMARK, new Point(LEFT, PdfSheet.HEIGHT_MM - 9), words);
      }
    }
  }
}
