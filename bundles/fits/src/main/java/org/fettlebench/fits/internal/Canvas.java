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
  private final double size;

  /**
   * Makes an empty one.
   *
   * @param size of the whole, to judge what room words will take on paper
   */
  Canvas(double size) {
    this.size = size;
  }

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
    // A letter takes about a fiftieth of a drawing shown as wide as a hand.
    double length = 0.02 * size * words.length();
    double right = side == Item.Side.RIGHT ? length : side == Item.Side.LEFT ? 0 : length / 2;
    take(at.moved(right, 0));
    take(at.moved(right - length, 0));
  }

  /**
   * Adds a dimension that stands off the measured points.
   *
   * @param from first measured point
   * @param to second measured point
   * @param offX how far the dimension line stands off, to the right
   * @param offY how far it stands off, away
   */
  void dimension(Point from, Point to, double offX, double offY, String words, boolean strong) {
    double off = Math.hypot(offX, offY);
    Point a = from.moved(offX, offY);
    Point b = to.moved(offX, offY);
    if (off > 0) {
      double start = 0.12;
      double end = 1.15;
      path(
          LineKind.THIN,
          List.of(part(from, offX, offY, start), part(from, offX, offY, end)),
          false);
      path(LineKind.THIN, List.of(part(to, offX, offY, start), part(to, offX, offY, end)), false);
    }
    items.add(new Item.Dimension(a, b, 0, words, strong));
    take(a);
    take(b);
  }

  private static Point part(Point from, double dx, double dy, double share) {
    return from.moved(dx * share, dy * share);
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
