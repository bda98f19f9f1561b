package org.fettlebench.fits.internal;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.measure.Point;

/**
 * A closed line that a centre must keep inside of (an outline) or outside of (a hollow), each edge
 * at its distance.
 */
final class Ring {
  private final Bar[] edges;
  private final List<? extends Feature> features;
  private final boolean keepInside;

  /** What every edge needs, when they are plain distances; else negative. */
  private final double evenNeedMm;

  /**
   * Makes a ring.
   *
   * @param edges bare edges in order, anticlockwise, without need
   * @param features the same edges as features, in the same order: all bars of one need, or hulls
   * @param keepInside whether the centre belongs inside
   */
  Ring(List<Bar> edges, List<? extends Feature> features, boolean keepInside) {
    this.edges = edges.toArray(new Bar[0]);
    this.features = List.copyOf(features);
    this.keepInside = keepInside;
    this.evenNeedMm = this.features.get(0) instanceof Bar first ? first.needMm() : -1;
  }

  /** Returns the sides of a closed line, all with the same label and need. */
  static List<Bar> bars(Label label, List<Point> corners, double needMm) {
    List<Bar> bars = new ArrayList<>(corners.size());
    for (int i = 0; i < corners.size(); i++) {
      bars.add(new Bar(label, corners.get(i), corners.get((i + 1) % corners.size()), needMm));
    }
    return bars;
  }

  double room(double x, double y) {
    return room(x, y, Double.POSITIVE_INFINITY);
  }

  /** Returns the room, or any figure at or above the ceiling when it is at or above that. */
  double room(double x, double y, double ceiling) {
    if (inside(x, y) != keepInside) {
      return beyond(x, y).roomMm();
    }
    if (evenNeedMm >= 0) {
      return nearest(x, y) - evenNeedMm;
    }
    double least = ceiling;
    for (Feature feature : features) {
      if (feature instanceof Hull hull && hull.leastRoom(x, y) >= least) {
        continue;
      }
      least = Math.min(least, feature.room(x, y));
    }
    return least;
  }

  /** Adds how each edge stands to a centre; on the wrong side only the nearest edge counts. */
  void touch(double x, double y, List<Touch> touches) {
    if (inside(x, y) != keepInside) {
      touches.add(beyond(x, y));
      return;
    }
    for (Feature feature : features) {
      touches.add(feature.touch(x, y));
    }
  }

  /** On the wrong side the lack is the way back to the nearest edge, and its whole need there. */
  private Touch beyond(double x, double y) {
    int nearest = 0;
    double distance = Double.POSITIVE_INFINITY;
    for (int i = 0; i < edges.length; i++) {
      double candidate = edges[i].distance(x, y);
      if (candidate < distance) {
        distance = candidate;
        nearest = i;
      }
    }
    Point near = edges[nearest].nearest(x, y);
    Touch there = features.get(nearest).touch(near.xMm(), near.yMm());
    boolean apart = distance > Tolerances.SAME_MM;
    double riseX = apart ? (near.xMm() - x) / distance : there.riseX();
    double riseY = apart ? (near.yMm() - y) / distance : there.riseY();
    return new Touch(
        features.get(nearest),
        there.roomMm() - distance,
        riseX,
        riseY,
        -distance,
        near.xMm(),
        near.yMm());
  }

  private double nearest(double x, double y) {
    double least = Double.POSITIVE_INFINITY;
    for (Bar edge : edges) {
      least = Math.min(least, edge.squaredDistance(x, y));
    }
    return Math.sqrt(least);
  }

  /** Counts the edges crossed on the way to the far right. */
  private boolean inside(double x, double y) {
    boolean inside = false;
    for (Bar edge : edges) {
      Point a = edge.from();
      Point b = edge.to();
      if (a.yMm() > y != b.yMm() > y) {
        double crossing = a.xMm() + (y - a.yMm()) / (b.yMm() - a.yMm()) * (b.xMm() - a.xMm());
        inside ^= x < crossing;
      }
    }
    return inside;
  }
}
