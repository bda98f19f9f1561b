package org.fettlebench.drawing;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.measure.Point;

/**
 * A dimension laid out on paper (ISO 129-1): extension lines with a gap and an overshoot, the
 * dimension line with arrowheads, outside when there is no room between, and the figure above the
 * line, readable from below or from the right.
 *
 * @param lines extension lines, then the dimension line
 * @param arrows filled arrowheads
 * @param textAt foot of the figure's middle
 * @param textDegrees turn of the figure, clockwise on paper
 */
record DimensionShape(
    List<List<Point>> lines, List<List<Point>> arrows, Point textAt, double textDegrees) {
  private static final double ARROW_MM = 3;
  private static final double LEAN_DEGREES = 15;
  private static final double GAP_MM = 1;
  private static final double OVERSHOOT_MM = 1.5;

  /**
   * Room that a figure takes on paper.
   *
   * @param lengthMm its length
   * @param heightMm of its letters
   */
  record Size(double lengthMm, double heightMm) {}

  static DimensionShape of(Sheet sheet, Item.Dimension dimension, Size figure) {
    double textMm = figure.heightMm();
    Point from = sheet.place(dimension.from());
    Point to = sheet.place(dimension.to());
    double length = from.distanceMm(to);
    double ux = length > 0 ? (to.xMm() - from.xMm()) / length : 1;
    double uy = length > 0 ? (to.yMm() - from.yMm()) / length : 0;
    // Paper y runs down, so left of the direction is (uy, -ux).
    double offset = dimension.offsetMm();
    Point a = from.moved(uy * offset, -ux * offset);
    Point b = to.moved(uy * offset, -ux * offset);
    List<List<Point>> lines = new ArrayList<>();
    if (Math.abs(offset) > GAP_MM) {
      double way = Math.signum(offset);
      lines.add(extension(from, a, uy * way, -ux * way));
      lines.add(extension(to, b, uy * way, -ux * way));
    }
    boolean inside = length >= 2.5 * ARROW_MM;
    double tail = inside ? 0 : 2 * ARROW_MM;
    lines.add(List.of(a.moved(-ux * tail, -uy * tail), b.moved(ux * tail, uy * tail)));
    double way = inside ? 1 : -1;
    List<List<Point>> arrows =
        List.of(arrow(a, ux * way, uy * way), arrow(b, -ux * way, -uy * way));
    Point middle = new Point((a.xMm() + b.xMm()) / 2, (a.yMm() + b.yMm()) / 2);
    double words = figure.lengthMm();
    if (words > length - 1 && Math.abs(uy) > Math.abs(ux)) {
      // No room along an upright line: the figure stands level beside it, away from the middle.
      double aside = middle.xMm() < sheet.widthMm() / 2 ? -1 : 1;
      Point beside = middle.moved(aside * (words / 2 + 1.5), textMm * 0.36);
      return new DimensionShape(lines, arrows, beside, 0);
    }
    if (words > length - 1) {
      // No room between: the figure stands beyond the first arrow, on the line drawn out to it.
      double out = tail + (inside ? 1 : 0) + words / 2;
      middle = a.moved(-ux * out, -uy * out);
      lines.add(List.of(a, a.moved(-ux * (out + words / 2), -uy * (out + words / 2))));
    }
    return new DimensionShape(lines, arrows, lifted(middle, ux, uy, textMm), degrees(ux, uy));
  }

  private static List<Point> extension(Point start, Point end, double nx, double ny) {
    return List.of(
        start.moved(nx * GAP_MM, ny * GAP_MM), end.moved(nx * OVERSHOOT_MM, ny * OVERSHOOT_MM));
  }

  private static List<Point> arrow(Point tip, double ux, double uy) {
    double half = ARROW_MM / 6;
    Point back = tip.moved(ux * ARROW_MM, uy * ARROW_MM);
    return List.of(tip, back.moved(-uy * half, ux * half), back.moved(uy * half, -ux * half));
  }

  private static double degrees(double ux, double uy) {
    double degrees = Math.toDegrees(Math.atan2(uy, ux));
    // A line that leans a little from the upright is still read from the right.
    if (degrees > 90 - LEAN_DEGREES) {
      return degrees - 180;
    }
    return degrees <= -90 - LEAN_DEGREES ? degrees + 180 : degrees;
  }

  private static Point lifted(Point middle, double ux, double uy, double textMm) {
    double turn = Math.toRadians(degrees(ux, uy));
    double lift = textMm * 0.35;
    return middle.moved(Math.sin(turn) * lift, -Math.cos(turn) * lift);
  }
}
