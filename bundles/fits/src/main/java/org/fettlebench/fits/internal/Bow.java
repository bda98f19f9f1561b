package org.fettlebench.fits.internal;

import java.util.List;
import org.fettlebench.fits.Arc;
import org.fettlebench.measure.Point;
import org.locationtech.jts.geom.Geometry;

/** An arc of less than half a turn, kept at a distance in all directions; followed exactly. */
final class Bow implements Side {
  private final Label label;
  private final List<Point> line;
  private final double needMm;
  private final double radius;
  private final double centreX;
  private final double centreY;
  private final boolean bulgesOut;
  private final double beginX;
  private final double beginY;
  private final double endX;
  private final double endY;

  /**
   * Makes an arc.
   *
   * @param line it, broken, from one end to the other
   * @param arc the circle's part; anticlockwise when it bulges out of a line run anticlockwise
   */
  Bow(Label label, List<Point> line, Arc arc, double needMm) {
    this.label = label;
    this.line = line;
    this.needMm = needMm;
    this.radius = arc.radiusMm();
    this.centreX = arc.centre().xMm();
    this.centreY = arc.centre().yMm();
    this.bulgesOut = arc.sweepRadians() > 0;
    Point from = line.get(0);
    Point to = line.get(line.size() - 1);
    Point begin = bulgesOut ? from : to;
    Point end = bulgesOut ? to : from;
    this.beginX = begin.xMm();
    this.beginY = begin.yMm();
    this.endX = end.xMm();
    this.endY = end.yMm();
  }

  @Override
  public Label label() {
    return label;
  }

  @Override
  public List<Point> line() {
    return line;
  }

  @Override
  public double needMm() {
    return needMm;
  }

  /** Returns whether the arc's nearest point lies between its ends. */
  private boolean abreast(double x, double y) {
    double ux = x - centreX;
    double uy = y - centreY;
    return (beginX - centreX) * uy - (beginY - centreY) * ux >= 0
        && ux * (endY - centreY) - uy * (endX - centreX) >= 0;
  }

  private boolean beginNearer(double x, double y) {
    double begin = (x - beginX) * (x - beginX) + (y - beginY) * (y - beginY);
    return begin <= (x - endX) * (x - endX) + (y - endY) * (y - endY);
  }

  @Override
  public double squaredDistance(double x, double y) {
    double distance = distance(x, y);
    return distance * distance;
  }

  @Override
  public double distance(double x, double y) {
    if (abreast(x, y)) {
      return Math.abs(radius - fromCentre(x, y));
    }
    return beginNearer(x, y)
        ? Math.sqrt((x - beginX) * (x - beginX) + (y - beginY) * (y - beginY))
        : Math.sqrt((x - endX) * (x - endX) + (y - endY) * (y - endY));
  }

  private double fromCentre(double x, double y) {
    return Math.sqrt((x - centreX) * (x - centreX) + (y - centreY) * (y - centreY));
  }

  @Override
  public double nearestX(double x, double y) {
    double off = fromCentre(x, y);
    if (abreast(x, y)) {
      return off > 0 ? centreX + (x - centreX) * radius / off : beginX;
    }
    return beginNearer(x, y) ? beginX : endX;
  }

  @Override
  public double nearestY(double x, double y) {
    double off = fromCentre(x, y);
    if (abreast(x, y)) {
      return off > 0 ? centreY + (y - centreY) * radius / off : beginY;
    }
    return beginNearer(x, y) ? beginY : endY;
  }

  /** Returns whether a place lies between the arc and the straight line between its ends. */
  boolean cutsOff(double x, double y) {
    double side = (endX - beginX) * (y - beginY) - (endY - beginY) * (x - beginX);
    return side < 0 && fromCentre(x, y) < radius;
  }

  @Override
  public boolean hollow() {
    return bulgesOut;
  }

  @Override
  public boolean hollowAt(double x, double y) {
    return bulgesOut && abreast(x, y) && fromCentre(x, y) < radius;
  }

  @Override
  public Touch inwards(double x, double y) {
    double off = fromCentre(x, y);
    double outX = off > 0 ? (x - centreX) / off : (beginX - centreX) / radius;
    double outY = off > 0 ? (y - centreY) / off : (beginY - centreY) / radius;
    double nearX = centreX + radius * outX;
    double nearY = centreY + radius * outY;
    return new Touch(this, radius - off - needMm, -outX, -outY, radius - off, nearX, nearY);
  }

  @Override
  public Touch touch(double x, double y) {
    double nearX = nearestX(x, y);
    double nearY = nearestY(x, y);
    double distance = distance(x, y);
    double riseX = x - nearX;
    double riseY = y - nearY;
    double length = Math.hypot(riseX, riseY);
    if (!(length > Tolerances.SAME_MM)) {
      // On the arc itself: inwards is towards its centre when it bulges out.
      riseX = (bulgesOut ? 1 : -1) * (centreX - nearX);
      riseY = (bulgesOut ? 1 : -1) * (centreY - nearY);
      length = radius;
    }
    return new Touch(
        this, distance - needMm, riseX / length, riseY / length, distance, nearX, nearY);
  }

  @Override
  public Geometry forbidden() {
    return AllowedCentres.grown(AllowedCentres.line(line), needMm);
  }
}
