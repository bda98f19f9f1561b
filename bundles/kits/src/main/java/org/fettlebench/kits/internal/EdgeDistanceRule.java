package org.fettlebench.kits.internal;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.fettlebench.fits.Seat;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.Finding.Weight;
import org.fettlebench.kits.JointCase;
import org.fettlebench.kits.JointRule;
import org.fettlebench.measure.Point;
import org.fettlebench.measure.Tolerances;

/** Says when a hole is so near an edge that it may tear out. */
final class EdgeDistanceRule implements JointRule {
  static final String NAME = "edge distance";

  /** Centre to edge in diameters of the fastener, never to be less: the source's rule. */
  private static final double LEAST_DIAMETERS = 1.0;

  private static final String SOURCE =
      "AISC A360-16 Table J3.4, for structural bolts: never below 1 diameter without approval";

  @Override
  public String title() {
    return "distance from the edge";
  }

  @Override
  public List<Finding> look(JointCase joint) {
    Optional<Seat> seat = joint.joint().seat();
    if (seat.isEmpty()) {
      return List.of();
    }
    double distance =
        Stream.concat(Stream.of(seat.get().outline()), seat.get().underside().stream())
            .mapToDouble(outline -> distance(outline.points(), seat.get().intended()))
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    double diameters = distance / joint.thread().major().millimetres();
    if (!(distance
        < LEAST_DIAMETERS * joint.thread().major().millimetres() - Tolerances.GEOMETRY_SLACK_MM)) {
      return List.of();
    }
    return List.of(
        Finding.of(
            Weight.CAUTION,
            NAME,
            "The hole's centre is "
                + Say.sizeMm(distance)
                + " from the edge, only "
                + String.format(Locale.ROOT, "%.2f", diameters)
                + " diameters ("
                + SOURCE
                + ").",
            Say.mm("edgeDistance", distance),
            new Finding.Figure("edgeDistanceDiameters", diameters)));
  }

  private static double distance(List<Point> outline, Point centre) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < outline.size(); i++) {
      least =
          Math.min(least, distance(outline.get(i), outline.get((i + 1) % outline.size()), centre));
    }
    return least;
  }

  private static double distance(Point from, Point to, Point point) {
    double dx = to.xMm() - from.xMm();
    double dy = to.yMm() - from.yMm();
    double square = dx * dx + dy * dy;
    double along =
        square > 0
            ? ((point.xMm() - from.xMm()) * dx + (point.yMm() - from.yMm()) * dy) / square
            : 0;
    double held = Math.max(0, Math.min(1, along));
    return point.distanceMm(from.moved(held * dx, held * dy));
  }
}
