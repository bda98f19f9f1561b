package org.fettlebench.paper.internal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.PaperPen;
import org.fettlebench.drawing.Plotter;
import org.fettlebench.drawing.Tone;
import org.fettlebench.measure.Point;

/**
 * Draws a drawing on a page, its left top at a place of the page. Widths are those of the group 0.5
 * of ISO 128-2: wide 0.5 mm, narrow 0.25 mm.
 */
final class PdfPen implements PaperPen {
  private static final double MARK_MM = 0.35;

  private final PdfSheet sheet;
  private final double left;
  private final double top;

  PdfPen(PdfSheet sheet, double left, double top) {
    this.sheet = sheet;
    this.left = left;
    this.top = top;
  }

  /** Something drawn, which may fail. */
  private interface Stroke {
    void draw() throws IOException;
  }

  private static void draw(Stroke stroke) {
    try {
      stroke.draw();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  private Point on(Point point) {
    return point.moved(left, top);
  }

  private List<Point> on(List<Point> points) {
    return points.stream().map(this::on).toList();
  }

  @Override
  public void line(LineKind kind, List<Point> points, boolean closed) {
    draw(() -> sheet.line(ink(kind), width(kind), on(points), closed, dashes(kind)));
  }

  @Override
  public void circle(LineKind kind, Point centre, double radiusMm) {
    draw(() -> sheet.circle(ink(kind), width(kind), on(centre), radiusMm, dashes(kind)));
  }

  @Override
  public void fill(Tone tone, List<List<Point>> rings) {
    Ink ink =
        switch (tone) {
          case PART -> Ink.PART;
          case WALL -> Ink.WALL;
          case HEAD -> Ink.HEAD;
          case ALLOWED -> Ink.ALLOWED;
          case EMPTY -> Ink.WHITE;
        };
    draw(() -> sheet.fill(ink, rings.stream().map(this::on).toList()));
  }

  @Override
  public void mark(List<Point> points) {
    draw(() -> sheet.line(Ink.BLACK, MARK_MM, on(points), false));
  }

  @Override
  public void markRing(Point centre, double radiusMm) {
    draw(() -> sheet.circle(Ink.BLACK, MARK_MM, on(centre), radiusMm));
  }

  @Override
  public void dot(Point centre, double radiusMm) {
    draw(() -> sheet.disc(Ink.BLACK, on(centre), radiusMm));
  }

  @Override
  public void arrow(List<Point> points) {
    draw(() -> sheet.fill(Ink.BLACK, List.of(on(points))));
  }

  @Override
  public void words(Words words) {
    draw(() -> write(words));
  }

  /** Words stand on a white ground, so that they stay legible where they cross a line. */
  private void write(Words words) throws IOException {
    double capPoints = Plotter.TEXT_MM / 0.72 * 72 / 25.4 * 0.85;
    Style style = new Style(capPoints, words.strong(), words.strong() ? Ink.GOVERNS : Ink.BLACK);
    double length = sheet.lettering().lengthMm(style, words.text());
    double back =
        switch (words.hold()) {
          case START -> 0;
          case MIDDLE -> length / 2;
          case END -> length;
        };
    double turn = Math.toRadians(words.degrees());
    Point foot = on(words.at());
    Point start = foot.moved(-back * Math.cos(turn), -back * Math.sin(turn));
    ground(start, turn, length);
    sheet.turned(style, start, words.degrees(), words.text());
  }

  private void ground(Point start, double turn, double length) throws IOException {
    double ux = Math.cos(turn);
    double uy = Math.sin(turn);
    double below = 0.5;
    double above = -Plotter.TEXT_MM * 0.85;
    Point from = start.moved(-0.5 * ux, -0.5 * uy);
    Point to = start.moved((length + 0.5) * ux, (length + 0.5) * uy);
    sheet.fill(
        Ink.WHITE,
        List.of(
            List.of(
                from.moved(-uy * below, ux * below),
                to.moved(-uy * below, ux * below),
                to.moved(-uy * above, ux * above),
                from.moved(-uy * above, ux * above))));
  }

  private static Ink ink(LineKind kind) {
    return switch (kind) {
      case GOVERNING -> Ink.GOVERNS;
      case HATCH -> Ink.FAINT;
      case OUTLINE, THIN, CENTRE, HIDDEN -> Ink.BLACK;
    };
  }

  private static double width(LineKind kind) {
    return switch (kind) {
      case OUTLINE -> 0.5;
      case THIN, CENTRE, HIDDEN -> 0.25;
      case HATCH -> 0.18;
      case GOVERNING -> 1.2;
    };
  }

  private static double[] dashes(LineKind kind) {
    return switch (kind) {
      case CENTRE -> new double[] {6, 1, 0.6, 1};
      case HIDDEN -> new double[] {3, 0.9};
      case OUTLINE, THIN, HATCH, GOVERNING -> new double[0];
    };
  }
}
