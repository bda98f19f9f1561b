package org.fettlebench.desktop.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.LineAttributes;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.fettlebench.drawing.Item;

/**
 * Draws a dimension: extension lines, dimension line, filled arrowheads, and the figure on the
 * line, readable from below or from the right. Where there is no room between the extension lines
 * the arrows point in from outside.
 */
final class DimensionPen {
  private static final double ARROW_MM = 2.6;
  private static final double ARROW_HALF_MM = 0.5;

  /** How far past the line a figure stands that finds no room on it. */
  static final double PAST_MM = 2 * ARROW_MM + 0.6;

  private static final double GAP_MM = 0.8;
  private static final double BEYOND_MM = 1.6;

  private final Device device;
  private final DrawingSheet sheet;

  DimensionPen(Device device, DrawingSheet sheet) {
    this.device = device;
    this.sheet = sheet;
  }

  void draw(GC gc, Item.Dimension dimension, DrawingView view, Rectangle surface) {
    double off = sheet.paper(dimension.offsetMm());
    DimensionLine line = DimensionLine.of(dimension, view, off);
    double offX = line.alongY() * off;
    double offY = -line.alongX() * off;
    Color ink = dimension.strong() ? DrawingSheet.GOVERNS : DrawingSheet.INK;
    gc.setForeground(ink);
    gc.setBackground(ink);
    pen(gc, dimension.strong() ? 0.45 : 0.25);
    extension(gc, line.x1() - offX, line.y1() - offY, offX, offY);
    extension(gc, line.x2() - offX, line.y2() - offY, offX, offY);
    boolean outside = line.length() < sheet.paper(3 * ARROW_MM);
    line(gc, line, outside ? sheet.paper(2 * ARROW_MM) : 0);
    arrow(gc, line.x1(), line.y1(), line, outside ? -1 : 1);
    arrow(gc, line.x2(), line.y2(), line, outside ? 1 : -1);
    figure(gc, dimension, line, surface);
  }

  private void extension(GC gc, double x, double y, double offX, double offY) {
    double distance = Math.hypot(offX, offY);
    double gap = sheet.paper(GAP_MM);
    if (distance > gap) {
      double start = gap / distance;
      double end = 1 + sheet.paper(BEYOND_MM) / distance;
      stroke(gc, x + offX * start, y + offY * start, x + offX * end, y + offY * end);
    }
  }

  private void line(GC gc, DimensionLine at, double beyond) {
    stroke(
        gc,
        at.x1() - at.alongX() * beyond,
        at.y1() - at.alongY() * beyond,
        at.x2() + at.alongX() * beyond,
        at.y2() + at.alongY() * beyond);
  }

  /** Fills an arrowhead with its point at a place, its body towards +along or -along. */
  private void arrow(GC gc, double x, double y, DimensionLine at, int towards) {
    double length = sheet.paper(ARROW_MM) * towards;
    double half = sheet.paper(ARROW_HALF_MM);
    Path head = new Path(device);
    head.moveTo((float) x, (float) y);
    double baseX = x + at.alongX() * length;
    double baseY = y + at.alongY() * length;
    head.lineTo((float) (baseX - at.alongY() * half), (float) (baseY + at.alongX() * half));
    head.lineTo((float) (baseX + at.alongY() * half), (float) (baseY - at.alongX() * half));
    head.close();
    gc.fillPath(head);
    head.dispose();
  }

  private void figure(GC gc, Item.Dimension dimension, DimensionLine at, Rectangle surface) {
    Color ink = gc.getForeground();
    gc.setFont(sheet.lettering(dimension.strong()));
    Point size = gc.textExtent(dimension.words());
    Lettering lettering = new Lettering(sheet);
    if (size.x > at.length()) {
      Point place = aside(size, at, surface);
      lettering.level(gc, dimension.words(), ink, place);
    } else {
      double degrees = Math.toDegrees(Math.atan2(at.alongY(), at.alongX()));
      // Read from below or, near the upright, from the right, whichever way the line leans.
      double readable = degrees > 75 ? degrees - 180 : degrees <= -105 ? degrees + 180 : degrees;
      lettering.turned(gc, dimension.words(), ink, at.middleX(), at.middleY(), readable);
    }
  }

  /** Returns the left top of a figure that finds no room on the line, inside the surface. */
  private Point aside(Point size, DimensionLine at, Rectangle surface) {
    double past = sheet.paper(PAST_MM);
    double x = at.asideX(past, size.x, surface.x + surface.width / 2.0);
    double y = at.asideY(past, size.y);
    return new Point(
        within(x, surface.x + 2, surface.x + surface.width - size.x - 2),
        within(y, surface.y + 2, surface.y + surface.height - size.y - 2));
  }

  private static int within(double value, int least, int most) {
    return (int) Math.round(Math.max(least, Math.min(most, value)));
  }

  private void pen(GC gc, double widthMm) {
    float width = (float) Math.max(1, sheet.paper(widthMm));
    gc.setLineAttributes(new LineAttributes(width, SWT.CAP_FLAT, SWT.JOIN_MITER));
  }

  private void stroke(GC gc, double x1, double y1, double x2, double y2) {
    Path path = new Path(device);
    path.moveTo((float) x1, (float) y1);
    path.lineTo((float) x2, (float) y2);
    gc.drawPath(path);
    path.dispose();
  }
}
