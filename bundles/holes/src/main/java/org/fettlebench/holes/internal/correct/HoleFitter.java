package org.fettlebench.holes.internal.correct;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.holes.correct.HoleException;
import org.fettlebench.holes.correct.HoleMeasuring;
import org.fettlebench.holes.correct.MeasuredHole;
import org.fettlebench.holes.correct.MeasuredHole.Agreement;
import org.fettlebench.holes.correct.MeasuredHole.Misfit;
import org.fettlebench.holes.correct.MeasuredHole.Spread;
import org.fettlebench.holes.correct.MeasuringQuestion;
import org.fettlebench.holes.correct.Reading;
import org.fettlebench.holes.internal.Say;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.fettlebench.measure.Tolerances;
import org.osgi.service.component.annotations.Component;

/** Fits a hole's centre to readings, and says how far it may be trusted. */
@Component
public final class HoleFitter implements HoleMeasuring {
  /** Below this angle a calliper's own seating on a cast edge decides more than the reading. */
  private static final double LEAST_CROSSING_DEGREES = 1;

  /** Readings that count so much are told of: crossing at less than about 20 degrees. */
  private static final double LARGE_FACTOR = 3;

  /**
   * Radius of a round normal law that holds 95 per cent, in standard deviations: sqrt(-2 ln 5%).
   */
  private static final double WITHIN = Math.sqrt(-2 * Math.log(0.05));

  private static final double CONFIDENCE = 0.95;

  @Override
  public MeasuredHole measure(MeasuringQuestion question) {
    if (question.readings().size() < 2) {
      throw new HoleException(
          "a hole's place needs at least 2 readings, "
              + question.readings().size()
              + " given; measure from another edge as well");
    }
    List<Sight> sights = question.readings().stream().map(r -> Sight.of(question, r)).toList();
    Fit fit = new Fit(sights);
    List<Point> places = likely(fit, fit.places(question.near()));
    Point centre = nearest(places, question.near());
    guard(fit, sights, centre);
    Optional<Point> other = places.stream().filter(place -> place != centre).findFirst();
    other.ifPresent(place -> distinct(question.near(), centre, place));
    return told(question, sights, centre, other);
  }

  /** Keeps the places that the readings cannot tell from the best one. */
  private static List<Point> likely(Fit fit, List<Point> places) {
    double least = fit.squares(places.get(0));
    return places.stream().filter(place -> fit.squares(place) <= least + 4).toList();
  }

  private static Point nearest(List<Point> places, Point near) {
    return places.stream()
        .min((a, b) -> Double.compare(a.distanceMm(near), b.distanceMm(near)))
        .orElseThrow();
  }

  private static void distinct(Point near, Point one, Point other) {
    double apart = one.distanceMm(other);
    double difference = Math.abs(near.distanceMm(one) - near.distanceMm(other));
    if (!(difference > 0.02 * apart)) {
      throw new HoleException(
          "two places fit these readings, "
              + at(one)
              + " and "
              + at(other)
              + ", and nothing tells which; add a reading from an edge, or say about where the hole"
              + " is");
    }
  }

  private static void guard(Fit fit, List<Sight> sights, Point centre) {
    if (fit.crossing(centre) >= Math.sin(Math.toRadians(LEAST_CROSSING_DEGREES))) {
      return;
    }
    boolean edges = sights.stream().allMatch(s -> s.reading().from() instanceof Reading.Edge);
    String names = String.join(", ", sights.stream().map(s -> s.reading().from().name()).toList());
    throw new HoleException(
        edges
            ? names
                + ": parallel within "
                + (int) LEAST_CROSSING_DEGREES
                + " degree, so they say how far across the hole lies but not how far along; measure"
                + " from an edge that crosses them, or from a corner or another hole"
            : names
                + ": their readings meet only in passing, or not at all, so they do not fix a"
                + " place; measure again, or from an edge or a hole in another direction");
  }

