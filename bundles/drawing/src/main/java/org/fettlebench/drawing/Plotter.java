package org.fettlebench.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
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

  /** How far below their middle letters have their foot, of their height, about. */
  static final double FOOT_SHARE = 0.36;

  /** Distance from line to line, of their height. */
  static final double LINE_SHARE = 1.25;

  private static final double EDGE_MM = 4;

  /** Enlargements and reductions of ISO 5455, largest first. */
  private static final double[] SCALES = {
    50, 20, 10, 5, 2, 1, 1 / 2.0, 1 / 5.0, 1 / 10.0, 1 / 20.0, 1 / 50.0
  };

  /** Distance between hatching lines; common practice, no source. */
  private static final double HATCH_MM = 1.8;

  private final Drawing drawing;
  private final Sheet sheet;
  private final Lettering lettering;

  private Plotter(Drawing drawing, Sheet sheet, Lettering lettering) {
    this.drawing = drawing;
    this.sheet = sheet;
    this.lettering = lettering;
  }

  /** Returns a plotter that shows the drawing as large as the sheet allows, in the middle. */
  public static Plotter fit(Drawing drawing, double widthMm, double heightMm) {
    return fit(drawing, widthMm, heightMm, Lettering.USUAL);
  }

  /** Returns the same for a medium with letters of its own. */
  public static Plotter fit(Drawing drawing, double widthMm, double heightMm, Lettering lettering) {
    return new Plotter(drawing, fitted(drawing, widthMm, heightMm, lettering), lettering);
  }

  /** Returns a plotter that shows the drawing where a person moved it to. */
  public static Plotter placed(Drawing drawing, Placement at, Lettering lettering) {
    return new Plotter(drawing, Sheet.of(at), lettering);
  }

  /**
   * Returns a plotter that shows the drawing at the largest scale of ISO 5455 that the sheet
   * allows, so that it can be measured with a rule.
   */
  public static Plotter standardScale(Drawing drawing, double widthMm, double heightMm) {
    return standardScale(drawing, widthMm, heightMm, Double.POSITIVE_INFINITY);
  }

  /**
   * Returns the same at a scale no larger than one asked, so that views beside each other do not
   * seem to be of parts of different sizes.
   */
  public static Plotter standardScale(
      Drawing drawing, double widthMm, double heightMm, double largest) {
    Sheet most = fitted(drawing, widthMm, heightMm, Lettering.USUAL);
    for (double scale : SCALES) {
      if (scale <= most.scale() && scale <= largest) {
        return new Plotter(drawing, most.at(drawing.frame(), scale), Lettering.USUAL);
      }
    }
    return new Plotter(drawing, most, Lettering.USUAL);
  }

  private static Sheet fitted(
      Drawing drawing, double widthMm, double heightMm, Lettering lettering) {
    Sheet sheet = Sheet.fit(drawing.frame(), widthMm, heightMm, Sheet.Edges.all(EDGE_MM));
    // What words and dimensions need hardly depends on the scale: two rounds settle it.
    for (int round = 0; round < 2; round++) {
      Sheet.Edges needed = PaperReach.of(drawing, sheet, lettering, EDGE_MM);
      sheet = Sheet.fit(drawing.frame(), widthMm, heightMm, needed);
    }
    return sheet;
  }

  /** Returns millimetres of paper for one millimetre of the real thing. */
  public double scale() {
    return sheet.scale();
  }

  /** Returns where the drawing lies. */
  public Placement placement() {
    return new Placement(
        sheet.scale(), sheet.left(), sheet.top(), sheet.widthMm(), sheet.heightMm());
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
    if (area.tone() == Tone.WALL) {
      hatch(rings, pen);
    }
  }

  /** What stands above is hatched, so that it reads without colour. */
  private void hatch(List<List<Point>> rings, PaperPen pen) {
    List<double[]> flat = rings.stream().map(Plotter::flat).toList();
    Hatching.Within seen =
        Hatching.Within.sheet(sheet.left(), sheet.top(), sheet.widthMm(), sheet.heightMm());
    for (Hatching.Line line : Hatching.lines(flat, HATCH_MM, seen)) {
      Point from = new Point(line.x1(), line.y1());
      pen.line(LineKind.HATCH, List.of(from, new Point(line.x2(), line.y2())), false);
    }
  }

  private static double[] flat(List<Point> ring) {
    return ring.stream().flatMapToDouble(at -> DoubleStream.of(at.xMm(), at.yMm())).toArray();
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
      case SPOT -> {
        pen.mark(List.of(at.moved(-1, -1), at.moved(1, 1)));
        pen.mark(List.of(at.moved(-1, 1), at.moved(1, -1)));
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
    double height = lettering.heightMm();
    double middle = height * FOOT_SHARE;
    Point foot =
        switch (label.side()) {
          case RIGHT -> at.moved(gap, middle);
          case LEFT -> at.moved(-gap, middle);
          case ABOVE -> at.moved(0, middle - gap - height / 2);
          case BELOW -> at.moved(0, middle + gap + height / 2);
          case CENTRE -> at.moved(0, middle);
        };
    PaperPen.Hold hold =
        switch (label.side()) {
          case RIGHT -> PaperPen.Hold.START;
          case LEFT -> PaperPen.Hold.END;
          case ABOVE, BELOW, CENTRE -> PaperPen.Hold.MIDDLE;
        };
    String[] lines = label.words().split("\n");
    double above =
        switch (label.side()) {
          case RIGHT, LEFT, CENTRE -> (lines.length - 1) / 2.0;
          case ABOVE -> lines.length - 1;
          case BELOW -> 0;
        };
    for (int i = 0; i < lines.length; i++) {
      Point line = foot.moved(0, (i - above) * height * LINE_SHARE);
      words(pen, at, new PaperPen.Words(line, 0, hold, lines[i], label.strong()));
    }
  }

  private void dimension(Item.Dimension dimension, PaperPen pen) {
    double length = lettering.lengthMm(dimension.words(), dimension.strong());
    DimensionShape shape =
        DimensionShape.of(sheet, dimension, new DimensionShape.Size(length, lettering.heightMm()));
    pen.emphasis(dimension.strong());
    shape.lines().forEach(line -> pen.line(LineKind.THIN, line, false));
    shape.arrows().forEach(pen::arrow);
    pen.emphasis(false);
    words(
        pen,
        sheet.place(dimension.from()),
        new PaperPen.Words(
            shape.textAt(),
            shape.textDegrees(),
            PaperPen.Hold.MIDDLE,
            dimension.words(),
            dimension.strong()));
  }

  /** Words stay on the sheet as long as what they belong to is on it. */
  private void words(PaperPen pen, Point of, PaperPen.Words words) {
    if (words.degrees() != 0 || !sheet.holds(of)) {
      pen.words(words);
      return;
    }
    double length = lettering.lengthMm(words.text(), words.strong());
    Point kept = sheet.keepText(words.at(), words.hold(), length, lettering.heightMm());
    pen.words(new PaperPen.Words(kept, 0, words.hold(), words.text(), words.strong()));
  }
}
