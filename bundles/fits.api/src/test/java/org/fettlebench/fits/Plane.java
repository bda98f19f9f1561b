package org.fettlebench.fits;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.fettlebench.fits.SeatAnswer.Region;
import org.fettlebench.measure.Point;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;

/** Laws and regions for tests. */
final class Plane {
  static final Point ORIGIN = new Point(0, 0);
  static final double WIDE = 50_000;

  private Plane() {}

  static PositionLaw law(double offsetX, double offsetY, ErrorLaw... laws) {
    Source source = new Source("a test", Standing.COMMON_PRACTICE);
    return new PositionLaw(
        offsetX,
        offsetY,
        Stream.of(laws).map(each -> new PositionLaw.Part("step", each, source)).toList());
  }

  static PositionLaw law(ErrorLaw... laws) {
    return law(0, 0, laws);
  }

  static List<Region> region(double... corners) {
    return List.of(new Region(points(corners), List.of()));
  }

  static List<Point> points(double... corners) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < corners.length; i += 2) {
      points.add(new Point(corners[i], corners[i + 1]));
    }
    return points;
  }

  static List<Region> rectangle(double left, double low, double right, double high) {
    return region(left, low, right, low, right, high, left, high);
  }

  /** A polygon with the same area as the circle. */
  static List<Point> circle(double x, double y, double radius) {
    int sides = 2000;
    double turn = 2 * Math.PI / sides;
    double corner = radius * Math.sqrt(turn / Math.sin(turn));
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      points.add(new Point(x + corner * Math.cos(i * turn), y + corner * Math.sin(i * turn)));
    }
    return points;
  }
}
