package org.fettlebench.holes.internal;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Tone;
import org.fettlebench.holes.correct.Direction;
import org.fettlebench.measure.Point;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** Collects the items of a drawing and the box that they take. */
public final class Sketch {
  private static final int SIDES = 180;

  private final List<Item> items = new ArrayList<>();
  private final Envelope box = new Envelope();

  /** Adds a line. */
  public void path(LineKind line, List<Point> points, boolean closed) {
    items.add(new Item.Path(line, points, closed));
    points.forEach(this::take);
  }

  /** Adds a straight line. */
  public void line(LineKind line, Point from, Point to) {
    path(line, List.of(from, to), false);
  }

  /** Adds a circle. */
  public void circle(LineKind line, Point centre, double radiusMm) {
    items.add(new Item.Circle(line, centre, radiusMm));
    take(centre.moved(radiusMm, radiusMm));
    take(centre.moved(-radiusMm, -radiusMm));
  }

  /** Adds an area. */
  public void area(Tone tone, List<Point> shell) {
    items.add(new Item.Area(tone, shell, List.of()));
    shell.forEach(this::take);
  }

  /** Adds a round area. */
  public void disc(Tone tone, Point centre, double radiusMm) {
    area(tone, round(centre, radiusMm, 0, 360));
  }

  /** Returns an arc of points, anticlockwise. */
  public static List<Point> round(Point centre, double radiusMm, double from, double to) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= SIDES; i++) {
      double turn = Math.toRadians(from + (to - from) * i / SIDES);
      points.add(centre.moved(radiusMm * Math.cos(turn), radiusMm * Math.sin(turn)));
    }
    return points;
  }

  /** Adds upright and level centre lines that stand out past a circle. */
  public void centreLines(Point at, double reachMm) {
    line(LineKind.CENTRE, at.moved(-reachMm, 0), at.moved(reachMm, 0));
    line(LineKind.CENTRE, at.moved(0, -reachMm), at.moved(0, reachMm));
  }

  /** Adds an arrow: a shaft and a filled head as long as told. */
  public void arrow(LineKind line, Point from, Point to, double headMm) {
    Direction way = Direction.of(to.xMm() - from.xMm(), to.yMm() - from.yMm());
    Point back = to.moved(-way.dx() * headMm, -way.dy() * headMm);
    line(line, from, back);
    double half = headMm / 4;
    path(
        line,
        List.of(
            back.moved(-way.dy() * half, way.dx() * half),
            to,
            back.moved(way.dy() * half, -way.dx() * half)),
        true);
  }

  /** Adds a mark. */
  public void marker(Point at, Item.Mark mark) {
    items.add(new Item.Marker(at, mark));
    take(at);
  }

  /** Adds words. */
  public void label(Point at, String words, Item.Side side, boolean strong) {
    items.add(new Item.Label(at, words, side, strong));
    take(at);
  }

  /** Adds a dimension that stands off by millimetres of paper, to the left of from-to. */
  public void dimension(Point from, Point to, double paperMm, String words, boolean strong) {
    items.add(new Item.Dimension(from, to, paperMm, words, strong));
    take(from);
    take(to);
  }

  private void take(Point point) {
    box.expandToInclude(new Coordinate(point.xMm(), point.yMm()));
  }

  /** Returns the drawing with a margin round what was added. */
  public Drawing drawing(String title, double marginMm) {
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
