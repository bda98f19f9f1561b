package org.fettlebench.desktop.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.LineAttributes;
import org.fettlebench.drawing.Item;

/** Draws markers of constant size on paper. */
final class MarkerPen {
  private final DrawingSheet sheet;

  MarkerPen(DrawingSheet sheet) {
    this.sheet = sheet;
  }

  void draw(GC gc, Item.Marker marker, DrawingView view) {
    double x = view.x(marker.at().xMm());
    double y = view.y(marker.at().yMm());
    gc.setForeground(DrawingSheet.INK);
    gc.setBackground(DrawingSheet.INK);
    switch (marker.mark()) {
      case CROSS -> cross(gc, x, y);
      case RING -> ring(gc, x, y);
      case SALTIRE -> saltire(gc, x, y);
      default -> throw new IllegalArgumentException("no shape for " + marker.mark());
    }
  }

  private void cross(GC gc, double x, double y) {
    double arm = sheet.paper(2.6);
    pen(gc, 0.3);
    line(gc, x - arm, y, x + arm, y);
    line(gc, x, y - arm, x, y + arm);
  }

  private void ring(GC gc, double x, double y) {
    double radius = sheet.paper(1.5);
    double dot = sheet.paper(0.45);
    pen(gc, 0.4);
    gc.drawOval(px(x - radius), px(y - radius), px(2 * radius), px(2 * radius));
    gc.fillOval(px(x - dot), px(y - dot), px(2 * dot), px(2 * dot));
  }

  private void saltire(GC gc, double x, double y) {
    double arm = sheet.paper(1.6);
    pen(gc, 0.5);
    line(gc, x - arm, y - arm, x + arm, y + arm);
    line(gc, x - arm, y + arm, x + arm, y - arm);
  }

  private void pen(GC gc, double widthMm) {
    float width = (float) Math.max(1, sheet.paper(widthMm));
    gc.setLineAttributes(new LineAttributes(width, SWT.CAP_ROUND, SWT.JOIN_ROUND));
  }

  private static void line(GC gc, double x1, double y1, double x2, double y2) {
    gc.drawLine(px(x1), px(y1), px(x2), px(y2));
  }

  private static int px(double value) {
    return (int) Math.round(value);
  }
}
