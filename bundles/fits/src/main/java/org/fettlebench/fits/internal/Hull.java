package org.fettlebench.fits.internal;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.measure.Point;
import org.locationtech.jts.geom.Geometry;

/**
 * A straight feature grown by what does not turn, such as a head that is set or an open spanner
 * that comes from one side: the centres at which the head touches it form a convex polygon (the
 * Minkowski sum of both).
 */
final class Hull implements Feature {
  private final Bar bar;
  private final double extraMm;
  private final double reachMm;
  private final List<Point> corners;
  private final List<Bar> sides;
  private final double[] normalX;
  private final double[] normalY;

  /**
   * Grows a bar.
   *
   * @param bar the feature, without need of its own
   * @param corners of the grown polygon, anticlockwise, convex
   * @param extraMm what it needs beyond the head, such as a fillet
   * @param reachMm how far the head reaches from its centre at most
   */
  Hull(Bar bar, List<Point> corners, double extraMm, double reachMm) {
    this.bar = bar;
    this.extraMm = extraMm;
    this.reachMm = reachMm;
    this.corners = List.copyOf(corners);
    this.sides = bars(bar.label(), corners);
    this.normalX = new double[sides.size()];
    this.normalY = new double[sides.size()];
    for (int i = 0; i < sides.size(); i++) {
      Point from = sides.get(i).from();
      Point to = sides.get(i).to();
      double length = from.distanceMm(to);
      normalX[i] = (to.yMm() - from.yMm()) / length;
      normalY[i] = (from.xMm() - to.xMm()) / length;
    }
  }

  @Override
  public Label label() {
    return bar.label();
  }

  @Override
  public List<Point> line() {
    return bar.line();
  }

  private static List<Bar> bars(Label label, List<Point> corners) {
    List<Bar> bars = new ArrayList<>(corners.size());
    for (int i = 0; i < corners.size(); i++) {
      bars.add(new Bar(label, corners.get(i), corners.get((i + 1) % corners.size()), 0));
    }
    return bars;
  }

  @Override
  public Geometry forbidden() {
    return AllowedCentres.grown(AllowedCentres.polygon(corners), extraMm);
  }

  @Override
  public double leastRoom(double x, double y) {
    return bar.distance(x, y) - reachMm - extraMm;
  }

  @Override
  public double room(double x, double y) {
    int outermost = outermost(x, y);
    double height = height(outermost, x, y);
    return (height > 0 ? distance(x, y) : height) - extraMm;
  }

  @Override
  public Touch touch(double x, double y) {
    double nearX = bar.nearestX(x, y);
    double nearY = bar.nearestY(x, y);
    double distance = bar.distance(x, y);
    int outermost = outermost(x, y);
    double height = height(outermost, x, y);
    if (!(height > Tolerances.SAME_MM)) {
      return new Touch(
          this, height - extraMm, normalX[outermost], normalY[outermost], distance, nearX, nearY);
    }
    Touch side = closest(x, y).touch(x, y);
    return new Touch(
        this, side.roomMm() - extraMm, side.riseX(), side.riseY(), distance, nearX, nearY);
  }

  /** Returns the height of a centre above the line of a side; positive outside. */
  private double height(int side, double x, double y) {
    Point from = sides.get(side).from();
    return (x - from.xMm()) * normalX[side] + (y - from.yMm()) * normalY[side];
  }

  private int outermost(double x, double y) {
    int best = 0;
    for (int i = 1; i < sides.size(); i++) {
      if (height(i, x, y) > height(best, x, y)) {
        best = i;
      }
    }
    return best;
  }

  private double distance(double x, double y) {
    return closest(x, y).distance(x, y);
  }

  private Bar closest(double x, double y) {
    Bar best = sides.get(0);
    for (Bar side : sides) {
      if (side.distance(x, y) < best.distance(x, y)) {
        best = side;
      }
    }
    return best;
  }
}
