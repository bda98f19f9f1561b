package org.fettlebench.holes.internal.correct;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.fettlebench.holes.correct.MeasuredHole.Spread;
import org.fettlebench.holes.correct.Reading;
import org.fettlebench.measure.Point;
import org.fettlebench.measure.Tolerances;

/** Weighted least squares of sights: Gauss and Newton's steps, held back when they overshoot. */
final class Fit {
  private static final int MOST_STEPS = 200;

  /** Far above rounding, far below anything that tells one place from another. */
  private static final double BESIDE_MM = 1e-3;

  private final List<Sight> sights;

  Fit(List<Sight> sights) {
    this.sights = sights;
  }

  /** Returns the sum of squares of misfits, each in its standard uncertainties. */
  double squares(Point at) {
    double sum = 0;
    for (Sight sight : sights) {
      double miss = (sight.distanceMm() - sight.atMm(at)) / sight.standardMm();
      sum += miss * miss;
    }
    return sum;
  }

  /** Returns the places of least squares that can be reached, best first, each once. */
  List<Point> places(Point near) {
    List<Point> found = new ArrayList<>();
    // A start just on the line of two spots would not leave it, so it is left a little.
    found.add(settle(near.moved(BESIDE_MM, BESIDE_MM / 2)));
    for (Point start : mirrored(found.get(0))) {
      Point other = settle(start);
      if (found.stream().allMatch(one -> one.distanceMm(other) > Tolerances.CENTRE_SEARCH_MM)) {
        found.add(other);
      }
    }
    found.sort(Comparator.comparingDouble(this::squares));
    return found;
  }

  private Point settle(Point start) {
    Point at = start;
    double hold = 1e-6;
    for (int step = 0; step < MOST_STEPS; step++) {
      Point next = step(at, hold);
      if (squares(next) <= squares(at)) {
        boolean still = next.distanceMm(at) < 1e-12;
        at = next;
        hold = Math.max(hold / 10, 1e-12);
        if (still) {
          return at;
        }
      } else {
        hold *= 10;
      }
    }
    return at;
  }

  private Point step(Point at, double hold) {
    double[] normal = normal(at);
    double gx = 0;
    double gy = 0;
    for (Sight sight : sights) {
      Point slope = sight.slope(at);
      double miss = (sight.distanceMm() - sight.atMm(at)) / sight.standardMm() / sight.standardMm();
      gx += slope.xMm() * miss;
      gy += slope.yMm() * miss;
    }
    double held = hold * (normal[0] + normal[2]);
    double xx = normal[0] + held;
    double yy = normal[2] + held;
    double det = xx * yy - normal[1] * normal[1];
    return at.moved((gx * yy - gy * normal[1]) / det, (gy * xx - gx * normal[1]) / det);
  }

  /** Returns the sums xx, xy and yy of slopes, weighed. */
  private double[] normal(Point at) {
    double[] sums = new double[3];
    for (Sight sight : sights) {
      Point slope = sight.slope(at);
      double weight = 1 / sight.standardMm() / sight.standardMm();
      sums[0] += weight * slope.xMm() * slope.xMm();
      sums[1] += weight * slope.xMm() * slope.yMm();
      sums[2] += weight * slope.yMm() * slope.yMm();
    }
    return sums;
  }

  /** Returns the spread of a fitted place. */
  Spread spread(Point at, double factor) {
    double[] n = normal(at);
    double det = n[0] * n[2] - n[1] * n[1];
    return new Spread(factor * n[2] / det, -factor * n[1] / det, factor * n[0] / det);
  }

  /** Returns the sine of the greatest angle between the slopes of two sights at a place. */
  double crossing(Point at) {
    double most = 0;
    for (Sight one : sights) {
      Point a = one.slope(at);
      for (Sight other : sights) {
        Point b = other.slope(at);
        most = Math.max(most, Math.abs(a.xMm() * b.yMm() - a.yMm() * b.xMm()));
      }
    }
    return most;
  }

  /** Returns where two sights alone could be met as well: a place mirrored in what both leave. */
  private List<Point> mirrored(Point at) {
    List<Point> starts = new ArrayList<>();
    for (int i = 0; i < sights.size(); i++) {
      if (sights.get(i).reading().from() instanceof Reading.Spot spot) {
        for (int j = 0; j < sights.size(); j++) {
          Reading.Reference other = sights.get(j).reading().from();
          if (other instanceof Reading.Spot second && j > i) {
            addMirrored(starts, at, spot.centre(), second.centre());
          } else if (other instanceof Reading.Edge) {
            Point slope = sights.get(j).slope(at);
            addMirrored(starts, at, spot.centre(), spot.centre().moved(slope.xMm(), slope.yMm()));
          }
        }
      }
    }
    return starts;
  }

  private static void addMirrored(List<Point> starts, Point at, Point a, Point b) {
    double dx = b.xMm() - a.xMm();
    double dy = b.yMm() - a.yMm();
    double length = Math.hypot(dx, dy);
    if (length > Tolerances.GEOMETRY_SLACK_MM) {
      double off = (dx * (at.yMm() - a.yMm()) - dy * (at.xMm() - a.xMm())) / length;
      starts.add(at.moved(2 * off * dy / length, -2 * off * dx / length));
    }
  }
}
