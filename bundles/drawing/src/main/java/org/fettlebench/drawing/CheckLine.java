package org.fettlebench.drawing;

import java.util.List;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** A line of known length, to be measured after printing: printers like to fit pages to paper. */
public final class CheckLine {
  private static final double MM = 50;
  private static final double TWO_INCHES_MM = 50.8;

  /** Height of the line over its foot, end ticks and all, mm of paper. */
  public static final double HIGH_MM = 4;

  private CheckLine() {}

  /** Returns how long the line is: 50 mm, or 2 in where lengths are shown in inches. */
  public static double lengthMm(LengthUnit unit) {
    return unit == LengthUnit.INCH ? TWO_INCHES_MM : MM;
  }

  /** Returns what is to be written beside it where there is little room. */
  public static String brief(LengthUnit unit) {
    return (unit == LengthUnit.INCH ? "2 in" : "50 mm") + " when printed at full size";
  }

  /** Returns what is to be written beside it. */
  public static String words(LengthUnit unit) {
    return brief(unit) + "; if it is not, do not measure the drawing.";
  }

  /** Draws the line to the right of its foot, parted at every centimetre or half inch. */
  public static void plot(PaperPen pen, Point foot, LengthUnit unit) {
    double length = lengthMm(unit);
    int parts = unit == LengthUnit.INCH ? 4 : 5;
    Point start = foot.moved(0, -1);
    pen.line(LineKind.THIN, List.of(start, start.moved(length, 0)), false);
    for (int i = 0; i <= parts; i++) {
      double high = i == 0 || i == parts ? HIGH_MM - 1 : 1.8;
      Point at = start.moved(length * i / parts, 0);
      pen.line(LineKind.THIN, List.of(at, at.moved(0, -high)), false);
    }
  }
}
