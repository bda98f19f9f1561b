package org.fettlebench.desktop.widgets;

import org.fettlebench.drawing.Drawing;
import org.fettlebench.measure.Point;

/**
 * Where a drawing's millimetres land on a surface: x to the right, y up the surface.
 *
 * @param pixelsPerMm pixels for one millimetre of the real thing; above 0
 * @param originX pixel column of x = 0
 * @param originY pixel row of y = 0
 */
public record DrawingView(double pixelsPerMm, double originX, double originY) {
  /** Refuses a scale that shows nothing. */
  public DrawingView {
    if (!(pixelsPerMm > 0 && Double.isFinite(pixelsPerMm))) {
      throw new IllegalArgumentException("a scale of " + pixelsPerMm + " px/mm shows nothing");
    }
  }

  /**
   * Returns the view that shows a whole frame in the middle of a surface.
   *
   * @param width pixels of the surface
   * @param height pixels of the surface
   * @param margin pixels left free on every side, less when the surface is small
   */
  public static DrawingView fit(Drawing.Frame frame, int width, int height, double margin) {
    double free = Math.min(margin, Math.min(width, height) / 4.0);
    double frameWidth = frame.maxXMm() - frame.minXMm();
    double frameHeight = frame.maxYMm() - frame.minYMm();
    double scale = Math.min((width - 2 * free) / frameWidth, (height - 2 * free) / frameHeight);
    double usable = Math.max(scale, 1e-6);
    double middleX = (frame.minXMm() + frame.maxXMm()) / 2;
    double middleY = (frame.minYMm() + frame.maxYMm()) / 2;
    return new DrawingView(usable, width / 2.0 - middleX * usable, height / 2.0 + middleY * usable);
  }

  /** Returns the pixel column of a place. */
  public double x(double xMm) {
    return originX + xMm * pixelsPerMm;
  }

  /** Returns the pixel row of a place. */
  public double y(double yMm) {
    return originY - yMm * pixelsPerMm;
  }

  /** Returns the place under a pixel. */
  public Point at(double x, double y) {
    return new Point((x - originX) / pixelsPerMm, (originY - y) / pixelsPerMm);
  }

  /** Returns the view closer by {@code factor}, with the place under a pixel staying there. */
  public DrawingView zoomed(double factor, double x, double y) {
    return new DrawingView(
        pixelsPerMm * factor, x + (originX - x) * factor, y + (originY - y) * factor);
  }

  /** Returns the view moved by pixels. */
  public DrawingView moved(double dx, double dy) {
    return new DrawingView(pixelsPerMm, originX + dx, originY + dy);
  }
}
