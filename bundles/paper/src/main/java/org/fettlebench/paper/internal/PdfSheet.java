package org.fettlebench.paper.internal;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.fettlebench.measure.Point;

/**
 * One page to draw on, A4 upright unless told. Places are millimetres from the left top of the
 * page, y down; font sizes are points.
 */
final class PdfSheet implements AutoCloseable {
  static final double WIDTH_MM = 210;
  static final double HEIGHT_MM = 297;

  private static final double POINTS_PER_MM = 72 / 25.4;

  private final Lettering lettering;
  private final PDPageContentStream content;
  private final double heightMm;

  PdfSheet(PDDocument document, Lettering lettering) throws IOException {
    this(document, lettering, WIDTH_MM, HEIGHT_MM);
  }

  PdfSheet(PDDocument document, Lettering lettering, double widthMm, double heightMm)
      throws IOException {
    this.lettering = lettering;
    this.heightMm = heightMm;
    PDPage page = new PDPage(new PDRectangle((float) points(widthMm), (float) points(heightMm)));
    document.addPage(page);
    content = new PDPageContentStream(document, page);
  }

  private static double points(double mm) {
    return mm * POINTS_PER_MM;
  }

  private static float x(double mm) {
    return (float) points(mm);
  }

  private float y(double mm) {
    return (float) points(heightMm - mm);
  }

  Lettering lettering() {
    return lettering;
  }

  private void stroking(Ink ink, double widthMm) throws IOException {
    content.setStrokingColor(ink.part(0), ink.part(1), ink.part(2));
    content.setLineWidth((float) points(widthMm));
  }

  private void filling(Ink ink) throws IOException {
    content.setNonStrokingColor(ink.part(0), ink.part(1), ink.part(2));
  }

  /** Draws a line through points, dashed as told in millimetres; no dashes are a whole line. */
  void line(Ink ink, double widthMm, List<Point> points, boolean closed, double... dashesMm)
      throws IOException {
    stroking(ink, widthMm);
    dash(dashesMm);
    trace(points);
    if (closed) {
      content.closePath();
    }
    content.stroke();
  }

  void line(Ink ink, double widthMm, Point from, Point to) throws IOException {
    line(ink, widthMm, List.of(from, to), false);
  }

  private void dash(double... dashesMm) throws IOException {
    float[] dashes = new float[dashesMm.length];
    for (int i = 0; i < dashes.length; i++) {
      dashes[i] = (float) points(dashesMm[i]);
    }
    content.setLineDashPattern(dashes, 0);
    content.setLineJoinStyle(1);
  }

  private void trace(List<Point> points) throws IOException {
    boolean first = true;
    for (Point point : points) {
      if (first) {
        content.moveTo(x(point.xMm()), y(point.yMm()));
      } else {
        content.lineTo(x(point.xMm()), y(point.yMm()));
      }
      first = false;
    }
  }

  void circle(Ink ink, double widthMm, Point centre, double radiusMm, double... dashesMm)
      throws IOException {
    stroking(ink, widthMm);
    dash(dashesMm);
    round(centre, radiusMm);
    content.stroke();
  }

  void disc(Ink ink, Point centre, double radiusMm) throws IOException {
    filling(ink);
    round(centre, radiusMm);
    content.fill();
  }

  /** Traces a circle as four curves; their control points stand 0.5523 radii off, within 0.03 %. */
  private void round(Point centre, double radiusMm) throws IOException {
    float cx = x(centre.xMm());
    float cy = y(centre.yMm());
    float r = (float) points(radiusMm);
    float k = r * 0.5522848f;
    content.moveTo(cx + r, cy);
    content.curveTo(cx + r, cy + k, cx + k, cy + r, cx, cy + r);
    content.curveTo(cx - k, cy + r, cx - r, cy + k, cx - r, cy);
    content.curveTo(cx - r, cy - k, cx - k, cy - r, cx, cy - r);
    content.curveTo(cx + k, cy - r, cx + r, cy - k, cx + r, cy);
    content.closePath();
  }

  /** Fills rings by the even-odd rule. */
  void fill(Ink ink, List<List<Point>> rings) throws IOException {
    filling(ink);
    for (List<Point> ring : rings) {
      trace(ring);
      content.closePath();
    }
    content.fillEvenOdd();
  }

  /** Frames a box. */
  void box(Ink ink, double widthMm, double left, double top, double width, double height)
      throws IOException {
    line(
        ink,
        widthMm,
        List.of(
            new Point(left, top),
            new Point(left + width, top),
            new Point(left + width, top + height),
            new Point(left, top + height)),
        true);
  }

  /** Writes one line; the place is its start on the foot line. */
  void text(Style style, Point at, String words) throws IOException {
    turned(style, at, 0, words);
  }

  /** Writes one line turned clockwise about its start. */
  void turned(Style style, Point at, double degrees, String words) throws IOException {
    content.saveGraphicsState();
    content.beginText();
    content.setFont(lettering.font(), (float) style.points());
    filling(style.ink());
    stroking(style.ink(), style.points() * 0.007);
    // The one face that is embedded is set heavier by drawing round its letters too.
    content.setRenderingMode(style.strong() ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
    content.setCharacterSpacing(
        style.strong() ? (float) (style.points() * Lettering.STRONG_SPACING) : 0);
    content.setTextMatrix(
        Matrix.getRotateInstance(Math.toRadians(-degrees), x(at.xMm()), y(at.yMm())));
    content.showText(lettering.writable(words));
    content.endText();
    content.restoreGraphicsState();
  }

  @Override
  public void close() throws IOException {
    content.close();
  }
}
