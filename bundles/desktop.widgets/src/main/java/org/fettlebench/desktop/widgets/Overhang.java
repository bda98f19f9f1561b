package org.fettlebench.desktop.widgets;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;

/**
 * Measures how far dimensions and words reach beyond the frame of a drawing, in pixels, so that the
 * whole can be shown as large as the surface allows.
 */
final class Overhang {
  private final GC gc;
  private final DrawingSheet sheet;
  private final DrawingView view;
  private final double middle;
  private double left;
  private double top;
  private double right;
  private double bottom;

  private Overhang(GC gc, DrawingSheet sheet, Drawing.Frame frame, DrawingView view) {
    this.gc = gc;
    this.sheet = sheet;
    this.view = view;
    left = view.x(frame.minXMm());
    right = view.x(frame.maxXMm());
    middle = (left + right) / 2;
    top = view.y(frame.maxYMm());
    bottom = view.y(frame.minYMm());
  }

  static DrawingView.Margins measure(GC gc, DrawingSheet sheet, Drawing drawing, DrawingView view) {
    Drawing.Frame frame = drawing.frame();
    Overhang reach = new Overhang(gc, sheet, frame, view);
    drawing.items().forEach(reach::add);
    double breath = sheet.paper(2);
    return new DrawingView.Margins(
        breath + view.x(frame.minXMm()) - reach.left,
        breath + view.y(frame.maxYMm()) - reach.top,
        breath + reach.right - view.x(frame.maxXMm()),
        breath + reach.bottom - view.y(frame.minYMm()));
  }

  private void add(Item item) {
    if (item instanceof Item.Dimension dimension) {
      add(dimension);
    } else if (item instanceof Item.Label label) {
      gc.setFont(sheet.lettering(label.strong()));
      var place = new Lettering(sheet).place(label, gc.textExtent(label.words()), view);
      add(place.x, place.y);
      add(place.x + place.width, place.y + place.height);
    }
  }

  private void add(Item.Dimension dimension) {
    DimensionLine line = DimensionLine.of(dimension, view, sheet.paper(dimension.offsetMm()));
    add(line.x1(), line.y1());
    add(line.x2(), line.y2());
    gc.setFont(sheet.lettering(dimension.strong()));
    Point size = gc.textExtent(dimension.words());
    if (size.x <= line.length()) {
      // Words stand on the line, on either side of it, turned with it.
      double reach = size.y + sheet.paper(0.5);
      double acrossX = Math.abs(line.alongY()) * reach;
      double acrossY = Math.abs(line.alongX()) * reach;
      add(line.middleX() - acrossX, line.middleY() - acrossY);
      add(line.middleX() + acrossX, line.middleY() + acrossY);
    } else {
      double past = sheet.paper(DimensionPen.PAST_MM);
      double x = line.asideX(past, size.x, middle);
      double y = line.asideY(past, size.y);
      add(x, y);
      add(x + size.x, y + size.y);
    }
  }

  private void add(double x, double y) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }
}
