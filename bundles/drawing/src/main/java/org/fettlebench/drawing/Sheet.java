package org.fettlebench.drawing;

import org.fettlebench.measure.Point;

/**
 * Where a drawing lies on paper: to scale, in the middle, y downwards.
 *
 * @param scale millimetres on paper per millimetre of the real thing
 * @param left paper x of the real zero
 * @param top paper y of the real zero
 * @param widthMm of the sheet
 * @param heightMm of the sheet
 */
record Sheet(double scale, double left, double top, double widthMm, double heightMm) {
  static Sheet fit(Drawing.Frame frame, double widthMm, double heightMm, double edgeMm) {
    double frameWidth = frame.maxXMm() - frame.minXMm();
    double frameHeight = frame.maxYMm() - frame.minYMm();
    double scale =
        Math.min((widthMm - 2 * edgeMm) / frameWidth, (heightMm - 2 * edgeMm) / frameHeight);
    return new Sheet(scale, 0, 0, widthMm, heightMm).at(frame, scale);
  }

  /** Returns this sheet with the frame in its middle at a scale. */
  Sheet at(Drawing.Frame frame, double newScale) {
    double frameWidth = frame.maxXMm() - frame.minXMm();
    double frameHeight = frame.maxYMm() - frame.minYMm();
    double middleLeft = (widthMm - newScale * frameWidth) / 2 - newScale * frame.minXMm();
    double middleTop = (heightMm - newScale * frameHeight) / 2 + newScale * frame.maxYMm();
    return new Sheet(newScale, middleLeft, middleTop, widthMm, heightMm);
  }

  /** Returns a real point's place on paper. */
  Point place(Point real) {
    return new Point(left + scale * real.xMm(), top - scale * real.yMm());
  }

  /** Shifts words so that they stay on the sheet. */
  Point keepText(Point at, double degrees, PaperPen.Hold hold, double lengthMm, double sizeMm) {
    if (degrees != 0) {
      return at;
    }
    double before =
        switch (hold) {
          case START -> 0;
          case END -> lengthMm;
          case MIDDLE -> lengthMm / 2;
        };
    double most = Math.max(before, widthMm - 1 - (lengthMm - before));
    double x = Math.max(1 + before, Math.min(at.xMm(), most));
    double y = Math.max(sizeMm, Math.min(at.yMm(), heightMm - 1));
    return new Point(x, y);
  }
}
