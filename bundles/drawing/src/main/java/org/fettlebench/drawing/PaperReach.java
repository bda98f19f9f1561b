package org.fettlebench.drawing;

import java.util.Arrays;
import org.fettlebench.measure.Point;

/** Measures how far dimensions and words, which keep their size on paper, reach past the frame. */
final class PaperReach {
  private static final double BREATH_MM = 1.5;

  private final Sheet sheet;
  private final Lettering lettering;
  private double left = Double.POSITIVE_INFINITY;
  private double top = Double.POSITIVE_INFINITY;
  private double right = Double.NEGATIVE_INFINITY;
  private double bottom = Double.NEGATIVE_INFINITY;

  private PaperReach(Sheet sheet, Lettering lettering) {
    this.sheet = sheet;
    this.lettering = lettering;
  }

  /** Returns the edges that a drawing needs on a sheet; none is less than {@code leastMm}. */
  static Sheet.Edges of(Drawing drawing, Sheet sheet, Lettering lettering, double leastMm) {
    PaperReach reach = new PaperReach(sheet, lettering);
    drawing.items().forEach(reach::add);
    Drawing.Frame frame = drawing.frame();
    Point nearLeft = sheet.place(new Point(frame.minXMm(), frame.minYMm()));
    Point farRight = sheet.place(new Point(frame.maxXMm(), frame.maxYMm()));
    return new Sheet.Edges(
        Math.max(leastMm, nearLeft.xMm() - reach.left + BREATH_MM),
        Math.max(leastMm, farRight.yMm() - reach.top + BREATH_MM),
        Math.max(leastMm, reach.right - farRight.xMm() + BREATH_MM),
        Math.max(leastMm, reach.bottom - nearLeft.yMm() + BREATH_MM));
  }

  private void add(Item item) {
    if (item instanceof Item.Label label) {
      add(label);
    } else if (item instanceof Item.Dimension dimension) {
      double height = lettering.heightMm();
      double length = lettering.lengthMm(dimension.words(), dimension.strong());
      DimensionShape shape =
          DimensionShape.of(sheet, dimension, new DimensionShape.Size(length, height));
      shape.lines().forEach(line -> line.forEach(at -> box(at, 0, 0)));
      double half = length / 2;
      boolean upright = Math.abs(Math.sin(Math.toRadians(shape.textDegrees()))) > 0.7;
      box(shape.textAt(), upright ? height : half, upright ? half : height);
    }
  }

  private void add(Item.Label label) {
    Point at = sheet.place(label.at());
    double height = lettering.heightMm();
    String[] lines = label.words().split("\n");
    double half =
        Arrays.stream(lines)
                .mapToDouble(line -> lettering.lengthMm(line, label.strong()))
                .max()
                .orElse(0)
            / 2;
    double halfHigh = (1 + (lines.length - 1) * Plotter.LINE_SHARE) * height / 2;
    double aside = half + Plotter.LABEL_GAP_MM;
    double away = halfHigh + Plotter.LABEL_GAP_MM;
    Point middle =
        switch (label.side()) {
          case LEFT -> at.moved(-aside, 0);
          case RIGHT -> at.moved(aside, 0);
          case ABOVE -> at.moved(0, -away);
          case BELOW -> at.moved(0, away);
          case CENTRE -> at;
        };
    box(middle, half, halfHigh);
  }

  private void box(Point middle, double halfWidth, double halfHeight) {
    left = Math.min(left, middle.xMm() - halfWidth);
    right = Math.max(right, middle.xMm() + halfWidth);
    top = Math.min(top, middle.yMm() - halfHeight);
    bottom = Math.max(bottom, middle.yMm() + halfHeight);
  }
}
