package org.fettlebench.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fettlebench.measure.Point;

/**
 * Turns a drawing into simple strokes, fills and words on a sheet of paper. Lettering is 3.5 mm
 * high (ISO 3098), arrowheads 3 mm; both keep their size whatever the scale.
 */
public final class Plotter {
  /** Height of lettering on paper, mm. */
  public static final double TEXT_MM = 3.5;

  /** How far a label stands from its point. */
  static final double LABEL_GAP_MM = 2;

  /** Width of a letter for its height, about. */
  static final double LETTER_SHARE = 0.6;

  private static final double EDGE_MM = 4;

  /** Enlargements and reductions of ISO 5455, largest first. */
  private static final double[] SCALES = {
    50, 20, 10, 5, 2, 1, 1 / 2.0, 1 / 5.0, 1 / 10.0, 1 / 20.0, 1 / 50.0
  };

  private final Drawing drawing;
  private final Sheet sheet;

  private Plotter(Drawing drawing, Sheet sheet) {
    this.drawing = drawing;
    this.sheet = sheet;
  }

  /** Returns a plotter that shows the drawing as large as the sheet allows, in the middle. */
  public static Plotter fit(Drawing drawing, double widthMm, double heightMm) {
    return new Plotter(drawing, fitted(drawing, widthMm, heightMm));
  }

  /**
   * Returns a plotter that shows the drawing at the largest scale of ISO 5455 that the sheet
   * allows, so that it can be measured with a rule.
   */
  public static Plotter standardScale(Drawing drawing, double widthMm, double heightMm) {
    Sheet most = fitted(drawing, widthMm, heightMm);
    for (double scale : SCALES) {
      if (scale <= most.scale()) {
        return new Plotter(drawing, most.at(drawing.frame(), scale));
      }
    }
    return new Plotter(drawing, most);
  }

  private static Sheet fitted(Drawing drawing, double widthMm, double heightMm) {
    Sheet sheet = Sheet.fit(drawing.frame(), widthMm, heightMm, Sheet.Edges.all(EDGE_MM));
    // What words and dimensions need hardly depends on the scale: two rounds settle it.
    for (int round = 0; round < 2; round++) {
      Sheet.Edges needed = PaperReach.of(drawing, sheet, EDGE_MM);
      sheet = Sheet.fit(drawing.frame(), widthMm, heightMm, needed);
    }
    return sheet;
  }

  /** Returns millimetres of paper for one millimetre of the real thing. */
  public double scale() {
    return sheet.scale();
  }

  /** Returns how high the drawing stands on paper with what stands off its frame, mm. */
  public double heightMm() {
    double beyond = sheet.edges().top() + sheet.edges().bottom() - 2 * EDGE_MM;
    return (drawing.frame().maxYMm() - drawing.frame().minYMm()) * scale() + beyond;
  }

  /** Returns the scale as a drawing says it: {@code 5:1}, {@code 1:2}. */
  public String scaleWords() {
    return scale() >= 1 ? number(scale()) + ":1" : "1:" + number(1 / scale());
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value).replaceAll("\\.?0+$", "");
  }

  /** Draws everything, bottom up. */
  public void plot(PaperPen pen) {
    drawing.items().forEach(item -> plot(item, pen));
  }

  private void plot(Item item, PaperPen pen) {
    if (item instanceof Item.Path path) {
      pen.line(path.line(), placed(path.points()), path.closed());
    } else if (item instanceof Item.Circle circle) {
      double radius = circle.radiusMm() * sheet.scale();
      pen.circle(circle.line(), sheet.place(circle.centre()), radius);
    } else if (item instanceof Item.Area area) {
      area(area, pen);
    } else if (item instanceof Item.Marker marker) {
      marker(marker, pen);
    } else if (item instanceof Item.Label label) {
      label(label, pen);
    } else if (item instanceof Item.Dimension dimension) {
      dimension(dimension, pen);
    }
  }

  private List<Point> placed(List<Point> points) {
    return points.stream().map(sheet::place).toList();
  }

  private void area(Item.Area area, PaperPen pen) {
    List<List<Point>> rings = new ArrayList<>();
    rings.add(placed(area.shell()));
    area.holes().forEach(hole -> rings.add(placed(hole)));
    pen.fill(area.tone(), rings);
  }

  private void marker(Item.Marker marker, PaperPen pen) {
    Point at = sheet.place(marker.at());
    switch (marker.mark()) {
      case CROSS -> {
        pen.mark(List.of(at.moved(-2.5, 0), at.moved(2.5, 0)));
        pen.mark(List.of(at.moved(0, -2.5), at.moved(0, 2.5)));
      }
      case SALTIRE -> {
        pen.mark(List.of(at.moved(-2, -2), at.moved(2, 2)));
        pen.mark(List.of(at.moved(-2, 2), at.moved(2, -2)));
      }
      case RING -> {
        pen.markRing(at, 1.8);
        pen.dot(at, 0.45);
      }
      default -> throw new IllegalArgumentException("no such mark: " + marker.mark());
    }
  }

  private void label(Item.Label label, PaperPen pen) {
    Point at = sheet.place(label.at());
    double gap = LABEL_GAP_MM;
    double middle = TEXT_MM * 0.36;
    String words = label.words();
    boolean strong = label.strong();
    switch (label.side()) {
      case RIGHT -> words(pen, at.moved(gap, middle), 0, PaperPen.Hold.START, words, strong);
      case LEFT -> words(pen, at.moved(-gap, middle), 0, PaperPen.Hold.END, words, strong);
      case ABOVE -> centred(pen, at.moved(0, middle - gap - TEXT_MM / 2), words, strong);
      case BELOW -> centred(pen, at.moved(0, middle + gap + TEXT_MM / 2), words, strong);
      default -> centred(pen, at.moved(0, middle), words, strong);
    }
  }

  private void centred(PaperPen pen, Point at, String words, boolean strong) {
    words(pen, at, 0, PaperPen.Hold.MIDDLE, words, strong);
  }

  private void dimension(Item.Dimension dimension, PaperPen pen) {
    DimensionShape shape = DimensionShape.of(sheet, dimension, TEXT_MM);
    shape.lines().forEach(line -> pen.line(LineKind.THIN, line, false));
    shape.arrows().forEach(pen::arrow);
    words(
        pen,
        shape.textAt(),
        shape.textDegrees(),
        PaperPen.Hold.MIDDLE,
        dimension.words(),
        dimension.strong());
  }

  private void words(
      PaperPen pen, Point at, double degrees, PaperPen.Hold hold, String words, boolean strong) {
    double length = words.length() * TEXT_MM * LETTER_SHARE;
    Point kept = sheet.keepText(at, degrees, hold, length, TEXT_MM);
    pen.words(new PaperPen.Words(kept, degrees, hold, words, strong));
  }
}
