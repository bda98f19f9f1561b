package org.fettlebench.desktop.widgets;

import org.fettlebench.drawing.Item;

/**
 * Where a dimension's line lands on a surface, in pixels; rows run down.
 *
 * @param x1 column of its first end
 * @param y1 row of its first end
 * @param x2 column of its second end
 * @param y2 row of its second end
 * @param alongX column share of the unit vector from the first to the second end
 * @param alongY row share of it
 * @param length pixels between the ends
 */
record DimensionLine(
    double x1, double y1, double x2, double y2, double alongX, double alongY, double length) {

  /** Places a dimension that stands off {@code off} pixels to the left of from-to. */
  static DimensionLine of(Item.Dimension dimension, DrawingView view, double off) {
    double fromX = view.x(dimension.from().xMm());
    double fromY = view.y(dimension.from().yMm());
    double toX = view.x(dimension.to().xMm());
    double toY = view.y(dimension.to().yMm());
    double length = Math.hypot(toX - fromX, toY - fromY);
    double alongX = length > 0 ? (toX - fromX) / length : 1;
    double alongY = length > 0 ? (toY - fromY) / length : 0;
    // Left of from-to; rows run down, so the turn is the other way round on the surface.
    double offX = alongY * off;
    double offY = -alongX * off;
    return new DimensionLine(
        fromX + offX, fromY + offY, toX + offX, toY + offY, alongX, alongY, length);
  }

  double middleX() {
    return (x1 + x2) / 2;
  }

  double middleY() {
    return (y1 + y2) / 2;
  }

  /** Returns whether the line stands rather than lies. */
  private boolean upright() {
    return Math.abs(alongY) > Math.abs(alongX);
  }

  /**
   * Returns the left of words set level where there is no room for them on the line: so far past
   * its second end, or, where it stands upright, beside it, away from a middle column.
   */
  double asideX(double past, double width, double middle) {
    if (upright()) {
      return middleX() < middle ? middleX() - past / 3 - width : middleX() + past / 3;
    }
    return x2 + alongX * past + Math.signum(alongX) * Math.abs(alongX) * width / 2 - width / 2;
  }

  /** Returns the top of those words. */
  double asideY(double past, double height) {
    if (upright()) {
      return middleY() - height / 2;
    }
    return y2 + alongY * past + Math.signum(alongY) * Math.abs(alongY) * height / 2 - height / 2;
  }
}
