package org.fettlebench.desktop.widgets;

import org.eclipse.swt.graphics.GC;
import org.fettlebench.drawing.Lettering;

/** Measures the letters of a GC. */
final class GcLettering implements Lettering {
  private final GC gc;
  private final DrawingSheet sheet;

  GcLettering(GC gc, DrawingSheet sheet) {
    this.gc = gc;
    this.sheet = sheet;
  }

  @Override
  public double heightMm() {
    return DrawingSheet.LETTERING_MM;
  }

  @Override
  public double lengthMm(String words, boolean strong) {
    gc.setFont(sheet.lettering(strong));
    return sheet.millimetres(gc.textExtent(words).x);
  }
}
