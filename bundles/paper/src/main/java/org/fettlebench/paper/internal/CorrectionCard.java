package org.fettlebench.paper.internal;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.holes.correct.CorrectionAnswer;
import org.fettlebench.holes.correct.CorrectionAnswer.Outcome;
import org.fettlebench.holes.correct.CorrectionAnswer.WayOut;
import org.fettlebench.holes.correct.Corrections;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** The card of a correction: one page for the bench. */
final class CorrectionCard {
  private static final double LEFT = 14;
  private static final double WIDTH = PdfSheet.WIDTH_MM - 2 * LEFT;
  private static final double GAP = 4;
  private static final double COLUMN = (WIDTH - 6) / 2;
  private static final double DRAWING_HEIGHT = 92;
  private static final double BOXES_TOP = 251;

  private final String name;
  private final CorrectionAnswer answer;
  private final LengthUnit first;
  private final PdfSheet sheet;
  private final CorrectionWords words;

  CorrectionCard(String name, CorrectionAnswer answer, LengthUnit first, PdfSheet sheet) {
    this.name = name;
    this.answer = answer;
    this.first = first;
    this.sheet = sheet;
    this.words = new CorrectionWords(answer, first);
  }

  void write(Corrections drawings) throws IOException {
    double top = plates(drawings, head());
    Flow left = new Flow(sheet, LEFT, top, COLUMN, BOXES_TOP - 3);
    Flow right = new Flow(sheet, LEFT + COLUMN + 6, top, COLUMN, BOXES_TOP - 3);
    work(left);
    figures(right);
    waysOut(answer.outcome() == Outcome.PAST_CURE ? left : right);
    new PencilBoxes(sheet, LEFT, WIDTH)
        .draw(
            List.of(
                "Filed: left to right",
                "Filed: near to far",
                "Then found at x",
                "at y",
                "Done by, date"),
            BOXES_TOP);
    new Flow(sheet, LEFT, BOXES_TOP + 17, WIDTH, PdfSheet.HEIGHT_MM - 8)
        .words(new Style(8.5, false, Ink.BLACK), "Caution. " + HoleCautions.DRILLING);
  }

  private double head() throws IOException {
    Flow flow = new Flow(sheet, LEFT, 12, WIDTH, BOXES_TOP);
    flow.words(Style.REMARK, "Correction card. Seen from the face on which the head bears.");
    flow.words(Style.TITLE, name);
    flow.gap(2);
    Marks mark = mark();
    mark.draw(sheet, new Point(LEFT, flow.y()), 6.5);
    Style word = new Style(20, true, mark.ink());
    sheet.text(word, new Point(LEFT + 9, flow.y() + 5.8), answer.outcome().word());
    flow.gap(9);
    flow.words(new Style(14, true, Ink.BLACK), words.order());
    flow.gap(2);
    return flow.y();
  }

  private Marks mark() {
    return switch (answer.outcome()) {
      case ON_TARGET, LEAVE -> Marks.TICK;
      case FILE, FILE_IN_DOUBT -> Marks.HALF;
      case PAST_CURE -> Marks.STRUCK;
    };
  }

  private double plates(Corrections drawings, double top) throws IOException {
    double face = WIDTH * 0.56;
    new DrawnPlate(sheet, LEFT, top, face, DRAWING_HEIGHT)
        .draw("The face", drawings.drawFace(answer, first));
    new DrawnPlate(sheet, LEFT + face + GAP, top, WIDTH - face - GAP, DRAWING_HEIGHT)
        .draw("The hole", drawings.drawHole(answer, first));
    double below = top + DRAWING_HEIGHT + 5;
    new CheckLine(sheet).draw(LEFT, below, first);
    sheet.text(
        Style.REMARK,
        new Point(LEFT, below + 4.5),
        "Upright cross: where it should be.  Slanting cross: where it is.  Dashed: finished hole."
            + "  Chain circle: what the head sweeps.");
    return below + 8;
  }

  private void work(Flow flow) throws IOException {
    List<String> steps = words.steps();
    if (steps.isEmpty()) {
      return;
    }
    flow.heading(
        answer.outcome() == Outcome.LEAVE ? "If it is filed all the same" : "In this order");
    int number = 1;
    for (String step : steps) {
      flow.words(new Style(10.5, false, Ink.BLACK), number++ + ". " + step);
      flow.gap(0.8);
    }
  }

  private void figures(Flow flow) throws IOException {
    flow.heading("Figures");
    for (CorrectionWords.Row row : words.figures()) {
      flow.words(Style.TEXT, row.what());
      if (!row.remark().isBlank()) {
        flow.words(Style.REMARK, row.remark());
      }
      flow.gap(0.6);
    }
    flow.gap(1);
  }

  private void waysOut(Flow flow) throws IOException {
    if (answer.waysOut().isEmpty()) {
      return;
    }
    flow.heading("What else is possible");
    int left = answer.waysOut().size();
    for (WayOut way : answer.waysOut()) {
      String sentence = CardWords.begun(LengthFormat.turned(way.sentence(), first));
      if (flow.room(flow.pointMm(sentence, ""))) {
        flow.point(mark(way.after()), sentence, "");
        left--;
      }
    }
    if (left > 0) {
      flow.words(Style.REMARK, left + " more; \"hole correct\" tells them.");
    }
  }

  private static Marks mark(Optional<SeatAnswer> after) {
    return after.map(SeatAnswer::verdict).map(Marks::of).orElse(Marks.OPEN);
  }
}
