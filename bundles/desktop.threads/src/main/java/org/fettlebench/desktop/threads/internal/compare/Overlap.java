package org.fettlebench.desktop.threads.internal.compare;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.measure.Point;

/**
 * Where two outlines claim the same room: the screw's metal lies below its outline, the nut's above
 * its own. Outlines go from left to right.
 */
final class Overlap {
  private static final double LEAST_MM = 1e-6;

  private final List<Point> screw;
  private final List<Point> nut;

  Overlap(List<Point> screw, List<Point> nut) {
    this.screw = screw;
    this.nut = nut;
  }

  /** Returns the areas that both claim, found at steps along the axis. */
  List<List<Point>> areas(double fromMm, double toMm, double stepMm) {
    List<List<Point>> found = new ArrayList<>();
    List<Point> upper = new ArrayList<>();
    List<Point> lower = new ArrayList<>();
    int steps = (int) Math.ceil((toMm - fromMm) / stepMm);
    for (int i = 0; i <= steps; i++) {
      double x = Math.min(toMm, fromMm + i * stepMm);
      double high = at(screw, x);
      double low = at(nut, x);
      if (high - low > LEAST_MM) {
        upper.add(new Point(x, high));
        lower.add(0, new Point(x, low));
      }
      if (!(high - low > LEAST_MM) || i == steps) {
        close(found, upper, lower);
      }
    }
    return found;
  }

  private static void close(List<List<Point>> found, List<Point> upper, List<Point> lower) {
    if (upper.size() > 1) {
      List<Point> ring = new ArrayList<>(upper);
      ring.addAll(lower);
      found.add(ring);
    }
    upper.clear();
    lower.clear();
  }

  /** Returns the deepest that the screw stands in the nut's metal, on the radius. */
  double deepestMm(double fromMm, double toMm, double stepMm) {
    double deepest = 0;
    for (double x = fromMm; x <= toMm; x += stepMm) {
      deepest = Math.max(deepest, at(screw, x) - at(nut, x));
    }
    return deepest;
  }

  /** Returns where along the axis the screw stands deepest in the nut's metal. */
  double deepestAt(double fromMm, double toMm, double stepMm) {
    double found = fromMm;
    for (double x = fromMm; x <= toMm; x += stepMm) {
      found = at(screw, x) - at(nut, x) > at(screw, found) - at(nut, found) ? x : found;
    }
    return found;
  }

  /** Returns an outline's height at a place along the axis. */
  static double at(List<Point> outline, double x) {
    int low = 0;
    int high = outline.size() - 1;
    while (high - low > 1) {
      int middle = (low + high) / 2;
      if (outline.get(middle).xMm() <= x) {
        low = middle;
      } else {
        high = middle;
      }
    }
    Point left = outline.get(low);
    Point right = outline.get(high);
    double run = right.xMm() - left.xMm();
    double share = run > 0 ? Math.max(0, Math.min(1, (x - left.xMm()) / run)) : 0;
    return left.yMm() + share * (right.yMm() - left.yMm());
  }
}
