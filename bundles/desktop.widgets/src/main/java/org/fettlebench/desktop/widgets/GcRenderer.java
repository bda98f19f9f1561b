package org.fettlebench.desktop.widgets;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Rectangle;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Tone;
import org.fettlebench.measure.Point;

/**
 * Draws a drawing on any SWT GC: a canvas, a picture, a printer's page. Line widths, dashes,
 * lettering and arrowheads keep their size on paper, whatever the scale of the drawing.
 */
public final class GcRenderer implements AutoCloseable {
  /** Distance between hatching lines, mm of paper; common practice, no source. */
  private static final double HATCH_MM = 1.8;

  private static final double FIRST_GUESS_MM = 10;

  private final Device device;
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
    this.device = device;
    this.sheet = new DrawingSheet(device, family, pixelsPerPaperMm, textScale);
  }

  /**
   * Draws everything, bottom up; the surface is not cleared first.
   *
   * @param surface pixels that may be drawn on; figures of dimensions are kept inside
   */
  public void draw(GC gc, Drawing drawing, DrawingView view, Rectangle surface) {
    gc.setAntialias(SWT.ON);
    gc.setTextAntialias(SWT.ON);
    gc.setFillRule(SWT.FILL_EVEN_ODD);
    for (Item item : drawing.items()) {
      draw(gc, item, view, surface);
    }
  }

  /** Draws a scale bar with its length at the lower left of a surface so many pixels high. */
  public void scaleBar(GC gc, DrawingView view, int height, String unitWords, double unitMm) {
    new ScaleBar(sheet).draw(gc, view, height, unitWords, unitMm);
  }

  /**
   * Returns the view that shows a whole drawing, with its dimensions and words, as large as a
   * surface allows.
   *
   * @param width pixels of the surface
   * @param height pixels of the surface
   */
  public DrawingView fit(GC gc, Drawing drawing, int width, int height) {
    DrawingView view =
        DrawingView.fit(
            drawing.frame(), width, height, DrawingView.Margins.all(sheet.paper(FIRST_GUESS_MM)));
    // What words need hardly depends on the scale: two rounds settle it.
    for (int round = 0; round < 2; round++) {
      DrawingView.Margins needed = Overhang.measure(gc, sheet, drawing, view);
      view = DrawingView.fit(drawing.frame(), width, height, needed);
    }
    return view;
  }

  private void draw(GC gc, Item item, DrawingView view, Rectangle surface) {
    if (item instanceof Item.Area area) {
      area(gc, area, view);
    } else if (item instanceof Item.Path path) {
      stroke(gc, path.line(), outline(path.points(), path.closed(), view));
    } else if (item instanceof Item.Circle circle) {
      stroke(gc, circle.line(), round(circle, view));
    } else if (item instanceof Item.Marker marker) {
      new MarkerPen(sheet).draw(gc, marker, view);
    } else if (item instanceof Item.Label label) {
      new Lettering(sheet).label(gc, label, view);
    } else if (item instanceof Item.Dimension dimension) {
      new DimensionPen(device, sheet).draw(gc, dimension, view, surface);
    }
  }

  private Path outline(List<Point> points, boolean closed, DrawingView view) {
    Path path = new Path(device);
    addRing(path, points, view);
    if (closed) {
      path.close();
    }
    return path;
  }

  private static void addRing(Path path, List<Point> points, DrawingView view) {
    boolean first = true;
    for (Point point : points) {
      float x = (float) view.x(point.xMm());
      float y = (float) view.y(point.yMm());
      if (first) {
        path.moveTo(x, y);
      } else {
        path.lineTo(x, y);
      }
      first = false;
    }
  }

  private Path round(Item.Circle circle, DrawingView view) {
    double radius = circle.radiusMm() * view.pixelsPerMm();
    Path path = new Path(device);
    path.addArc(
        (float) (view.x(circle.centre().xMm()) - radius),
        (float) (view.y(circle.centre().yMm()) - radius),
        (float) (2 * radius),
        (float) (2 * radius),
        0,
        360);
    path.close();
    return path;
  }

  private void stroke(GC gc, LineKind kind, Path path) {
    gc.setForeground(DrawingSheet.ink(kind));
    gc.setLineAttributes(sheet.pen(kind));
    gc.drawPath(path);
    path.dispose();
  }

  private void area(GC gc, Item.Area area, DrawingView view) {
    Path path = new Path(device);
    rings(area)
        .forEach(
            ring -> {
              addRing(path, ring, view);
              path.close();
            });
    gc.setBackground(DrawingSheet.shade(area.tone()));
    gc.setAlpha(DrawingSheet.opacity(area.tone()));
    gc.fillPath(path);
    gc.setAlpha(255);
    if (area.tone() == Tone.ALLOWED) {
      edge(gc, path, new Color(0x2E, 0x7D, 0x43));
    }
    path.dispose();
    if (DrawingSheet.hatched(area.tone())) {
      hatch(gc, area, view);
    }
  }

  private void edge(GC gc, Path path, Color colour) {
    gc.setForeground(colour);
    gc.setLineAttributes(sheet.pen(LineKind.THIN));
    gc.drawPath(path);
  }

  private static List<List<Point>> rings(Item.Area area) {
    List<List<Point>> rings = new ArrayList<>();
    rings.add(area.shell());
    rings.addAll(area.holes());
    return rings;
  }

  private void hatch(GC gc, Item.Area area, DrawingView view) {
    List<double[]> rings = rings(area).stream().map(ring -> pixels(ring, view)).toList();
    Path path = new Path(device);
    for (Hatching.Line line : Hatching.lines(rings, sheet.paper(HATCH_MM))) {
      path.moveTo((float) line.x1(), (float) line.y1());
      path.lineTo((float) line.x2(), (float) line.y2());
    }
    stroke(gc, LineKind.HATCH, path);
  }

  private static double[] pixels(List<Point> ring, DrawingView view) {
    return ring.stream()
        .flatMapToDouble(p -> java.util.stream.DoubleStream.of(view.x(p.xMm()), view.y(p.yMm())))
        .toArray();
  }

  @Override
  public void close() {
    sheet.close();
  }
}
