package org.fettlebench.fits.internal;

import java.util.List;
import org.fettlebench.measure.Point;

/** The upright rectangle about some places. */
record Box(double minX, double minY, double maxX, double maxY) {
  static Box of(List<Point> places) {
    double minX = Double.POSITIVE_INFINITY;
    double minY = Double.POSITIVE_INFINITY;
    double maxX = Double.NEGATIVE_INFINITY;
    double maxY = Double.NEGATIVE_INFINITY;
    for (Point place : places) {
      minX = Math.min(minX, place.xMm());
      minY = Math.min(minY, place.yMm());
      maxX = Math.max(maxX, place.xMm());
      maxY = Math.max(maxY, place.yMm());
    }
    return new Box(minX, minY, maxX, maxY);
  }

  double width() {
    return maxX - minX;
  }

  double height() {
    return maxY - minY;
  }

  double longest() {
    return Math.max(width(), height());
  }

  /** Returns how far its farthest corner is from a place. */
  double farthestFrom(Point place) {
    double dx = Math.max(Math.abs(place.xMm() - minX), Math.abs(place.xMm() - maxX));
    double dy = Math.max(Math.abs(place.yMm() - minY), Math.abs(place.yMm() - maxY));
    return Math.hypot(dx, dy);
  }
}
