package org.fettlebench.desktop.widgets;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.Transform;
import org.fettlebench.drawing.Item;

/** Sets words on a drawing, on a breath of paper so that lines do not run through them. */
final class Lettering {
  private static final int BREATH = 215;

  private final DrawingSheet sheet;

  Lettering(DrawingSheet sheet) {
    this.sheet = sheet;
  }

  void label(GC gc, Item.Label label, DrawingView view) {
    gc.setFont(sheet.lettering(label.strong()));
    Rectangle place = place(label, gc.textExtent(label.words()), view);
    level(gc, label.words(), DrawingSheet.INK, new Point(place.x, place.y));
  }

  /** Returns where a label of a size stands. */
  Rectangle place(Item.Label label, Point size, DrawingView view) {
    double gap = sheet.paper(1.8);
    double x = view.x(label.at().xMm()) - size.x / 2.0;
    double y = view.y(label.at().yMm()) - size.y / 2.0;
    return switch (label.side()) {
      case CENTRE -> box(x, y, size);
      case RIGHT -> box(x + size.x / 2.0 + gap, y, size);
      case LEFT -> box(x - size.x / 2.0 - gap, y, size);
      case ABOVE -> box(x, y - size.y / 2.0 - gap, size);
      case BELOW -> box(x, y + size.y / 2.0 + gap, size);
    };
  }

  private static Rectangle box(double x, double y, Point size) {
    return new Rectangle((int) Math.round(x), (int) Math.round(y), size.x, size.y);
  }

  private static void breathe(GC gc, Point size, int x, int y) {
    gc.setBackground(DrawingSheet.PAPER);
    gc.setAlpha(BREATH);
    gc.fillRoundRectangle(x - 2, y, size.x + 4, size.y, 6, 6);
    gc.setAlpha(255);
  }

  /** Sets words level, their left top at a place; the font is set on the GC already. */
  void level(GC gc, String words, Color colour, Point place) {
    breathe(gc, gc.textExtent(words), place.x, place.y);
    gc.setForeground(colour);
    gc.drawText(words, place.x, place.y, true);
  }

  /**
   * Sets words turned, standing on the line through a point.
   *
   * @param degrees clockwise, as the surface's rows run down
   * @param font set on the GC already
   */
  void turned(GC gc, String words, Color colour, double x, double y, double degrees) {
    Transform before = new Transform(gc.getDevice());
    Transform turned = new Transform(gc.getDevice());
    gc.getTransform(before);
    gc.getTransform(turned);
    turned.translate((float) x, (float) y);
    turned.rotate((float) degrees);
    gc.setTransform(turned);
    Point size = gc.textExtent(words);
    int left = -size.x / 2;
    int top = -size.y - (int) Math.round(sheet.paper(0.4));
    breathe(gc, size, left, top);
    gc.setForeground(colour);
    gc.drawText(words, left, top, true);
    gc.setTransform(before);
    before.dispose();
    turned.dispose();
  }
}
