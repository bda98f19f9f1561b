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
    double left = (widthMm - scale * frameWidth) / 2 - scale * frame.minXMm();
    double top = (heightMm - scale * frameHeight) / 2 + scale * frame.maxYMm();
    return new Sheet(scale, left, top, widthMm, heightMm);
  }

  /** Returns a real point's place on paper. */
  Point place(Point real) {
    return new Point(left + scale * real.xMm(), top - scale * real.yMm());
  }

  /** Shifts words so that they stay on the sheet. */
  Point keepText(Point at, double degrees, String anchor, double lengthMm, double sizeMm) {
    if (degrees != 0) {
      return at;
    }
    double before =
        switch (anchor) {
          case "start" -> 0;
          case "end" -> lengthMm;
          default -> lengthMm / 2;
        };
    double most = Math.max(before, widthMm - 1 - (lengthMm - before));
    double x = Math.max(1 + before, Math.min(at.xMm(), most));
    double y = Math.max(sizeMm, Math.min(at.yMm(), heightMm - 1));
    return new Point(x, y);
  }
}
