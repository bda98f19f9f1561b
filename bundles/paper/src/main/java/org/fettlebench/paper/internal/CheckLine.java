package org.fettlebench.paper.internal;

import java.io.IOException;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** The line of known length on a page, with what is written beside it. */
final class CheckLine {
  private final PdfSheet sheet;

  CheckLine(PdfSheet sheet) {
    this.sheet = sheet;
  }

  /** Draws the line with its foot at a place, 50 mm or 2 in long as the unit is. */
  void draw(double left, double foot, LengthUnit unit) throws IOException {
    org.fettlebench.drawing.CheckLine.plot(new PdfPen(sheet, 0, 0), new Point(left, foot), unit);
    double length = org.fettlebench.drawing.CheckLine.lengthMm(unit);
    sheet.text(
        Style.REMARK,
        new Point(left + length + 3, foot - 0.3),
        org.fettlebench.drawing.CheckLine.words(unit));
  }
}
