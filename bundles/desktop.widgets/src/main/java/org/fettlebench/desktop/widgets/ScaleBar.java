package org.fettlebench.desktop.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.LineAttributes;
import org.eclipse.swt.graphics.Point;

/** A bar of a round length, so that sizes can be read off at every zoom. */
final class ScaleBar {
  /** The bar is as long as a round figure allows up to this much paper. */
  private static final double LONGEST_MM = 28;

  /** Height of the strip that the bar and its words take, paper. */
  static final double STRIP_MM = 5;

  private final DrawingSheet sheet;

  ScaleBar(DrawingSheet sheet) {
    this.sheet = sheet;
  }

  void draw(GC gc, DrawingView view, int height, String unit, double unitMm) {
    double pixelsPerUnit = view.pixelsPerMm() * unitMm;
    double units = round(sheet.paper(LONGEST_MM) / pixelsPerUnit);
    int left = (int) sheet.paper(3);
    int bottom = height - (int) sheet.paper(3);
    int length = (int) Math.round(units * pixelsPerUnit);
    int tick = (int) sheet.paper(1.2);
    gc.setFont(sheet.lettering(false));
    gc.setForeground(DrawingSheet.FAINT);
    gc.setLineAttributes(
        new LineAttributes((float) Math.max(1, sheet.paper(0.35)), SWT.CAP_FLAT, SWT.JOIN_MITER));
    gc.drawLine(left, bottom, left + length, bottom);
    gc.drawLine(left, bottom - tick, left, bottom + tick);
    gc.drawLine(left + length, bottom - tick, left + length, bottom + tick);
    String words = words(units) + " " + unit;
    Point size = gc.textExtent(words);
    gc.drawText(words, left + length + (int) sheet.paper(1.5), bottom - size.y / 2, true);
  }

  /** Returns the largest of 1, 2, 5 times a power of ten that is not above a value. */
  static double round(double value) {
    double power = Math.pow(10, Math.floor(Math.log10(value)));
    double share = value / power;
    return power * (share >= 5 ? 5 : share >= 2 ? 2 : 1);
  }

  static String words(double units) {
    return new java.math.BigDecimal(units)
        .round(new java.math.MathContext(1))
        .stripTrailingZeros()
        .toPlainString();
  }
}
