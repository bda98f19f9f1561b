package org.fettlebench.desktop.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Placement;
import org.fettlebench.drawing.Plotter;

/**
 * Draws a drawing on any SWT GC: a canvas, a picture, a printer's page. What is drawn where is the
 * {@link Plotter}'s affair, as on paper; line widths, dashes, lettering and arrowheads keep their
 * size on paper, whatever the scale of the drawing.
 */
public final class GcRenderer implements AutoCloseable {
  private final DrawingSheet sheet;

  /**
   * Makes a renderer; close it to free its fonts.
   *
   * @param device of the GCs that will be drawn on
   * @param family of the lettering
   * @param pixelsPerPaperMm pixels of the device for one millimetre of paper
   * @param textScale how much larger than usual the lettering is, 1.0 to 2.0
   */
  public GcRenderer(Device device, String family, double pixelsPerPaperMm, double textScale) {
    this.sheet = new DrawingSheet(device, family, pixelsPerPaperMm, textScale);
  }

  /**
   * Draws everything, bottom up; the surface is not cleared first.
   *
   * @param surface pixels that may be drawn on; words of what is seen are kept inside
   */
  public void draw(GC gc, Drawing drawing, DrawingView view, Rectangle surface) {
    gc.setAntialias(SWT.ON);
    gc.setTextAntialias(SWT.ON);
    gc.setFillRule(SWT.FILL_EVEN_ODD);
    Placement at =
        new Placement(
            sheet.millimetres(view.pixelsPerMm()),
            sheet.millimetres(view.originX() - surface.x),
            sheet.millimetres(view.originY() - surface.y),
            sheet.millimetres(surface.width),
            sheet.millimetres(surface.height));
    Plotter.placed(drawing, at, new GcLettering(gc, sheet))
        .plot(new GcPen(gc, sheet, surface.x, surface.y));
  }

  /** Draws a scale bar with its length at the lower left of a surface so many pixels high. */
  public void scaleBar(GC gc, DrawingView view, int height, String unitWords, double unitMm) {
    new ScaleBar(sheet).draw(gc, view, height, unitWords, unitMm);
  }

  /** Returns how high the strip is in which a scale bar stands, pixels. */
  int barHeight() {
    return (int) Math.ceil(sheet.paper(ScaleBar.STRIP_MM));
  }

  /**
   * Returns the view that shows a whole drawing, with its dimensions and words, as large as a
   * surface allows.
   *
   * @param width pixels of the surface
   * @param height pixels of the surface
   */
  public DrawingView fit(GC gc, Drawing drawing, int width, int height) {
    Placement at =
        Plotter.fit(
                drawing,
                sheet.millimetres(width),
                sheet.millimetres(height),
                new GcLettering(gc, sheet))
            .placement();
    return new DrawingView(
        sheet.paper(at.scale()), sheet.paper(at.leftMm()), sheet.paper(at.topMm()));
  }

  @Override
  public void close() {
    sheet.close();
  }
}
