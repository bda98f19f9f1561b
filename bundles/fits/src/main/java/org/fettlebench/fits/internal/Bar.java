package org.fettlebench.fits.internal;

import org.fettlebench.measure.Point;

/** A straight feature (or a point, when both ends are one) kept at a distance in all directions. */
final class Bar implements Feature {
  private final Label label;
  private final Point from;
  private final Point to;
  private final double alongX;
  private final double alongY;
  private final double lengthSquared;
  private final double perLengthSquared;
  private final double needMm;

  Bar(Label label, Point from, Point to, double needMm) {
    this.label = label;
    this.from = from;
    this.to = to;
    this.alongX = to.xMm() - from.xMm();
    this.alongY = to.yMm() - from.yMm();
    this.lengthSquared = alongX * alongX + alongY * alongY;
    this.perLengthSquared = lengthSquared > 0 ? 1 / lengthSquared : 0;
    this.needMm = needMm;
  }

  @Override
  public Label label() {
    return label;
  }

  @Override
  public Point from() {
    return from;
  }

  @Override
  public Point to() {
    return to;
  }

  /** Returns how far along the bar, from 0 to 1, its point nearest to a centre lies. */
  private double share(double x, double y) {
    double share = ((x - from.xMm()) * alongX + (y - from.yMm()) * alongY) * perLengthSquared;
    return share < 0 ? 0 : Math.min(share, 1);
  }

  double distance(double x, double y) {
    return Math.sqrt(squaredDistance(x, y));
  }

  double squaredDistance(double x, double y) {
    double share = share(x, y);
    double dx = x - from.xMm() - share * alongX;
    double dy = y - from.yMm() - share * alongY;
    return dx * dx + dy * dy;
  }

  double needMm() {
    return needMm;
  }

  Point nearest(double x, double y) {
    double share = share(x, y);
    return new Point(from.xMm() + share * alongX, from.yMm() + share * alongY);
  }

  @Override
  public double room(double x, double y) {
    return distance(x, y) - needMm;
  }

  @Override
  public Touch touch(double x, double y) {
    Point near = nearest(x, y);
    double distance = distance(x, y);
    if (distance > Tolerances.SAME_MM) {
      double riseX = (x - near.xMm()) / distance;
      double riseY = (y - near.yMm()) / distance;
      return new Touch(this, distance - needMm, riseX, riseY, distance, near.xMm(), near.yMm());
    }
    // On the bar itself: away from it is to the left, which is inwards for an outline.
    double length = Math.sqrt(lengthSquared);
    double riseX = length > 0 ? -alongY / length : 1;
    double riseY = length > 0 ? alongX / length : 0;
    return new Touch(this, distance - needMm, riseX, riseY, distance, near.xMm(), near.yMm());
  }
}
