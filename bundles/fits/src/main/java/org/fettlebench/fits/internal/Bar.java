package org.fettlebench.fits.internal;

import java.util.List;
import org.fettlebench.measure.Point;
import org.locationtech.jts.geom.Geometry;

/** A straight feature (or a point, when both ends are one) kept at a distance in all directions. */
final class Bar implements Side {
  private final Label label;
  private final double fromX;
  private final double fromY;
  private final double alongX;
  private final double alongY;
  private final double lengthSquared;
  private final double perLengthSquared;
  private final double needMm;
  private final List<Point> line;

  Bar(Label label, Point from, Point to, double needMm) {
    this.label = label;
    this.fromX = from.xMm();
    this.fromY = from.yMm();
    this.alongX = to.xMm() - fromX;
    this.alongY = to.yMm() - fromY;
    this.lengthSquared = alongX * alongX + alongY * alongY;
    this.perLengthSquared = lengthSquared > 0 ? 1 / lengthSquared : 0;
    this.needMm = needMm;
    this.line = List.of(from, to);
  }

  @Override
  public Label label() {
    return label;
  }

  @Override
  public List<Point> line() {
    return line;
  }

  Point from() {
    return line.get(0);
  }

  Point to() {
    return line.get(1);
  }

  /** Returns how far along the bar, from 0 to 1, its point nearest to a centre lies. */
  private double share(double x, double y) {
    double share = ((x - fromX) * alongX + (y - fromY) * alongY) * perLengthSquared;
    return share < 0 ? 0 : Math.min(share, 1);
  }

  @Override
  public double squaredDistance(double x, double y) {
    double share = share(x, y);
    double dx = x - fromX - share * alongX;
    double dy = y - fromY - share * alongY;
    return dx * dx + dy * dy;
  }

  @Override
  public double needMm() {
    return needMm;
  }

  @Override
  public double nearestX(double x, double y) {
    return fromX + share(x, y) * alongX;
  }

  @Override
  public double nearestY(double x, double y) {
    return fromY + share(x, y) * alongY;
  }

  @Override
  public Touch touch(double x, double y) {
    double nearX = nearestX(x, y);
    double nearY = nearestY(x, y);
    double distance = distance(x, y);
    if (distance > Tolerances.SAME_MM) {
      double riseX = (x - nearX) / distance;
      double riseY = (y - nearY) / distance;
      return new Touch(this, distance - needMm, riseX, riseY, distance, nearX, nearY);
    }
    // On the bar itself: away from it is to the left, which is inwards for an outline.
    double length = Math.sqrt(lengthSquared);
    double riseX = length > 0 ? -alongY / length : 1;
    double riseY = length > 0 ? alongX / length : 0;
    return new Touch(this, distance - needMm, riseX, riseY, distance, nearX, nearY);
  }

  @Override
  public Geometry forbidden() {
    return AllowedCentres.grown(AllowedCentres.line(line), needMm);
  }
}
