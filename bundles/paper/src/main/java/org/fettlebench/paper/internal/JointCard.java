package org.fettlebench.paper.internal;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Plotter;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatDrawings;
import org.fettlebench.fits.SeatWords;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.JointReport;
import org.fettlebench.kits.KitReport;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** The card of one joint: one page for the bench. */
final class JointCard {
  private static final double LEFT = 14;
  private static final double WIDTH = PdfSheet.WIDTH_MM - 2 * LEFT;
  private static final double COLUMN = (WIDTH - 6) / 2;
  private static final double DRAWING_HEIGHT = 92;
  private static final double BOXES_TOP = 244;
  private static final int MOST_CURES = 3;

  private final KitReport report;
  private final JointReport joint;
  private final LengthUnit first;
  private final PdfSheet sheet;

  JointCard(KitReport report, JointReport joint, LengthUnit first, PdfSheet sheet) {
    this.report = report;
    this.joint = joint;
    this.first = first;
    this.sheet = sheet;
  }

  void write(SeatDrawings drawings) throws IOException {
    double top = head();
    Optional<SeatAnswer> seat = joint.seat();
    if (seat.isPresent()) {
      top = drawing(drawings.draw(seat.get(), first), top);
    }
    double below = Math.min(BOXES_TOP, lists(top) + 5);
    boxes(below);
    cautions(below);
  }

  private double head() throws IOException {
    Flow flow = new Flow(sheet, LEFT, 12, WIDTH, BOXES_TOP);
    flow.words(Style.REMARK, "Bench card. " + report.kit().name());
    flow.words(Style.TITLE, joint.joint().name());
    flow.words(new Style(11, false, Ink.BLACK), CardWords.what(joint.joint()));
    if (!joint.joint().note().isBlank()) {
      flow.words(Style.TEXT, "The kit says: " + joint.joint().note());
    }
    flow.gap(3);
    Marks mark = Marks.of(joint);
    mark.draw(sheet, new Point(LEFT, flow.y()), 6.5);
    Style word = new Style(20, true, mark.ink());
    String verdict = CardWords.verdict(joint);
    sheet.text(word, new Point(LEFT + 9, flow.y() + 5.8), verdict);
    double beside = LEFT + 13 + sheet.lettering().lengthMm(word, verdict);
    Flow room = new Flow(sheet, beside, flow.y() - 1, PdfSheet.WIDTH_MM - LEFT - beside, BOXES_TOP);
    room.words(
        new Style(10.5, false, Ink.BLACK),
        joint
            .seat()
            .map(seat -> SeatWords.room(seat, first))
            .orElse("No measured seat, so nothing says whether the head sits."));
    return Math.max(flow.y() + 8.5, room.y() + 2);
  }

  private double drawing(Drawing drawing, double top) throws IOException {
    Plotter most = Plotter.standardScale(drawing, WIDTH, DRAWING_HEIGHT);
    // A drawing that is flat at its scale leaves its room to the lists.
    double height = Math.min(DRAWING_HEIGHT, Math.max(50, most.heightMm() + 12));
    Plotter plotter = Plotter.standardScale(drawing, WIDTH, height);
    sheet.box(Ink.RULE, 0.25, LEFT, top, WIDTH, height);
    plotter.plot(new PdfPen(sheet, LEFT, top));
    double below = top + height + 5;
    sheet.text(Style.STRONG, new Point(LEFT, below), "Scale " + plotter.scaleWords());
    new CheckLine(sheet).draw(LEFT + 28, below, first);
    return below + 4;
  }

  /** Writes the lists and returns where they end. */
  private double lists(double top) throws IOException {
    Flow left = new Flow(sheet, LEFT, top, COLUMN, BOXES_TOP - 3);
    Flow right = new Flow(sheet, LEFT + COLUMN + 6, top, COLUMN, BOXES_TOP - 3);
    fetch(right);
    cures(right);
    depths(left);
    why(left);
    return Math.max(left.y(), right.y());
  }

  private void depths(Flow flow) throws IOException {
    List<Finding> depths = joint.findings().stream().filter(JointCard::depth).limit(1).toList();
    if (!depths.isEmpty()) {
      flow.heading("Depths");
    }
    for (Finding finding : depths) {
      flow.words(Style.STRONG, finding.sentence());
      flow.gap(1.5);
    }
  }

  private static boolean depth(Finding finding) {
    return finding.rule().equals(CardWords.BLIND_HOLE);
  }

  private void why(Flow flow) throws IOException {
    List<Finding> findings = joint.findings().stream().filter(finding -> !depth(finding)).toList();
    flow.heading("Why");
    int left = findings.size();
    for (Finding finding : findings) {
      String words = CardWords.begun(finding.sentence());
      if (flow.room(flow.pointMm(words, finding.standing()) + Style.REMARK.lineMm())) {
        flow.point(Marks.of(finding.weight()), words, finding.standing());
        left--;
      }
    }
    leftOut(flow, left, "finding");
  }

  private void leftOut(Flow flow, int count, String what) throws IOException {
    if (count > 0) {
      String words = count + " more " + what + (count == 1 ? "" : "s") + " in the kit's report.";
      flow.words(Style.REMARK, words);
    }
  }

  private void fetch(Flow flow) throws IOException {
    flow.heading("Fetch");
    for (JointReport.Fetch fetch : joint.fetch()) {
      flow.point(Marks.of(fetch.state()), CardWords.fetch(fetch), CardWords.from(fetch));
    }
    flow.gap(1.5);
  }

  private void cures(Flow flow) throws IOException {
    if (joint.cures().isEmpty()) {
      return;
    }
    flow.heading("Cures");
    int left = joint.cures().size();
    for (var cure : joint.cures().stream().limit(MOST_CURES).toList()) {
      String words = CardWords.cure(cure);
      if (flow.room(flow.pointMm(words, "") + Style.REMARK.lineMm())) {
        flow.point(Marks.of(cure.after().verdict()), words, "");
        left--;
      }
    }
    leftOut(flow, left, "cure");
  }

  private void boxes(double top) throws IOException {
    new PencilBoxes(sheet, LEFT, WIDTH).draw(CardWords.boxes(joint.joint()), top);
  }

  private void cautions(double top) throws IOException {
    Flow flow = new Flow(sheet, LEFT, top + 17, WIDTH, PdfSheet.HEIGHT_MM - 8);
    for (Finding caution : report.cautions()) {
      if (!caution.rule().equals("pressure") || joint.joint().holdsPressure()) {
        flow.words(new Style(8.5, false, Ink.BLACK), "Caution. " + caution.sentence());
      }
    }
  }
}
