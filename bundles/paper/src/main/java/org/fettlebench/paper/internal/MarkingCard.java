package org.fettlebench.paper.internal;

import java.io.IOException;
import java.util.List;
import org.fettlebench.holes.otherface.FaceMark;
import org.fettlebench.holes.otherface.FaceMark.EdgeDistance;
import org.fettlebench.holes.otherface.MarkQuestion;
import org.fettlebench.holes.otherface.OtherFaces;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** The card of marking out from the other face: one page for the bench. */
final class MarkingCard {
  private static final double LEFT = 14;
  private static final double WIDTH = PdfSheet.WIDTH_MM - 2 * LEFT;
  private static final double FACE_HEIGHT = 112;
  private static final double ABOVE_HEIGHT = 62;
  private static final double BOXES_TOP = 251;

  private final FaceMark mark;
  private final LengthUnit first;
  private final PdfSheet sheet;

  MarkingCard(FaceMark mark, LengthUnit first, PdfSheet sheet) {
    this.mark = mark;
    this.first = first;
    this.sheet = sheet;
  }

  void write(OtherFaces drawings) throws IOException {
    double top = head();
    new DrawnPlate(sheet, LEFT, top, WIDTH, FACE_HEIGHT)
        .draw("The far face as you see it, the part turned over", drawings.draw(mark, first));
    double below = top + FACE_HEIGHT + 5;
    new CheckLine(sheet).draw(LEFT, below, first);
    sheet.text(
        Style.REMARK,
        new Point(LEFT, below + 4.5),
        "Dashed: the face on the other side.  Thick: the edges to mark from.");
    below += 8;
    double half = (WIDTH - 6) / 2;
    new DrawnPlate(sheet, LEFT, below, half, ABOVE_HEIGHT)
        .draw("Before it is turned", drawings.drawAbove(mark, first));
    notes(new Flow(sheet, LEFT + half + 6, below - 2, half, BOXES_TOP - 3));
    new PencilBoxes(sheet, LEFT, WIDTH)
        .draw(
            List.of(
                "First distance, marked",
                "Second distance, marked",
                "Came out at x",
                "at y",
                "Done by, date"),
            BOXES_TOP);
    new Flow(sheet, LEFT, BOXES_TOP + 17, WIDTH, PdfSheet.HEIGHT_MM - 8)
        .words(new Style(8.5, false, Ink.BLACK), "Caution. " + HoleCautions.DRILLING);
  }

  private double head() throws IOException {
    Flow flow = new Flow(sheet, LEFT, 12, WIDTH, BOXES_TOP);
    flow.words(Style.REMARK, "Marking-out card. To be drilled from the far face.");
    flow.words(Style.TITLE, mark.question().name());
    flow.words(
        new Style(12, false, Ink.BLACK),
        "Part " + mark.question().turn().words() + ". Corners keep their numbers.");
    flow.gap(1.5);
    for (EdgeDistance distance : mark.pair()) {
      flow.words(
          new Style(15, true, Ink.BLACK),
          size(distance.distanceMm()) + " from the " + distance.name());
    }
    flow.gap(2);
    return flow.y();
  }

  private void notes(Flow flow) throws IOException {
    MarkQuestion.Hole hole = mark.question().hole();
    flow.heading("Figures");
    flow.words(Style.TEXT, "Both distances square to their edge.");
    flow.words(
        Style.TEXT,
        "Drill "
            + size(hole.diameterMm())
            + " square to this face, "
            + size(hole.depthMm())
            + " deep.");
    flow.words(Style.TEXT, "Metal to the nearest edge here: " + small(mark.metalMm()));
    flow.words(
        Style.TEXT, "To be expected above: within " + small(hole.errorAboveMm()) + ", radius");
    flow.words(
        Style.REMARK,
        "marking "
            + small(hole.marking().radiusMm())
            + " ("
            + hole.marking().title()
            + ", "
            + hole.marking().means()
            + ") and wander of the drill "
            + small(hole.wanderMm())
            + " ("
            + hole.leadMeans()
            + "), added");
    flow.gap(1.5);
    if (mark.above().isPresent()) {
      var seat = mark.above().get();
      flow.point(
          Marks.of(seat.verdict()),
          "Head above "
              + seat.verdict().word()
              + ", allowance "
              + small(seat.allowanceAtIntendedMm()),
          "");
    }
    for (String caution : mark.cautions()) {
      String words = CardWords.begun(LengthFormat.turned(caution, first));
      if (flow.room(flow.pointMm(words, ""))) {
        flow.point(Marks.HALF, words, "");
      }
    }
  }

  private String small(double mm) {
    return LengthFormat.allowanceBoth(Length.ofMillimetres(mm), first);
  }

  private String size(double mm) {
    return LengthFormat.showBoth(Length.ofMillimetres(mm), first);
  }
}
