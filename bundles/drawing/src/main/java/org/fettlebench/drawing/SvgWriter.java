package org.fettlebench.drawing;

import java.util.List;
import java.util.Locale;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/**
 * Writes a drawing as Scalable Vector Graphics for paper. Line widths are those of the group 0.5 of
 * ISO 128-2 (wide 0.5 mm, narrow 0.25 mm), lettering is 3.5 mm high (ISO 3098), arrowheads 3 mm.
 */
public final class SvgWriter {
  /** Room for the scale and the line to measure, below the drawing. */
  private static final double FOOT_MM = 10;

  private static final double EDGE_MM = 4;
  private static final double SCALE_WORDS_MM = 30;

  private SvgWriter() {}

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
    SvgPen pen = new SvgPen();
    pen.head(drawing.title(), widthMm, heightMm);
    Plotter.fit(drawing, widthMm, heightMm).plot(pen);
    pen.svg.append("</svg>\n");
    return pen.svg.toString();
  }

  /**
   * Returns the drawing as one SVG document at a scale of ISO 5455, which is written below it
   * beside a line to measure after printing.
   *
   * @param drawing what to write
   * @param widthMm width of the sheet, 10 to 5000 mm
   * @param heightMm height of the sheet, 10 to 5000 mm
   * @param first unit of the line to measure
   * @throws IllegalArgumentException if the sheet is outside these sizes
   */
  public static String toScale(Drawing drawing, double widthMm, double heightMm, LengthUnit first) {
    check("width", widthMm);
    check("height", heightMm);
    SvgPen pen = new SvgPen();
    pen.head(drawing.title(), widthMm, heightMm);
    Plotter plotter = Plotter.standardScale(drawing, widthMm, heightMm - FOOT_MM);
    plotter.plot(pen);
    double foot = heightMm - 4;
    pen.words(note("Scale " + plotter.scaleWords(), new Point(EDGE_MM, foot)));
    double left = EDGE_MM + SCALE_WORDS_MM;
    CheckLine.plot(pen, new Point(left, foot), first);
    Point beside = new Point(left + CheckLine.lengthMm(first) + 3, foot);
    pen.words(note(CheckLine.brief(first), beside));
    pen.svg.append("</svg>\n");
    return pen.svg.toString();
  }

  private static PaperPen.Words note(String words, Point at) {
    return new PaperPen.Words(at, 0, PaperPen.Hold.START, words, false);
  }

  private static void check(String name, double mm) {
    if (!(mm >= 10 && mm <= 5000)) {
      throw new IllegalArgumentException(
          "sheet " + name + " " + mm + " mm is outside 10 to 5000 mm");
    }
  }

  /** Writes each stroke as an element. */
  private static final class SvgPen implements PaperPen {
    private final StringBuilder svg = new StringBuilder();

    private void head(String title, double widthMm, double heightMm) {
      element(
          "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%smm\" height=\"%smm\""
              + " viewBox=\"0 0 %s %s\" role=\"img\" font-family=\"DejaVu Sans, sans-serif\">",
          number(widthMm), number(heightMm), number(widthMm), number(heightMm));
      element("<title>%s</title>", escape(title));
      element(
          "<rect width=\"%s\" height=\"%s\" fill=\"#ffffff\"/>", number(widthMm), number(heightMm));
    }

    @Override
    public void line(LineKind kind, List<Point> points, boolean closed) {
      element("<path d=\"%s\" fill=\"none\" %s/>", path(points, closed), SvgStyle.stroke(kind));
    }

    @Override
    public void circle(LineKind kind, Point centre, double radiusMm) {
      ring(centre, radiusMm, "fill=\"none\" " + SvgStyle.stroke(kind));
    }

    @Override
    public void fill(Tone tone, List<List<Point>> rings) {
      String shape = String.join(" ", rings.stream().map(ring -> path(ring, true)).toList());
      element("<path d=\"%s\" fill-rule=\"evenodd\" %s/>", shape, SvgStyle.fill(tone));
    }

    @Override
    public void mark(List<Point> points) {
      element("<path d=\"%s\" fill=\"none\" %s/>", path(points, false), SvgStyle.MARK);
    }

    @Override
    public void markRing(Point centre, double radiusMm) {
      ring(centre, radiusMm, "fill=\"none\" " + SvgStyle.MARK);
    }

    @Override
    public void dot(Point centre, double radiusMm) {
      ring(centre, radiusMm, "fill=\"" + SvgStyle.INK + "\"");
    }

    private void ring(Point centre, double radiusMm, String style) {
      String x = number(centre.xMm());
      String y = number(centre.yMm());
      element("<circle cx=\"%s\" cy=\"%s\" r=\"%s\" %s/>", x, y, number(radiusMm), style);
    }

    @Override
    public void arrow(List<Point> points) {
      element("<path d=\"%s\" fill=\"%s\"/>", path(points, true), SvgStyle.INK);
    }

    @Override
    public void words(Words words) {
      String x = number(words.at().xMm());
      String y = number(words.at().yMm());
      String turn =
          words.degrees() == 0
              ? ""
              : String.format(" transform=\"rotate(%s %s %s)\"", number(words.degrees()), x, y);
      element(
          "<text x=\"%s\" y=\"%s\" font-size=\"%s\" text-anchor=\"%s\" %s%s>%s</text>",
          x,
          y,
          number(Plotter.TEXT_MM),
          words.hold().name().toLowerCase(Locale.ROOT),
          SvgStyle.text(words.strong()),
          turn,
          escape(words.text()));
    }

    private void element(String format, Object... parts) {
      svg.append(String.format(Locale.ROOT, format, parts)).append('\n');
    }
  }

  private static String path(List<Point> points, boolean closed) {
    StringBuilder path = new StringBuilder();
    for (Point point : points) {
      path.append(path.isEmpty() ? 'M' : 'L')
          .append(number(point.xMm()))
          .append(' ')
          .append(number(point.yMm()));
    }
    return closed ? path.append('Z').toString() : path.toString();
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
