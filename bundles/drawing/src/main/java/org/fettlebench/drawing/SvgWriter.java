package org.fettlebench.drawing;

import java.util.List;
import java.util.Locale;
import org.fettlebench.measure.Point;

/**
 * Writes a drawing as Scalable Vector Graphics for paper. Line widths are those of the group 0.5 of
 * ISO 128-2 (wide 0.5 mm, narrow 0.25 mm), lettering is 3.5 mm high (ISO 3098), arrowheads 3 mm.
 */
public final class SvgWriter {
  private static final double EDGE_MM = 4;
  private static final double TEXT_MM = 3.5;

  private final StringBuilder svg = new StringBuilder();
  private final Sheet sheet;

  private SvgWriter(Sheet sheet) {
    this.sheet = sheet;
  }

  /**
   * Returns the drawing as one SVG document.
   *
   * @param drawing what to write; its frame is fitted into the sheet to scale, in the middle
   * @param widthMm width of the sheet, 10 to 5000 mm
   * @param heightMm height of the sheet, 10 to 5000 mm
   * @throws IllegalArgumentException if the sheet is outside these sizes
   */
  public static String write(Drawing drawing, double widthMm, double heightMm) {
    check("width", widthMm);
    check("height", heightMm);
    Sheet sheet = Sheet.fit(drawing.frame(), widthMm, heightMm, EDGE_MM);
    SvgWriter writer = new SvgWriter(sheet);
    writer.head(drawing.title(), widthMm, heightMm);
    drawing.items().forEach(writer::item);
    writer.svg.append("</svg>\n");
    return writer.svg.toString();
  }

  private static void check(String name, double mm) {
    if (!(mm >= 10 && mm <= 5000)) {
      throw new IllegalArgumentException(
          "sheet " + name + " " + mm + " mm is outside 10 to 5000 mm");
    }
  }

  private void head(String title, double widthMm, double heightMm) {
    line(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%smm\" height=\"%smm\""
            + " viewBox=\"0 0 %s %s\" role=\"img\" font-family=\"DejaVu Sans, sans-serif\">",
        number(widthMm), number(heightMm), number(widthMm), number(heightMm));
    line("<title>%s</title>", escape(title));
    line("<rect width=\"%s\" height=\"%s\" fill=\"#ffffff\"/>", number(widthMm), number(heightMm));
  }

  private void item(Item item) {
    if (item instanceof Item.Path path) {
      stroke(path.line(), "d=\"" + path(path.points(), path.closed()) + "\"", "path");
    } else if (item instanceof Item.Circle circle) {
      circle(circle);
    } else if (item instanceof Item.Area area) {
      area(area);
    } else if (item instanceof Item.Marker marker) {
      marker(marker);
    } else if (item instanceof Item.Label label) {
      label(label);
    } else if (item instanceof Item.Dimension dimension) {
      dimension(dimension);
    }
  }

  private void stroke(LineKind kind, String shape, String element) {
    line("<%s %s fill=\"none\" %s/>", element, shape, SvgStyle.stroke(kind));
  }

  private void circle(Item.Circle circle) {
    Point at = sheet.place(circle.centre());
    String shape =
        String.format(
            "cx=\"%s\" cy=\"%s\" r=\"%s\"",
            number(at.xMm()), number(at.yMm()), number(circle.radiusMm() * sheet.scale()));
    stroke(circle.line(), shape, "circle");
  }

  private void area(Item.Area area) {
    StringBuilder shape = new StringBuilder(path(area.shell(), true));
    area.holes().forEach(hole -> shape.append(' ').append(path(hole, true)));
    line("<path d=\"%s\" fill-rule=\"evenodd\" %s/>", shape, SvgStyle.fill(area.tone()));
  }

