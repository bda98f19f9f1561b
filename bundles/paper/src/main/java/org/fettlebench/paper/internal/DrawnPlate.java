package org.fettlebench.paper.internal;

import java.io.IOException;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Plotter;
import org.fettlebench.measure.Point;

/** A framed drawing at a scale of ISO 5455, its name above and its scale below. */
final class DrawnPlate {
  private static final double NAME_MM = 6;

  private final PdfSheet sheet;
  private final double left;
  private final double top;
  private final double width;
  private final double height;

  DrawnPlate(PdfSheet sheet, double left, double top, double width, double height) {
    this.sheet = sheet;
    this.left = left;
    this.top = top;
    this.width = width;
    this.height = height;
  }

  /** Returns the scale at which a drawing stands on a plate of a size. */
  static double scale(Drawing drawing, double width, double height) {
    return Plotter.standardScale(drawing, width, height - NAME_MM).scale();
  }

  /** Draws it; the frame, the name in it and the scale behind the name. */
  void draw(String name, Drawing drawing) throws IOException {
    draw(name, drawing, Double.POSITIVE_INFINITY);
  }

  /** Draws it at a scale no larger than one asked. */
  void draw(String name, Drawing drawing, double largest) throws IOException {
    sheet.box(Ink.RULE, 0.25, left, top, width, height);
    Plotter plotter = Plotter.standardScale(drawing, width, height - NAME_MM, largest);
    plotter.plot(new PdfPen(sheet, left, top + NAME_MM));
    sheet.text(Style.STRONG, new Point(left + 2, top + 5), name);
    String scale = "scale " + plotter.scaleWords();
    double length = sheet.lettering().lengthMm(Style.STRONG, scale);
    sheet.text(Style.STRONG, new Point(left + width - 2 - length, top + 5), scale);
  }
}
