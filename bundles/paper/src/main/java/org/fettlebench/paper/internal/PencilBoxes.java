package org.fettlebench.paper.internal;

import java.io.IOException;
import java.util.List;
import org.fettlebench.measure.Point;

/** Boxes in a row to write into with a pencil. */
final class PencilBoxes {
  private static final double HEIGHT_MM = 15;

  private final PdfSheet sheet;
  private final double left;
  private final double width;

  PencilBoxes(PdfSheet sheet, double left, double width) {
    this.sheet = sheet;
    this.left = left;
    this.width = width;
  }

  /** Draws a box for each name, their top edge at a place. */
  void draw(List<String> names, double top) throws IOException {
    double each = width / names.size();
    for (int i = 0; i < names.size(); i++) {
      double at = left + i * each;
      sheet.box(Ink.BLACK, 0.25, at, top, each, HEIGHT_MM);
      sheet.text(Style.REMARK, new Point(at + 1.5, top + 3.6), names.get(i));
    }
  }
}
