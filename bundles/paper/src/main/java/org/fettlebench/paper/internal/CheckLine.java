package org.fettlebench.paper.internal;

import java.io.IOException;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** A line of known length, to be measured after printing: printers like to fit pages to paper. */
final class CheckLine {
  private static final double MM = 50;
  private static final double TWO_INCHES_MM = 50.8;

  private final PdfSheet sheet;

  CheckLine(PdfSheet sheet) {
    this.sheet = sheet;
  }

  /** Draws the line with its foot at a place, 50 mm or 2 in long as the unit is. */
  void draw(double left, double foot, LengthUnit unit) throws IOException {
    boolean inches = unit == LengthUnit.INCH;
    double length = inches ? TWO_INCHES_MM : MM;
    int parts = inches ? 4 : 5;
    sheet.line(Ink.BLACK, 0.25, new Point(left, foot - 1), new Point(left + length, foot - 1));
    for (int i = 0; i <= parts; i++) {
      double x = left + length * i / parts;
      double high = i == 0 || i == parts ? 3 : 1.8;
      sheet.line(Ink.BLACK, 0.25, new Point(x, foot - 1), new Point(x, foot - 1 - high));
    }
    sheet.text(
        Style.REMARK,
        new Point(left + length + 3, foot - 0.3),
        (inches ? "2 in" : "50 mm")
            + " when printed at full size; if it is not, do not measure the drawing.");
  }
}
