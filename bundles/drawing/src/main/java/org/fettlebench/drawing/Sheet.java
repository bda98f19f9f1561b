package org.fettlebench.drawing;

import org.fettlebench.measure.Point;

/**
 * Where a drawing lies on paper: to scale, in the middle of what its edges leave, y downwards.
 *
 * @param scale millimetres on paper per millimetre of the real thing
 * @param left paper x of the real zero
 * @param top paper y of the real zero
 * @param widthMm of the sheet
 * @param heightMm of the sheet
 * @param edges kept free of the frame on paper
 */
record Sheet(double scale, double left, double top, double widthMm, double heightMm, Edges edges) {

  /** Millimetres of paper on each side of a drawing's frame. */
  record Edges(double left, double top, double right, double bottom) {
    /** Beyond this the drawing would be too small to be of use; words then overlap it. */
    private static final double MOST_SHARE = 0.66;

    static Edges all(double mm) {
      return new Edges(mm, mm, mm, mm);
    }

    /** Returns these edges, smaller in proportion where they take more than most of a size. */
    private Edges within(double widthMm, double heightMm) {
      double across = Math.min(1, MOST_SHARE * widthMm / (left + right));
      double up = Math.min(1, MOST_SHARE * heightMm / (top + bottom));
      return new Edges(left * across, top * up, right * across, bottom * up);
    }
  }

  static Sheet of(Placement at) {
    return new Sheet(
        at.scale(), at.leftMm(), at.topMm(), at.widthMm(), at.heightMm(), Edges.all(0));
  }

  static Sheet fit(Drawing.Frame frame, double widthMm, double heightMm, Edges wanted) {
    Edges edges = wanted.within(widthMm, heightMm);
    double frameWidth = frame.maxXMm() - frame.minXMm();
    double frameHeight = frame.maxYMm() - frame.minYMm();
    double scale =
        Math.min(
            (widthMm - edges.left() - edges.right()) / frameWidth,
            (heightMm - edges.top() - edges.bottom()) / frameHeight);
    return new Sheet(scale, 0, 0, widthMm, heightMm, edges).at(frame, scale);
  }

  /** Returns this sheet with the frame in the middle of what the edges leave, at a scale. */
  Sheet at(Drawing.Frame frame, double newScale) {
    double middleX = (widthMm + edges.left() - edges.right()) / 2;
    double middleY = (heightMm + edges.top() - edges.bottom()) / 2;
    return new Sheet(
        newScale,
        middleX - newScale * (frame.minXMm() + frame.maxXMm()) / 2,
        middleY + newScale * (frame.minYMm() + frame.maxYMm()) / 2,
        widthMm,
        heightMm,
        edges);
  }

  /** Returns a real point's place on paper. */
  Point place(Point real) {
    return new Point(left + scale * real.xMm(), top - scale * real.yMm());
  }

  /** Returns whether a place of the paper is on the sheet. */
  boolean holds(Point at) {
    return at.xMm() >= 0 && at.xMm() <= widthMm && at.yMm() >= 0 && at.yMm() <= heightMm;
  }

  /** Shifts level words so that they stay on the sheet. */
  Point keepText(Point at, PaperPen.Hold hold, double lengthMm, double sizeMm) {
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
