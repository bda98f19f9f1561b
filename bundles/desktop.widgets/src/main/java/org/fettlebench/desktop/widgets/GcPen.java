package org.fettlebench.desktop.widgets;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.LineAttributes;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Transform;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.PaperPen;
import org.fettlebench.drawing.Tone;
import org.fettlebench.measure.Point;

/** Draws what a plotter makes of a drawing on an SWT GC. */
final class GcPen implements PaperPen {
  private static final double MARK_MM = 0.35;

  /** How much of what lies beneath words their paper covers, so that lines do not cross them. */
  private static final int BREATH = 215;

  private final GC gc;
  private final DrawingSheet sheet;
  private final double left;
  private final double top;
  private boolean governs;

  /**
   * Makes a pen.
   *
   * @param left pixel column of the paper's left
   * @param top pixel row of the paper's top
   */
  GcPen(GC gc, DrawingSheet sheet, double left, double top) {
    this.gc = gc;
    this.sheet = sheet;
    this.left = left;
    this.top = top;
  }

  private float x(Point at) {
    return (float) (left + sheet.paper(at.xMm()));
  }

  private float y(Point at) {
    return (float) (top + sheet.paper(at.yMm()));
  }

  private void trace(Path path, List<Point> points) {
    boolean first = true;
    for (Point point : points) {
      if (first) {
        path.moveTo(x(point), y(point));
      } else {
        path.lineTo(x(point), y(point));
      }
      first = false;
    }
  }

  private Path path(List<Point> points, boolean closed) {
    Path path = new Path(gc.getDevice());
    trace(path, points);
    if (closed) {
      path.close();
    }
    return path;
  }

  private Path ring(Point centre, double radiusMm) {
    float radius = (float) sheet.paper(radiusMm);
    Path path = new Path(gc.getDevice());
    path.addArc(x(centre) - radius, y(centre) - radius, 2 * radius, 2 * radius, 0, 360);
    path.close();
    return path;
  }

  @Override
  public void line(LineKind kind, List<Point> points, boolean closed) {
    stroke(kind, path(points, closed));
  }

  @Override
  public void circle(LineKind kind, Point centre, double radiusMm) {
    stroke(kind, ring(centre, radiusMm));
  }

  private void stroke(LineKind kind, Path path) {
    gc.setForeground(governs ? DrawingSheet.GOVERNS : DrawingSheet.ink(kind));
    gc.setLineAttributes(governs ? sheet.heavier() : sheet.pen(kind));
    gc.drawPath(path);
    path.dispose();
  }

  @Override
  public void fill(Tone tone, List<List<Point>> rings) {
    Path path = new Path(gc.getDevice());
    for (List<Point> ring : rings) {
      trace(path, ring);
      path.close();
    }
    gc.setBackground(DrawingSheet.shade(tone));
    gc.setAlpha(DrawingSheet.opacity(tone));
    gc.fillPath(path);
    gc.setAlpha(255);
    path.dispose();
  }

  @Override
  public void mark(List<Point> points) {
    marked(path(points, false));
  }

  @Override
  public void markRing(Point centre, double radiusMm) {
    marked(ring(centre, radiusMm));
  }

  private void marked(Path path) {
    float width = (float) Math.max(1, sheet.paper(MARK_MM));
    gc.setForeground(DrawingSheet.INK);
    gc.setLineAttributes(new LineAttributes(width, SWT.CAP_ROUND, SWT.JOIN_ROUND));
    gc.drawPath(path);
    path.dispose();
  }

  @Override
  public void dot(Point centre, double radiusMm) {
    filled(DrawingSheet.INK, ring(centre, radiusMm));
  }

  @Override
  public void arrow(List<Point> points) {
    filled(governs ? DrawingSheet.GOVERNS : DrawingSheet.INK, path(points, true));
  }

  private void filled(Color ink, Path path) {
    gc.setBackground(ink);
    gc.fillPath(path);
    path.dispose();
  }

  @Override
  public void emphasis(boolean on) {
    governs = on;
  }

  @Override
  public void words(Words words) {
    gc.setFont(sheet.lettering(words.strong()));
    org.eclipse.swt.graphics.Point size = gc.textExtent(words.text());
    double before =
        switch (words.hold()) {
          case START -> 0;
          case MIDDLE -> size.x / 2.0;
          case END -> size.x;
        };
    int foot = gc.getFontMetrics().getAscent() + gc.getFontMetrics().getLeading();
    if (words.degrees() == 0) {
      written(words, size, px(x(words.at()) - before), px(y(words.at()) - foot));
    } else {
      turned(words, size, px(-before), -foot);
    }
  }

  private void turned(Words words, org.eclipse.swt.graphics.Point size, int x, int y) {
    Transform before = new Transform(gc.getDevice());
    Transform turned = new Transform(gc.getDevice());
    gc.getTransform(before);
    gc.getTransform(turned);
    turned.translate(x(words.at()), y(words.at()));
    turned.rotate((float) words.degrees());
    gc.setTransform(turned);
    written(words, size, x, y);
    gc.setTransform(before);
    before.dispose();
    turned.dispose();
  }

  private void written(Words words, org.eclipse.swt.graphics.Point size, int x, int y) {
    gc.setBackground(DrawingSheet.PAPER);
    gc.setAlpha(BREATH);
    gc.fillRoundRectangle(x - 2, y, size.x + 4, size.y, 6, 6);
    gc.setAlpha(255);
    gc.setForeground(words.strong() ? DrawingSheet.GOVERNS : DrawingSheet.INK);
    gc.drawText(words.text(), x, y, true);
  }

  private static int px(double value) {
    return (int) Math.round(value);
  }
}
