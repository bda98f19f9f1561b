package org.fettlebench.paper.internal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.fettlebench.drawing.Plotter;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.fettlebench.paper.SeatCards;
import org.osgi.service.component.annotations.Component;

/** Writes the card of a single seat: verdict, drawing to a standard scale, figures, boxes. */
@Component
public final class SeatCardService implements SeatCards {
  private static final double LEFT = 14;
  private static final double WIDTH = PdfSheet.WIDTH_MM - 2 * LEFT;
  private static final double DRAWING_HEIGHT = 120;
  private static final double BOXES_TOP = 252;
  private static final String CAUTION =
      "Caution. Guards on, work clamped, eyes covered, chuck key out; never a finger in the hole.";
  private static final double GAP = 1;
  private static final String LEGEND =
      "Upright cross: where the hole should be.  Ring: best centre.  Toned: where it may be.  Thin"
          + " spokes: how far it may be out each way.  Chain circle: what the head sweeps.";
  private static final Style MIDDLE = new Style(9.8, false, Ink.BLACK);
  private static final Style LARGE = new Style(11.5, false, Ink.BLACK);

  @Override
  public void card(Card card, LengthUnit first, OutputStream pdf) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (PDDocument document = new PDDocument()) {
      document.getDocumentInformation().setTitle(card.title());
      document.getDocumentInformation().setCreator("Fettlebench");
      try (PdfSheet sheet = new PdfSheet(document, new Lettering(document))) {
        write(card, first, sheet);
      }
      document.save(bytes);
    } catch (UncheckedIOException failure) {
      throw failure.getCause();
    }
    bytes.writeTo(pdf);
  }

  private static void write(Card card, LengthUnit first, PdfSheet sheet) throws IOException {
    Flow head = new Flow(sheet, LEFT, 12, WIDTH, BOXES_TOP);
    head.words(Style.REMARK, "Seat and hole");
    head.words(Style.TITLE, card.title());
    head.words(LARGE, card.what());
    head.gap(3);
    Marks mark = Marks.of(card.verdict());
    mark.draw(sheet, new Point(LEFT, head.y()), 6.5);
    sheet.text(
        new Style(20, true, mark.ink()),
        new Point(LEFT + 9, head.y() + 5.8),
        card.verdict().word());
    double top = drawing(card, first, sheet, head.y() + 9);
    Flow lines = new Flow(sheet, LEFT, top, WIDTH, BOXES_TOP - 2);
    lines(card.lines(), lines);
    boxes(sheet);
    new Flow(sheet, LEFT, BOXES_TOP + 18, WIDTH, PdfSheet.HEIGHT_MM).words(Style.TEXT, CAUTION);
  }

  /** Large as long as everything fits, for an arm's length; else as large as it must. */
  private static void lines(List<String> all, Flow flow) throws IOException {
    double largeMm = 0;
    for (String line : all) {
      largeMm += flow.heightMm(LARGE, line, 0) + GAP;
    }
    Style style = flow.room(largeMm) ? LARGE : MIDDLE;
    int left = all.size();
    for (String line : all) {
      boolean last = left == 1;
      double more = last ? 0 : flow.heightMm(Style.REMARK, "more", 0);
      if (flow.room(flow.heightMm(style, line, 0) + more)) {
        flow.words(style, line);
        flow.gap(GAP);
        left--;
      } else {
        flow.words(Style.REMARK, left + " lines more; the page and \"seat check\" tell them.");
        return;
      }
    }
  }

  private static double drawing(Card card, LengthUnit first, PdfSheet sheet, double top)
      throws IOException {
    Plotter plotter = Plotter.standardScale(card.drawing(), WIDTH, DRAWING_HEIGHT);
    sheet.box(Ink.RULE, 0.25, LEFT, top, WIDTH, DRAWING_HEIGHT);
    plotter.plot(new PdfPen(sheet, LEFT, top));
    double below = top + DRAWING_HEIGHT + 5;
    sheet.text(Style.STRONG, new Point(LEFT, below), "Scale " + plotter.scaleWords());
    new CheckLine(sheet).draw(LEFT + 28, below, first);
    Flow legend = new Flow(sheet, LEFT, below + 1.5, WIDTH, BOXES_TOP);
    legend.words(Style.REMARK, LEGEND);
    return legend.y() + 2.5;
  }

  private static void boxes(PdfSheet sheet) throws IOException {
    List<String> names = List.of("Hole at x", "Hole at y", "Diameter", "Drilled by, on");
    double width = WIDTH / names.size();
    for (int i = 0; i < names.size(); i++) {
      sheet.box(Ink.BLACK, 0.25, LEFT + i * width, BOXES_TOP, width, 15);
      sheet.text(Style.REMARK, new Point(LEFT + i * width + 1.5, BOXES_TOP + 3.6), names.get(i));
    }
  }
}
