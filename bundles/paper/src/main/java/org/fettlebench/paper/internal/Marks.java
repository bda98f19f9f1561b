package org.fettlebench.paper.internal;

import java.io.IOException;
import java.util.List;
import org.fettlebench.fits.Verdict;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.JointReport;
import org.fettlebench.measure.Point;

/** The shapes beside words that judge, which read in black and white. */
enum Marks {
  /** It fits: a tick. */
  TICK(Ink.GOOD),
  /** It asks for care: a ring, half filled. */
  HALF(Ink.CARE),
  /** It fails: a filled disc, struck through. */
  STRUCK(Ink.BAD),
  /** Nothing is judged: an open ring. */
  OPEN(Ink.FAINT);

  private final Ink ink;

  Marks(Ink ink) {
    this.ink = ink;
  }

  Ink ink() {
    return ink;
  }

  static Marks of(Verdict verdict) {
    return switch (verdict) {
      case CLEARS -> TICK;
      case TIGHT -> HALF;
      case FOULS -> STRUCK;
    };
  }

  static Marks of(JointReport joint) {
    return joint.fails() ? STRUCK : joint.verdict().map(Marks::of).orElse(OPEN);
  }

  static Marks of(Finding.Weight weight) {
    return switch (weight) {
      case NOTE -> OPEN;
      case CAUTION -> HALF;
      case FAULT -> STRUCK;
    };
  }

  static Marks of(JointReport.Fetch.State state) {
    return switch (state) {
      case IN, IN_BAG -> TICK;
      case OUT, WORN -> HALF;
      case NOT_HELD -> STRUCK;
    };
  }

  /** Draws the shape in a square, its left top at a place. */
  void draw(PdfSheet sheet, Point at, double sizeMm) throws IOException {
    double line = sizeMm / 8;
    double radius = sizeMm / 2 - line / 2;
    Point middle = at.moved(sizeMm / 2, sizeMm / 2);
    switch (this) {
      case TICK ->
          sheet.line(
              ink,
              line,
              List.of(
                  at.moved(line, sizeMm * 0.55),
                  at.moved(sizeMm * 0.38, sizeMm * 0.85),
                  at.moved(sizeMm * 0.92, sizeMm * 0.15)),
              false);
      case HALF -> {
        sheet.circle(ink, line, middle, radius);
        sheet.fill(ink, List.of(leftHalf(middle, radius)));
      }
      case STRUCK -> {
        sheet.disc(ink, middle, sizeMm / 2);
        double arm = sizeMm * 0.27;
        sheet.line(Ink.WHITE, line, middle.moved(-arm, 0), middle.moved(arm, 0));
      }
      case OPEN -> sheet.circle(ink, line, middle, radius);
      default -> throw new IllegalArgumentException("no shape for " + this);
    }
  }

  private static List<Point> leftHalf(Point middle, double radius) {
    return java.util.stream.IntStream.rangeClosed(0, 18)
        .mapToObj(step -> Math.toRadians(90 + 10 * step))
        .map(turn -> middle.moved(radius * Math.cos(turn), radius * Math.sin(turn)))
        .toList();
  }
}
