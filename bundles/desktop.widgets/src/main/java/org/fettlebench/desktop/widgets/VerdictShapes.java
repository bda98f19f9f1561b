package org.fettlebench.desktop.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;

/** Draws the verdict shapes, on any GC and as small pictures for lists. */
public final class VerdictShapes {
  private VerdictShapes() {}

  /**
   * Paints a shape in the GC's foreground, its ground in the GC's background.
   *
   * @param size of the square that holds the shape, in pixels
   */
  public static void paint(GC gc, VerdictMark mark, int x, int y, int size) {
    gc.setAntialias(SWT.ON);
    int line = Math.max(2, Math.round(size / 7f));
    gc.setLineWidth(line);
    gc.setLineCap(SWT.CAP_ROUND);
    gc.setLineJoin(SWT.JOIN_ROUND);
    int inset = (line + 1) / 2;
    int ring = size - 2 * inset;
    switch (mark) {
      case TICK ->
          gc.drawPolyline(
              new int[] {
                x + inset,
                y + size * 6 / 11,
                x + size * 4 / 11,
                y + size - inset - 1,
                x + size - inset,
                y + size * 2 / 11
              });
      case HALF -> {
        gc.drawOval(x + inset, y + inset, ring, ring);
        fill(gc, () -> gc.fillArc(x + inset, y + inset, ring, ring, 90, 180));
      }
      case STRUCK -> {
        fill(gc, () -> gc.fillOval(x, y, size, size));
        strike(gc, x, y, size);
      }
      case OPEN -> gc.drawOval(x + inset, y + inset, ring, ring);
      default -> throw new IllegalArgumentException("no shape for " + mark);
    }
  }

  private static void strike(GC gc, int x, int y, int size) {
    var ink = gc.getForeground();
    gc.setForeground(gc.getBackground());
    int quarter = size * 3 / 11;
    gc.drawLine(x + quarter, y + size / 2, x + size - quarter, y + size / 2);
    gc.setForeground(ink);
  }

  private static void fill(GC gc, Runnable painting) {
    var ground = gc.getBackground();
    gc.setBackground(gc.getForeground());
    painting.run();
    gc.setBackground(ground);
  }

  /** Returns a picture of the shape on nothing, for list cells; the caller disposes of it. */
  static Image picture(Display display, VerdictMark mark, RGB colour, int size) {
    return new Image(
        display, (int zoom) -> tinted(black(display, mark, size * zoom / 100), colour));
  }

  private static ImageData black(Display display, VerdictMark mark, int size) {
    Image image = new Image(display, size, size);
    GC gc = new GC(image);
    gc.setForeground(display.getSystemColor(SWT.COLOR_BLACK));
    gc.setBackground(display.getSystemColor(SWT.COLOR_WHITE));
    gc.fillRectangle(0, 0, size, size);
    paint(gc, mark, 0, 0, size - 1);
    gc.dispose();
    ImageData data = image.getImageData(100);
    image.dispose();
    return data;
  }

  /** Turns darkness into opacity of one colour. */
  private static ImageData tinted(ImageData black, RGB colour) {
    PaletteData palette = new PaletteData(0xFF0000, 0xFF00, 0xFF);
    ImageData result = new ImageData(black.width, black.height, 24, palette);
    int pixel = palette.getPixel(colour);
    for (int y = 0; y < black.height; y++) {
      for (int x = 0; x < black.width; x++) {
        int light = black.palette.getRGB(black.getPixel(x, y)).green;
        result.setPixel(x, y, pixel);
        result.setAlpha(x, y, 255 - light);
      }
    }
    return result;
  }
}