  private void marker(Item.Marker marker) {
    Point at = sheet.place(marker.at());
    String x = number(at.xMm());
    String y = number(at.yMm());
    switch (marker.mark()) {
      case CROSS ->
          line("<path d=\"M%s %sm-2.5 0h5m-2.5 -2.5v5\" fill=\"none\" %s/>", x, y, SvgStyle.MARK);
      case SALTIRE ->
          line("<path d=\"M%s %sm-2 -2l4 4m0 -4l-4 4\" fill=\"none\" %s/>", x, y, SvgStyle.MARK);
      case RING -> {
        line("<circle cx=\"%s\" cy=\"%s\" r=\"1.8\" fill=\"none\" %s/>", x, y, SvgStyle.MARK);
        line("<circle cx=\"%s\" cy=\"%s\" r=\"0.45\" fill=\"%s\"/>", x, y, SvgStyle.INK);
      }
      default -> throw new IllegalArgumentException("no such mark: " + marker.mark());
    }
  }

  private void label(Item.Label label) {
    Point at = sheet.place(label.at());
    double gap = 2;
    double x = at.xMm();
    double y = at.yMm() + TEXT_MM * 0.36;
    String anchor = "middle";
    switch (label.side()) {
      case RIGHT -> {
        x += gap;
        anchor = "start";
      }
      case LEFT -> {
        x -= gap;
        anchor = "end";
      }
      case ABOVE -> y -= gap + TEXT_MM / 2;
      case BELOW -> y += gap + TEXT_MM / 2;
      default -> y += 0;
    }
    text(new Point(x, y), 0, anchor, label.words(), label.strong());
  }

  private void dimension(Item.Dimension dimension) {
    DimensionShape shape = DimensionShape.of(sheet, dimension, TEXT_MM);
    LineKind kind = dimension.strong() ? LineKind.OUTLINE : LineKind.THIN;
    for (List<Point> part : shape.lines()) {
      line(
          "<path d=\"%s\" fill=\"none\" %s/>",
          placed(part, false), SvgStyle.stroke(part.size() > 2 ? kind : LineKind.THIN));
    }
    for (List<Point> arrow : shape.arrows()) {
      line("<path d=\"%s\" fill=\"%s\"/>", placed(arrow, true), SvgStyle.INK);
    }
    text(shape.textAt(), shape.textDegrees(), "middle", dimension.words(), dimension.strong());
  }

  private void text(Point at, double degrees, String anchor, String words, boolean strong) {
    Point kept = sheet.keepText(at, degrees, anchor, words.length() * TEXT_MM * 0.6, TEXT_MM);
    String turn =
        degrees == 0
            ? ""
            : String.format(
                " transform=\"rotate(%s %s %s)\"",
                number(degrees), number(kept.xMm()), number(kept.yMm()));
    line(
        "<text x=\"%s\" y=\"%s\" font-size=\"%s\" text-anchor=\"%s\" %s%s>%s</text>",
        number(kept.xMm()),
        number(kept.yMm()),
        number(TEXT_MM),
        anchor,
        SvgStyle.text(strong),
        turn,
        escape(words));
  }

  private String path(List<Point> points, boolean closed) {
    return placed(points.stream().map(sheet::place).toList(), closed);
  }

  private static String placed(List<Point> points, boolean closed) {
    StringBuilder path = new StringBuilder();
    for (Point point : points) {
      path.append(path.isEmpty() ? 'M' : 'L')
          .append(number(point.xMm()))
          .append(' ')
          .append(number(point.yMm()));
    }
    return closed ? path.append('Z').toString() : path.toString();
  }

  private void line(String format, Object... parts) {
    svg.append(String.format(Locale.ROOT, format, parts)).append('\n');
  }

  /** A thousandth of a millimetre on paper is finer than any printer. */
  private static String number(double mm) {
    String text = String.format(Locale.ROOT, "%.3f", mm);
    return text.replaceAll("\\.?0+$", "").replace("-0.000", "0");
  }

  private static String escape(String words) {
    return words
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
