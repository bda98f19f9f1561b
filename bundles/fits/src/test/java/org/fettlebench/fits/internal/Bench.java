package org.fettlebench.fits.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.measure.Point;

/** Makes seats, heads and questions for tests in few words. */
final class Bench {
  static final double INCH = 25.4;

  private Bench() {}

  static List<Point> corners(double... xy) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      corners.add(new Point(xy[i], xy[i + 1]));
    }
    return corners;
  }

  static List<Point> rectangle(double width, double depth) {
    return corners(0, 0, width, 0, width, depth, 0, depth);
  }

  static List<Point> circle(double radius, int count) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double angle = 2 * Math.PI * i / count;
      corners.add(new Point(radius * Math.cos(angle), radius * Math.sin(angle)));
    }
    return corners;
  }

  static SeatedHead round(double diameter) {
    return new SeatedHead(
        "round head",
        diameter,
        OptionalDouble.empty(),
        OptionalDouble.of(3),
        OptionalDouble.empty(),
        "");
  }

  static SeatedHead hexagon(double acrossFlats) {
    return new SeatedHead(
        "hexagon",
        acrossFlats / Math.cos(Math.PI / 6),
        OptionalDouble.of(acrossFlats),
        OptionalDouble.of(3),
        OptionalDouble.empty(),
        "");
  }

  static Seat seat(List<Point> outline, Point intended) {
    return seat(Outline.of(outline), intended);
  }

  static Seat seat(Outline outline, Point intended) {
    return Seat.flat("lug", outline, intended);
  }

  static Seat with(Seat seat, Seat.Wall... walls) {
    return seat.withWalls(List.of(walls));
  }

  static SeatQuestion ask(Seat seat, SeatedHead head) {
    return new SeatQuestion(seat, head, 0.5, 0.1, "a test");
  }
}
