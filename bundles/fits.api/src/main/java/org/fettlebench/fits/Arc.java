package org.fettlebench.fits;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.measure.Point;

/**
 * A part of a circle.
 *
 * @param centre of the circle
 * @param radiusMm of the circle, above 0
 * @param fromRadians direction from the centre to where the arc begins, anticlockwise from x
 * @param sweepRadians how far round it goes, positive anticlockwise; less than a whole turn
 */
public record Arc(Point centre, double radiusMm, double fromRadians, double sweepRadians) {

  /** Returns the place that lies a share, from 0 to 1, along the arc. */
  public Point at(double share) {
    double angle = fromRadians + share * sweepRadians;
    return centre.moved(radiusMm * Math.cos(angle), radiusMm * Math.sin(angle));
  }

  /** Returns the part of it between two shares, from 0 to 1, of its way. */
  public Arc part(double fromShare, double toShare) {
    return new Arc(
        centre,
        radiusMm,
        fromRadians + fromShare * sweepRadians,
        (toShare - fromShare) * sweepRadians);
  }

  /** Returns the same arc run the other way. */
  public Arc reversed() {
    return new Arc(centre, radiusMm, fromRadians + sweepRadians, -sweepRadians);
  }

  /** Returns it broken into chords as {@link Outline#points()} says, both ends included. */
  public List<Point> points() {
    List<Point> places = new ArrayList<>();
    places.add(at(0));
    places.addAll(between());
    places.add(at(1));
    return places;
  }

  /** Returns the places between both ends that break it into chords near enough to it. */
  List<Point> between() {
    double error = Math.max(Outline.CHORD_ERROR_MM, radiusMm * 1e-5);
    // A chord over an angle a is off the arc by r (1 - cos(a / 2)) at most.
    double most = 2 * Math.acos(Math.max(0, 1 - error / radiusMm));
    int count = (int) Math.ceil(Math.abs(sweepRadians) / most);
    List<Point> places = new ArrayList<>();
    for (int i = 1; i < count; i++) {
      places.add(at((double) i / count));
    }
    return places;
  }

  /** Returns the arc from one place through another to a third; null-free, refuses a line. */
  static Arc through(String name, Point from, Point middle, Point to) {
    double ax = middle.xMm() - from.xMm();
    double ay = middle.yMm() - from.yMm();
    double bx = to.xMm() - from.xMm();
    double by = to.yMm() - from.yMm();
    double turn = ax * by - ay * bx;
    double a = ax * ax + ay * ay;
    double b = bx * bx + by * by;
    double cross = 2 * turn;
    double dx = (by * a - ay * b) / cross;
    double dy = (ax * b - bx * a) / cross;
    double radius = Math.hypot(dx, dy);
    if (!(radius > 0 && radius <= 1e7)) {
      throw new SeatException(
          name
              + ": x "
              + middle.xMm()
              + " mm, y "
              + middle.yMm()
              + " mm does not bend it; leave it out for a straight edge, or measure it again");
    }
    Point centre = from.moved(dx, dy);
    double begin = Math.atan2(-dy, -dx);
    double end = Math.atan2(to.yMm() - centre.yMm(), to.xMm() - centre.xMm());
    return new Arc(centre, radius, begin, sweep(begin, end, turn > 0));
  }

  /** Returns the way from one direction to another; the middle decides which way round. */
  private static double sweep(double begin, double end, boolean anticlockwise) {
    double way = end - begin;
    if (anticlockwise) {
      return way > 0 ? way : way + 2 * Math.PI;
    }
    return way < 0 ? way : way - 2 * Math.PI;
  }
}
