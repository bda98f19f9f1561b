package org.fettlebench.drawing;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.measure.Point;

/**
 * A drawing in the making: collects items from the bottom up and the box that they take.
 *
 * <p>Places and sizes are millimetres of the real thing unless a name says paper. Not for more than
 * one thread.
 */
public final class Sketch {
  /** Chords in which an arc is drawn: of a whole circle each is two degrees wide. */
  private static final int CHORDS = 180;

  /** Half the width of an arrow's head as a share of its length. */
  private static final double BARB = 0.25;

  /** An extension line starts clear of what it measures: share of its length. */
  private static final double GAP = 0.1;

  /** An extension line ends a little beyond its dimension line: share of its length. */
  private static final double BEYOND_LINE = 1.1;

  /** A shorter step past the measured points has no extension lines to see. */
  private static final double NO_STEP_MM = 1e-6;

  private final List<Item> items = new ArrayList<>();
  private double minX = Double.POSITIVE_INFINITY;
  private double minY = Double.POSITIVE_INFINITY;
  private double maxX = Double.NEGATIVE_INFINITY;
  private double maxY = Double.NEGATIVE_INFINITY;

  /** Adds a line through points. */
  public void path(LineKind line, List<Point> points, boolean closed) {
    items.add(new Item.Path(line, points, closed));
    points.forEach(this::reach);
  }

  /** Adds a straight line. */
  public void line(LineKind line, Point from, Point to) {
    path(line, List.of(from, to), false);
  }

  /** Adds a circle. */
  public void circle(LineKind line, Point centre, double radiusMm) {
    items.add(new Item.Circle(line, centre, radiusMm));
    reach(centre.moved(radiusMm, radiusMm));
    reach(centre.moved(-radiusMm, -radiusMm));
  }

  /** Adds an area without holes. */
  public void area(Tone tone, List<Point> shell) {
    area(tone, shell, List.of());
  }

  /** Adds an area with holes. */
  public void area(Tone tone, List<Point> shell, List<List<Point>> holes) {
    items.add(new Item.Area(tone, shell, holes));
    shell.forEach(this::reach);
  }

  /** Adds a round area. */
  public void disc(Tone tone, Point centre, double radiusMm) {
    area(tone, arc(centre, radiusMm, 0, 360));
  }

  /**
   * Returns the points of an arc, both ends among them.
   *
   * @param fromDegrees where it starts, anticlockwise from the right
   * @param toDegrees where it ends; above {@code fromDegrees} for an arc that runs anticlockwise
   */
  public static List<Point> arc(
      Point centre, double radiusMm, double fromDegrees, double toDegrees) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= CHORDS; i++) {
      double turn = Math.toRadians(fromDegrees + (toDegrees - fromDegrees) * i / CHORDS);
      points.add(centre.moved(radiusMm * Math.cos(turn), radiusMm * Math.sin(turn)));
    }
    return points;
  }

  /** Adds a level and an upright centre line through a point, so far to each side. */
  public void centreLines(Point at, double reachMm) {
    line(LineKind.CENTRE, at.moved(-reachMm, 0), at.moved(reachMm, 0));
    line(LineKind.CENTRE, at.moved(0, -reachMm), at.moved(0, reachMm));
  }

  /**
   * Adds an arrow: a shaft and a closed head.
   *
   * @param from its tail
   * @param to its tip, apart from the tail
   * @param headMm length of the head
   */
  public void arrow(LineKind line, Point from, Point to, double headMm) {
    double length = from.distanceMm(to);
    double alongX = headMm * (to.xMm() - from.xMm()) / length;
    double alongY = headMm * (to.yMm() - from.yMm()) / length;
    Point back = to.moved(-alongX, -alongY);
    line(line, from, back);
    path(
        line,
        List.of(
            back.moved(-BARB * alongY, BARB * alongX),
            to,
            back.moved(BARB * alongY, -BARB * alongX)),
        true);
  }

  /** Adds a mark of constant size on paper. */
  public void marker(Point at, Item.Mark mark) {
    items.add(new Item.Marker(at, mark));
    reach(at);
  }

  /** Adds words; their point is in the box, their width on paper is not. */
  public void label(Point at, String words, Item.Side side, boolean strong) {
    items.add(new Item.Label(at, words, side, strong));
    reach(at);
  }

  /**
   * Adds a dimension.
   *
   * @param paperMm how far its line stands off on paper, to the left of from-to
   * @param words the figure with its unit
   * @param strong whether it is the governing one
   */
  public void dimension(Point from, Point to, double paperMm, String words, boolean strong) {
    items.add(new Item.Dimension(from, to, paperMm, words, strong));
    reach(from);
    reach(to);
  }

  /**
   * Adds a dimension that stands past what is drawn beside the measured points, with extension
   * lines from them. Past that it stands off by its millimetres of paper, which hold at every
   * scale.
   *
   * @param measured the dimension between the measured points themselves
   * @param past step from the measured points to where what is drawn ends, square to from-to
   */
  public void dimensionPast(Item.Dimension measured, Point past) {
    if (Math.hypot(past.xMm(), past.yMm()) > NO_STEP_MM) {
      double end = measured.offsetMm() == 0 ? BEYOND_LINE : 1;
      line(LineKind.THIN, part(measured.from(), past, GAP), part(measured.from(), past, end));
      line(LineKind.THIN, part(measured.to(), past, GAP), part(measured.to(), past, end));
    }
    dimension(
        part(measured.from(), past, 1),
        part(measured.to(), past, 1),
        measured.offsetMm(),
        measured.words(),
        measured.strong());
  }

  private static Point part(Point from, Point past, double share) {
    return from.moved(past.xMm() * share, past.yMm() * share);
  }

  /** Makes room for a point in the box without drawing anything there. */
  public void reach(Point point) {
    minX = Math.min(minX, point.xMm());
    minY = Math.min(minY, point.yMm());
    maxX = Math.max(maxX, point.xMm());
    maxY = Math.max(maxY, point.yMm());
  }

  /**
   * Returns what was drawn with a margin round its box.
   *
   * @param title what the drawing shows, in one sentence
   * @throws IllegalArgumentException if nothing was drawn, or only what has no width or no height
   *     and there is no margin
   */
  public Drawing drawing(String title, double marginMm) {
    return new Drawing(
        title,
        items,
        new Drawing.Frame(minX - marginMm, minY - marginMm, maxX + marginMm, maxY + marginMm));
  }
}
