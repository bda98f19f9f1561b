package org.fettlebench.holes.internal.correct;

import org.fettlebench.holes.correct.HoleException;
import org.fettlebench.holes.correct.MeasuringQuestion;
import org.fettlebench.holes.correct.Reading;
import org.fettlebench.holes.internal.Say;
import org.fettlebench.measure.Point;
import org.fettlebench.measure.Tolerances;

/**
 * A reading as an equation for the hole's centre: so far from an edge, or from a spot.
 *
 * @param reading as it was read
 * @param distanceMm what it says of the centre
 * @param standardMm standard uncertainty of that
 * @param near side of an edge that counts
 */
record Sight(Reading reading, double distanceMm, double standardMm, Point near) {

  static Sight of(MeasuringQuestion question, Reading reading) {
    double across = acrossMm(question, reading.to());
    double other =
        reading.from() instanceof Reading.Spot spot && reading.to() != Reading.To.CENTRE
            ? spot.diameterMm()
            : 0;
    double way =
        switch (reading.to()) {
          case CENTRE -> 0;
          case NEAR_RIM, TO_PIN -> 1;
          case FAR_RIM, OVER_PIN -> -1;
        };
    double distance = reading.readingMm() + way * (across + other) / 2;
    if (!(distance > 0)) {
      throw new HoleException(
          reading.from().name()
              + ": "
              + Say.size(reading.readingMm())
              + " "
              + reading.to().words()
              + " is less than half the diameters in it; check what was measured");
    }
    return new Sight(reading, distance, standardMm(question, reading), question.near()).sided();
  }

  private static double acrossMm(MeasuringQuestion question, Reading.To to) {
    return switch (to) {
      case CENTRE -> 0;
      case NEAR_RIM, FAR_RIM -> question.holeDiameterMm();
      case OVER_PIN, TO_PIN -> question.pinDiameterMm().orElseThrow();
    };
  }

  /** A loose pin may stand anywhere in its shake, which is bounded: half its width over root 3. */
  private static double standardMm(MeasuringQuestion question, Reading reading) {
    double read = reading.plusMinusMm() / 2;
    boolean pin = reading.to() == Reading.To.OVER_PIN || reading.to() == Reading.To.TO_PIN;
    if (!pin) {
      return read;
    }
    double shake = (question.holeDiameterMm() - question.pinDiameterMm().orElseThrow()) / 2;
    return Math.hypot(read, shake / Math.sqrt(3));
  }

  private Sight sided() {
    if (reading.from() instanceof Reading.Edge edge) {
      if (!(edge.start().distanceMm(edge.end()) > Tolerances.GEOMETRY_SLACK_MM)) {
        throw new HoleException(edge.name() + " has no length; give its two ends");
      }
      if (Math.abs(beyondMm(edge, near)) <= Tolerances.GEOMETRY_SLACK_MM) {
        throw new HoleException(
            "the hole is said to be about on the line of "
                + edge.name()
                + ", so nothing tells on which side it is; say about where the hole is");
      }
    }
    return this;
  }

  /** Returns what would be read as distance at a place. */
  double atMm(Point place) {
    return reading.from() instanceof Reading.Spot spot
        ? spot.centre().distanceMm(place)
        : side() * beyondMm((Reading.Edge) reading.from(), place);
  }

  /** Returns how fast that grows along x and y at a place: a step of length 1. */
  Point slope(Point place) {
    if (reading.from() instanceof Reading.Edge edge) {
      double length = edge.start().distanceMm(edge.end());
      return new Point(
          -side() * (edge.end().yMm() - edge.start().yMm()) / length,
          side() * (edge.end().xMm() - edge.start().xMm()) / length);
    }
    Point centre = ((Reading.Spot) reading.from()).centre();
    double away = centre.distanceMm(place);
    return away > Tolerances.GEOMETRY_SLACK_MM
        ? new Point((place.xMm() - centre.xMm()) / away, (place.yMm() - centre.yMm()) / away)
        : new Point(1, 0);
  }

  private double side() {
    return Math.signum(beyondMm((Reading.Edge) reading.from(), near));
  }

  /** Returns how far a place lies to the left of the line from start to end. */
  private static double beyondMm(Reading.Edge edge, Point place) {
    double dx = edge.end().xMm() - edge.start().xMm();
    double dy = edge.end().yMm() - edge.start().yMm();
    return (dx * (place.yMm() - edge.start().yMm()) - dy * (place.xMm() - edge.start().xMm()))
        / Math.hypot(dx, dy);
  }
}