  private MeasuredHole told(
      MeasuringQuestion question, List<Sight> sights, Point centre, Optional<Point> other) {
    Fit fit = new Fit(sights);
    int spare = sights.size() - 2;
    double squares = fit.squares(centre);
    Agreement agreement = agreement(squares, spare);
    // Readings that contradict each other are worse than was said of them, by that factor.
    double factor = agreement == Agreement.CONTRADICT ? squares / spare : 1;
    Spread spread = fit.spread(centre, factor);
    List<String> cautions = new ArrayList<>();
    if (agreement == Agreement.CONTRADICT) {
      cautions.add(contradiction(question, sights));
    }
    largeFactor(sights, fit.spread(centre, 1), cautions);
    sights.forEach(sight -> beyondEnd(sight, centre, cautions));
    other.ifPresent(
        place ->
            cautions.add(
                "the readings would fit a hole at "
                    + at(place)
                    + " as well; the one nearer to where it should be is taken"));
    return new MeasuredHole(
        question,
        centre,
        spread,
        WITHIN * spread.greatestMm(),
        sights.stream().map(sight -> misfit(sight, centre)).toList(),
        agreement,
        other,
        cautions);
  }

  private static Misfit misfit(Sight sight, Point centre) {
    return new Misfit(sight.reading(), sight.distanceMm() - sight.atMm(centre), sight.standardMm());
  }

  private static Agreement agreement(double squares, int spare) {
    if (spare == 0) {
      return Agreement.UNCHECKED;
    }
    double most = ChiSquaredDistribution.of(spare).inverseCumulativeProbability(CONFIDENCE);
    return squares <= most ? Agreement.AGREE : Agreement.CONTRADICT;
  }

  /** With two readings to spare the one that spoils the rest can be found by leaving each out. */
  private static String contradiction(MeasuringQuestion question, List<Sight> sights) {
    String words = "the readings contradict each other by more than their uncertainties; ";
    int spare = sights.size() - 3;
    if (spare < 1) {
      return words + "measure again, one of them more than once";
    }
    for (Sight left : sights) {
      List<Sight> rest = sights.stream().filter(sight -> sight != left).toList();
      Fit fit = new Fit(rest);
      if (agreement(fit.squares(fit.places(question.near()).get(0)), spare) == Agreement.AGREE) {
        return words
            + "without the one from "
            + left.reading().from().name()
            + " ("
            + left.reading().to().words()
            + ") the others agree: measure that one again";
      }
    }
    return words + "measure them all again";
  }

  private static void largeFactor(List<Sight> sights, Spread spread, List<String> cautions) {
    double worst = sights.stream().mapToDouble(Sight::standardMm).max().orElseThrow();
    double factor = spread.greatestMm() / worst;
    if (factor > LARGE_FACTOR) {
      cautions.add(
          String.format(
              Locale.ROOT,
              "the directions measured in cross at a small angle, so an error of reading counts"
                  + " %.1f times; add a reading across them",
              factor));
    }
  }

  private static void beyondEnd(Sight sight, Point centre, List<String> cautions) {
    if (sight.reading().from() instanceof Reading.Edge edge) {
      double length = edge.start().distanceMm(edge.end());
      double ux = (edge.end().xMm() - edge.start().xMm()) / length;
      double uy = (edge.end().yMm() - edge.start().yMm()) / length;
      double along =
          (centre.xMm() - edge.start().xMm()) * ux + (centre.yMm() - edge.start().yMm()) * uy;
      double beyond = Math.max(-along, along - length);
      if (beyond > Tolerances.GEOMETRY_SLACK_MM) {
        cautions.add(
            edge.name()
                + ": square to the hole there is no edge any more, it ends "
                + Say.size(beyond)
                + " before; was it measured from this edge?");
      }
    }
  }

  private static String at(Point place) {
    return "x " + Say.size(place.xMm()) + ", y " + Say.size(place.yMm());
  }

  @Override
  public Drawing draw(MeasuredHole hole, LengthUnit unit) {
    return new MeasuringPainter(hole, unit).draw();
  }
}
