package org.fettlebench.desktop.widgets;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
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
    Point size = gc.textExtent(label.words());
    double gap = sheet.paper(1.8);
    double x = view.x(label.at().xMm());
    double y = view.y(label.at().yMm());
    switch (label.side()) {
      case CENTRE -> words(gc, label.words(), x - size.x / 2.0, y - size.y / 2.0);
      case RIGHT -> words(gc, label.words(), x + gap, y - size.y / 2.0);
      case LEFT -> words(gc, label.words(), x - gap - size.x, y - size.y / 2.0);
      case ABOVE -> words(gc, label.words(), x - size.x / 2.0, y - gap - size.y);
      case BELOW -> words(gc, label.words(), x - size.x / 2.0, y + gap);
      default -> throw new IllegalArgumentException("no side " + label.side());
    }
  }

  private void words(GC gc, String words, double x, double y) {
    gc.setForeground(DrawingSheet.INK);
    breathe(gc, gc.textExtent(words), (int) Math.round(x), (int) Math.round(y));
    gc.drawText(words, (int) Math.round(x), (int) Math.round(y), true);
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
