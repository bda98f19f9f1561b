package org.fettlebench.fits.internal;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Tone;
import org.fettlebench.measure.Point;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** Collects the items of a drawing and the box they take. */
final class Canvas {
  private final List<Item> items = new ArrayList<>();
  private final Envelope box = new Envelope();

  void path(LineKind line, List<Point> points, boolean closed) {
    items.add(new Item.Path(line, points, closed));
    points.forEach(this::take);
  }

  void circle(LineKind line, Point centre, double radiusMm) {
    items.add(new Item.Circle(line, centre, radiusMm));
    take(centre.moved(radiusMm, radiusMm));
    take(centre.moved(-radiusMm, -radiusMm));
  }

  void area(Tone tone, List<Point> shell, List<List<Point>> holes) {
    items.add(new Item.Area(tone, shell, holes));
    shell.forEach(this::take);
  }

  /** Adds a disc as an area of many sides. */
  void disc(Tone tone, Point centre, double radiusMm) {
    List<Point> shell = new ArrayList<>();
    for (int i = 0; i < 72; i++) {
      double angle = Math.PI * i / 36;
      shell.add(centre.moved(radiusMm * Math.cos(angle), radiusMm * Math.sin(angle)));
    }
    area(tone, shell, List.of());
  }

  void marker(Point at, Item.Mark mark) {
    items.add(new Item.Marker(at, mark));
    take(at);
  }

  void label(Point at, String words, Item.Side side, boolean strong) {
    items.add(new Item.Label(at, words, side, strong));
    take(at);
  }

  /**
   * Adds a dimension that stands off the measured points: first past what is drawn, by millimetres
   * of the real thing, then clear of it by millimetres of paper, which hold at every scale.
   *
   * @param from first measured point
   * @param to second measured point
   * @param past how far what is drawn reaches from the measured points, square to from-to
   * @param paperMm how far the line stands off from there, to the left of from-to
   */
  void dimension(Point from, Point to, Point past, double paperMm, Figure figure) {
    Point a = from.moved(past.xMm(), past.yMm());
    Point b = to.moved(past.xMm(), past.yMm());
    if (Math.hypot(past.xMm(), past.yMm()) > 1e-6) {
      double end = paperMm == 0 ? 1.1 : 1;
      path(LineKind.THIN, List.of(part(from, past, 0.1), part(from, past, end)), false);
      path(LineKind.THIN, List.of(part(to, past, 0.1), part(to, past, end)), false);
    }
    items.add(new Item.Dimension(a, b, paperMm, figure.words(), figure.strong()));
    take(a);
    take(b);
  }

  /**
   * What a dimension says.
   *
   * @param words the figure with its unit
   * @param strong whether it is the governing one
   */
  record Figure(String words, boolean strong) {}

  private static Point part(Point from, Point past, double share) {
    return from.moved(past.xMm() * share, past.yMm() * share);
  }

  private void take(Point point) {
    box.expandToInclude(new Coordinate(point.xMm(), point.yMm()));
  }

  Drawing drawing(String title, double marginMm) {
    return new Drawing(
        title,
        items,
        new Drawing.Frame(
            box.getMinX() - marginMm,
            box.getMinY() - marginMm,
            box.getMaxX() + marginMm,
            box.getMaxY() + marginMm));
  }
}
