package org.fettlebench.paper.internal;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.fettlebench.castings.Placing;
import org.fettlebench.castings.PlacingWords;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** The marking-out card of a casting: one page for the surface plate. */
final class CastingCard {
  private static final double LEFT = 14;
  private static final double WIDTH = PdfSheet.WIDTH_MM - 2 * LEFT;
  private static final double BOXES_TOP = 251;
  private static final double GAP = 6;
  private static final double HEADING_MM = 6.5;

  /** What a drawing needs at least to be of use. */
  private static final double LEAST_DRAWING = 70;

  private static final Style LARGE = new Style(11.5, false, Ink.BLACK);
  private static final Style CAUTION = new Style(8.5, false, Ink.BLACK);

  private final Placing placing;
  private final PlacingWords words;
  private final LengthUnit first;
  private final PdfSheet sheet;
  private final CastingPlates plates;

  CastingCard(Placing placing, LengthUnit first, PdfSheet sheet, CastingPlates plates) {
    this.placing = placing;
    this.words = new PlacingWords(placing, first);
    this.first = first;
    this.sheet = sheet;
    this.plates = plates;
  }

  void write(boolean holdsPressure) throws IOException {
    double top = head("Marking-out card. Raw casting to be machined.");
    List<String> setOut = setOut();
    List<Placing.Coming> faces =
        placing.features().stream()
            .sorted(Comparator.comparingDouble(Placing.Coming::spareMm))
            .toList();
    double below = wordsMm(setOut) + 8 + facesMm(faces.size()) + 8;
    double height = Math.max(LEAST_DRAWING, BOXES_TOP - 3 - below - 8 - top);
    plates.draw(sheet, LEFT, top, WIDTH, height);
    double check = top + height + 5;
    new CheckLine(sheet).draw(LEFT, check, first);
    Flow flow = new Flow(sheet, LEFT, check + 1.5, WIDTH, BOXES_TOP - 3);
    flow.heading("Scribe, measured from the rough");
    for (String line : setOut) {
      if (flow.room(flow.heightMm(LARGE, line, 0))) {
        flow.words(LARGE, line);
      }
    }
    flow.gap(1);
    faces(faces, flow);
    foot(holdsPressure);
  }

  /** Writes the views alone. */
  void writeViews() throws IOException {
    double top = head("Casting with the metal that comes off");
    plates.draw(sheet, LEFT, top, WIDTH, PdfSheet.HEIGHT_MM - 20 - top);
    new CheckLine(sheet).draw(LEFT, PdfSheet.HEIGHT_MM - 12, first);
  }

  private double head(String what) throws IOException {
    Flow flow = new Flow(sheet, LEFT, 12, WIDTH, BOXES_TOP);
    flow.words(Style.REMARK, what);
    flow.words(Style.TITLE, CardWords.begun(placing.casting().name()));
    flow.gap(2);
    Marks mark = mark();
    mark.draw(sheet, new Point(LEFT, flow.y()), 6.5);
    sheet.text(
        new Style(20, true, mark.ink()),
        new Point(LEFT + 9, flow.y() + 5.8),
        placing.outcome().word());
    flow.gap(8.5);
    flow.words(LARGE, CardWords.begun(words.spare()) + "; " + words.governs() + ".");
    for (String line : remedies()) {
      flow.words(LARGE, line);
    }
    flow.gap(2);
    return flow.y();
  }

  private Marks mark() {
    return switch (placing.outcome()) {
      case CLEANS_UP -> Marks.TICK;
      case JUST -> Marks.HALF;
      case SHORT -> Marks.STRUCK;
    };
  }

  /** Returns the two smallest changes of the drawing that would do, or what to cut instead. */
  private List<String> remedies() {
    if (placing.cleansUp()) {
      return List.of();
    }
    List<String> lines = new ArrayList<>();
    words.givings().stream().limit(2).map(line -> "Would do: " + line + ".").forEach(lines::add);
    if (lines.isEmpty()) {
      words.lessCuts().stream().limit(2).map(line -> "Or: " + line + ".").forEach(lines::add);
    }
    return lines;
  }

  private List<String> setOut() {
    List<String> lines = new ArrayList<>();
    List<String> said = words.settingOut();
    for (int i = 0; i < said.size(); i++) {
      String onwards = words.onwards(placing.settingOut().get(i));
      lines.add(CardWords.begun(said.get(i)) + (onwards.isEmpty() ? "." : "; " + onwards + "."));
    }
    if (lines.isEmpty()) {
      lines.add(CardWords.begun(words.place()) + ".");
    }
    return lines;
  }

  private double wordsMm(List<String> lines) throws IOException {
    Flow measured = new Flow(sheet, LEFT, 0, WIDTH, PdfSheet.HEIGHT_MM);
    double height = 0;
    for (String line : lines) {
      height += measured.heightMm(LARGE, line, 0);
    }
    return height;
  }

  private static double facesMm(int count) {
    return Math.min(6, (count + 1) / 2) * (Style.TEXT.lineMm() + 0.8);
  }

  /** Writes what comes off in two columns, those with least spare first, as many as fit. */
  private void faces(List<Placing.Coming> faces, Flow flow) throws IOException {
    double half = (WIDTH - GAP) / 2;
    double top = flow.y() + HEADING_MM;
    Flow left = new Flow(sheet, LEFT, top, half, BOXES_TOP - 2);
    Flow right = new Flow(sheet, LEFT + half + GAP, top, half, BOXES_TOP - 2);
    int rows = (faces.size() + 1) / 2;
    int written = 0;
    for (int i = 0; i < faces.size(); i++) {
      Placing.Coming one = faces.get(i);
      Flow column = i < rows && left.room(columnMm(one, left)) ? left : right;
      if (column.room(columnMm(one, column))) {
        column.point(mark(one), line(one), "");
        written++;
      }
    }
    flow.heading(
        "Comes off, least spare first"
            + (written < faces.size() ? " (" + written + " of " + faces.size() + ")" : ""));
  }

  private double columnMm(Placing.Coming one, Flow column) throws IOException {
    return column.pointMm(line(one), "");
  }

  private String line(Placing.Coming one) {
    return one.feature().name() + " " + words.comesOff(one);
  }

  private static Marks mark(Placing.Coming one) {
    if (!Placing.cleansUp(one.spareMm())) {
      return Marks.STRUCK;
    }
    return one.governs() ? Marks.HALF : Marks.OPEN;
  }

  private void foot(boolean holdsPressure) throws IOException {
    new PencilBoxes(sheet, LEFT, WIDTH)
        .draw(
            List.of("Set out by, date", "First line scribed", "Hollows, sand", "Cleaned up"),
            BOXES_TOP);
    Flow flow = new Flow(sheet, LEFT, BOXES_TOP + 16.5, WIDTH, PdfSheet.HEIGHT_MM - 5);
    for (String caution : PlacingWords.cautions(holdsPressure)) {
      flow.words(CAUTION, caution);
    }
    flow.words(
        Style.REMARK,
        "Comes off is square to the finished face. Between the spots measured nothing is known.");
  }
}
