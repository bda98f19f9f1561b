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
   * Pixels left free on each side of a frame.
   *
   * @param left at the left
   * @param top above
   * @param right at the right
   * @param bottom below
   */
  public record Margins(double left, double top, double right, double bottom) {
    /** Returns the same margin on all sides. */
    public static Margins all(double margin) {
      return new Margins(margin, margin, margin, margin);
    }

    /** Returns these margins, smaller in proportion where they take more than half of a size. */
    Margins within(double width, double height) {
      double across = Math.min(1, width / 2 / Math.max(1e-9, left + right));
      double up = Math.min(1, height / 2 / Math.max(1e-9, top + bottom));
      return new Margins(left * across, top * up, right * across, bottom * up);
    }
  }

  /**
   * Returns the view that shows a whole frame in the middle of what a surface leaves between
   * margins.
   *
   * @param width pixels of the surface
   * @param height pixels of the surface
   * @param margins left free; less when they take more than half the surface
   */
  public static DrawingView fit(Drawing.Frame frame, int width, int height, Margins margins) {
    Margins free = margins.within(width, height);
    double roomX = width - free.left() - free.right();
    double roomY = height - free.top() - free.bottom();
    double scale =
        Math.min(
            roomX / (frame.maxXMm() - frame.minXMm()), roomY / (frame.maxYMm() - frame.minYMm()));
    double usable = Math.max(scale, 1e-6);
    double middleX = (frame.minXMm() + frame.maxXMm()) / 2;
    double middleY = (frame.minYMm() + frame.maxYMm()) / 2;
    return new DrawingView(
        usable,
        free.left() + roomX / 2 - middleX * usable,
        free.top() + roomY / 2 + middleY * usable);
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
