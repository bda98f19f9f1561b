package org.fettlebench.desktop.threads.internal.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Tone;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** The end of two threads laid over each other, larger and below the whole: the detail A. */
final class CrossingDetail {
  /** A detail that is hardly larger than the whole says nothing. */
  private static final double LEAST_FACTOR = 1.6;

  private static final double MOST_FACTOR = 3.4;
  private static final double STEP_SHARE = 1.0 / 60;

  private final List<Point> screw;
  private final List<Point> nut;
  private final double finer;
  private final double from;
  private final double to;
  private final double factor;
  private final double low;
  private final double high;

  /**
   * Makes a detail of two outlines.
   *
   * @param from where it begins along the axis
   * @param to where it ends, which is where the whole ends
   */
  CrossingDetail(List<Point> screw, List<Point> nut, double finer, double from, double to) {
    this.screw = screw;
    this.nut = nut;
    this.finer = finer;
    this.from = from;
    this.to = to;
    this.factor = Math.min(MOST_FACTOR, 0.8 * to / (to - from));
    this.low = lowest(screw) - 0.12 * finer;
    this.high = highest(nut) + 0.12 * finer;
  }

  private static double lowest(List<Point> outline) {
    return outline.stream().mapToDouble(Point::yMm).min().orElse(0);
  }

  private static double highest(List<Point> outline) {
    return outline.stream().mapToDouble(Point::yMm).max().orElse(0);
  }

  /** Returns whether it is enough larger than the whole to be drawn. */
  boolean isLarger() {
    return factor >= LEAST_FACTOR;
  }

  /** Adds the frame on the whole and the detail below it; returns how low the detail reaches. */
  double addTo(List<Item> items, double below, LengthUnit unit) {
    box(items);
    double top = below - 0.75 * finer;
    Turned turned = new Turned((to - factor * (to - from)) / 2, top - factor * high);
    List<Point> edge = turned.all(cut(screw));
    List<Point> ring = new ArrayList<>(edge);
    ring.add(turned.of(new Point(to, low)));
    ring.add(turned.of(new Point(from, low)));
    items.add(new Item.Area(Tone.PART, ring, List.of()));
    Overlap overlap = new Overlap(screw, nut);
    for (List<Point> both : overlap.areas(from, to, STEP_SHARE * finer)) {
      items.add(new Item.Area(Tone.WALL, turned.all(both), List.of()));
    }
    items.add(new Item.Path(LineKind.OUTLINE, edge, false));
    items.add(new Item.Path(LineKind.HIDDEN, turned.all(cut(nut)), false));
    deepest(items, overlap, turned, unit);
    Point foot = turned.of(new Point((from + to) / 2, low));
    items.add(
        new Item.Label(
            foot.moved(0, -0.25 * finer),
            String.format(Locale.ROOT, "A, %.1f times larger", factor),
            Item.Side.CENTRE,
            false));
    return foot.yMm() - 0.5 * finer;
  }

  private void box(List<Item> items) {
    List<Point> corners =
        List.of(
            new Point(from, low), new Point(to, low), new Point(to, high), new Point(from, high));
    items.add(new Item.Path(LineKind.THIN, corners, true));
    items.add(
        new Item.Label(new Point(to + 0.1 * finer, (low + high) / 2), "A", Item.Side.RIGHT, true));
  }

  private void deepest(List<Item> items, Overlap overlap, Turned turned, LengthUnit unit) {
    double at = overlap.deepestAt(from, to, STEP_SHARE * finer);
    double deep = Overlap.at(screw, at) - Overlap.at(nut, at);
    if (deep > finer / 100) {
      items.add(
          new Item.Dimension(
              turned.of(new Point(at, Overlap.at(nut, at))),
              turned.of(new Point(at, Overlap.at(screw, at))),
              -14,
              CrossingWords.fine(deep, unit),
              true));
    }
  }

  private List<Point> cut(List<Point> outline) {
    List<Point> kept = new ArrayList<>(List.of(new Point(from, Overlap.at(outline, from))));
    outline.stream().filter(p -> p.xMm() > from && p.xMm() < to).forEach(kept::add);
    kept.add(new Point(to, Overlap.at(outline, to)));
    return kept;
  }

  /** Takes points of the whole to the detail. */
  private final class Turned {
    private final double left;
    private final double base;

    Turned(double left, double base) {
      this.left = left;
      this.base = base;
    }

    Point of(Point point) {
      return new Point(left + factor * (point.xMm() - from), base + factor * point.yMm());
    }

    List<Point> all(List<Point> points) {
      return points.stream().map(this::of).toList();
    }
  }
}
