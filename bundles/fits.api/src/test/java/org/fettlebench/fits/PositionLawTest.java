package org.fettlebench.fits;

import static org.fettlebench.fits.Plane.ORIGIN;
import static org.fettlebench.fits.Plane.WIDE;
import static org.fettlebench.fits.Plane.circle;
import static org.fettlebench.fits.Plane.law;
import static org.fettlebench.fits.Plane.points;
import static org.fettlebench.fits.Plane.rectangle;
import static org.fettlebench.fits.Plane.region;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.PoissonDistribution;
import org.fettlebench.fits.ErrorLaw.Bounded;
import org.fettlebench.fits.ErrorLaw.Circle;
import org.fettlebench.fits.ErrorLaw.Normal;
import org.fettlebench.fits.SeatAnswer.Region;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Chances of laws of position against closed forms and a library's distributions. */
class PositionLawTest {
  private static double within(NormalDistribution law, double from, double to) {
    return law.probability(from, to);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.001, 0.1, 0.3, 0.6, 1.5})
  void circleAboutTheAimHasTheChanceOfRayleigh(double radius) {
    PositionLaw law = law(Normal.round(0.2));
    double rayleigh = 1 - Math.exp(-radius * radius / (2 * 0.2 * 0.2));

    List<Region> round = List.of(new Region(circle(3, -2, radius), List.of()));
    assertEquals(rayleigh, law.chanceWithin(round, new Point(3, -2)), 1e-6);
    assertEquals(rayleigh, law.chanceWithinRadius(radius), 1e-12);
    // The way that laws take which are not round.
    assertEquals(rayleigh, Mixture.of(law).chance(CircleIntegral.of(radius)), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"0.1,0.2", "0.3,0.2", "0.5,0.8", "1.0,0.3", "0.05,1.2"})
  void circleBesideTheAimHasTheChanceOfNoncentralChiSquare(double away, double radius) {
    double sigma = 0.25;
    double rate = away * away / (2 * sigma * sigma);
    PoissonDistribution poisson = PoissonDistribution.of(rate);
    double rice = 0;
    for (int j = 0; j < 200; j++) {
      rice +=
          poisson.probability(j)
              * ChiSquaredDistribution.of(2 + 2 * j)
                  .cumulativeProbability(radius * radius / (sigma * sigma));
    }

    List<Region> round = List.of(new Region(circle(0, away, radius), List.of()));
    assertEquals(rice, law(Normal.round(sigma)).chanceWithin(round, ORIGIN), 1e-6);
    PositionLaw out = law(0.6 * away, -0.8 * away, Normal.round(sigma));
    assertEquals(rice, out.chanceWithinRadius(radius), 1e-8);
    assertEquals(radius, out.radiusMm(rice), 1e-6);
  }

  @Test
  void rectangleHasTheProductOfTwoNormals() {
    PositionLaw law = law(0.05, -0.02, new Normal(0.1, 0.3));
    double x = within(NormalDistribution.of(1.05, 0.1), 0.9, 1.2);
    double y = within(NormalDistribution.of(1.98, 0.3), 1.5, 2.2);

    assertEquals(x * y, law.chanceWithin(rectangle(0.9, 1.5, 1.2, 2.2), new Point(1, 2)), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"0,0.3", "30,0.1", "45,-0.25", "90,0.2", "137,0.6"})
  void halfPlaneHasOneNormal(double degrees, double away) {
    double sine = Math.sin(Math.toRadians(degrees));
    double cosine = Math.cos(Math.toRadians(degrees));
    // A wide rectangle whose near side lies so far from the aim, square to the direction.
    double[][] corners = {{away, -WIDE}, {away, WIDE}, {-WIDE, WIDE}, {-WIDE, -WIDE}};
    List<Point> points =
        Stream.of(corners)
            .map(c -> new Point(c[0] * cosine - c[1] * sine, c[0] * sine + c[1] * cosine))
            .toList();
    double sigma = Math.hypot(0.2 * cosine, 0.4 * sine);
    double expected = NormalDistribution.of(0, sigma).cumulativeProbability(away);

    double chance =
        law(new Normal(0.2, 0.4)).chanceWithin(List.of(new Region(points, List.of())), ORIGIN);

    assertEquals(expected, chance, 1e-8);
  }

  @Test
  void wedgeAboutTheAimHasItsShareOfTheTurn() {
    double angle = Math.toRadians(37);
    double far = 2_000;
    List<Region> wedge =
        region(
            0,
            0,
            far,
            0,
            far * Math.cos(angle / 2),
            far * Math.sin(angle / 2),
            far * Math.cos(angle),
            far * Math.sin(angle));

    assertEquals(37 / 360.0, law(Normal.round(0.3)).chanceWithin(wedge, ORIGIN), 1e-9);
  }

  @Test
  void triangleOfANormalLawIsTheIntegralOfItsStrips() {
    // Strips along x: the density there times the difference of two normal distribution functions,
    // summed by the midpoint rule over 100 000 strips.
    NormalDistribution x = NormalDistribution.of(0, 0.15);
    NormalDistribution y = NormalDistribution.of(0, 0.25);
    int strips = 100_000;
    double sum = 0;
    for (int i = 0; i < strips; i++) {
      double at = -0.2 + 0.6 * (i + 0.5) / strips;
      double low = -0.1 + (at + 0.2) / 0.6 * 0.05;
      double high = -0.1 + (at + 0.2) / 0.6 * 0.5;
      sum += x.density(at) * y.probability(low, high) * 0.6 / strips;
    }

    double chance =
        law(new Normal(0.15, 0.25)).chanceWithin(region(-0.2, -0.1, 0.4, -0.05, 0.4, 0.4), ORIGIN);

    assertEquals(sum, chance, 1e-8);
  }

  @Test
  void partsAddAndHolesAreTakenOff() {
    PositionLaw law = law(Normal.round(0.3));
    List<Point> outer = circle(0, 0, 0.6);
    List<Point> inner = circle(0, 0, 0.2);
    double ring = Math.exp(-0.04 / 0.18) - Math.exp(-0.36 / 0.18);

    assertEquals(ring, law.chanceWithin(List.of(new Region(outer, List.of(inner))), ORIGIN), 1e-6);
    double left = law.chanceWithin(rectangle(-1, -1, 0, 1), ORIGIN);
    double right = law.chanceWithin(rectangle(0, -1, 1, 1), ORIGIN);
    List<Region> both = new ArrayList<>(rectangle(-1, -1, 0, 1));
    both.addAll(rectangle(0, -1, 1, 1));
    assertEquals(left + right, law.chanceWithin(both, ORIGIN), 1e-12);
    assertEquals(0, law.chanceWithin(List.of(), ORIGIN));
  }

  @Test
  void boundedErrorsAloneHaveShareOfAreaAndTheirSumsTheKnownShapes() {
    // A quarter of the rectangle of errors.
    assertEquals(0.25, law(new Bounded(2, 3)).chanceWithin(rectangle(0, 0, 9, 9), ORIGIN), 1e-12);
    // A triangle across it: half.
    assertEquals(
        0.5, law(new Bounded(1, 1)).chanceWithin(region(-1, -1, 1, -1, 1, 1), ORIGIN), 1e-12);
    // Two equal bounds make a triangle: within half its reach lie three quarters.
    PositionLaw two = law(new Bounded(1, 1), new Bounded(1, 1));
    assertEquals(0.75, two.chanceWithin(rectangle(-1, -5, 1, 5), ORIGIN), 1e-12);
    // Three (Irwin and Hall's law): within a third of the reach lie two thirds.
    PositionLaw three = law(new Bounded(1, 1), new Bounded(1, 1), new Bounded(1, 1));
    assertEquals(2 / 3.0, three.chanceWithin(rectangle(-9, -1, 9, 1), ORIGIN), 1e-12);
  }

  @Test
  void circleOfErrorsHasShareOfArea() {
    PositionLaw law = law(new Circle(0.5));
    // Beyond a chord at half the radius: (pi / 3 - sqrt(3) / 4) / pi.
    double segment = (Math.PI / 3 - Math.sqrt(3) / 4) / Math.PI;

    assertEquals(segment, law.chanceWithin(rectangle(0.25, -1, 1, 1), ORIGIN), 5e-4);
    assertEquals(segment, law.chanceWithin(rectangle(-1, 0.25, 1, 1), ORIGIN), 5e-4);
    assertEquals(0.36, law.chanceWithinRadius(0.3), 5e-4);
    assertEquals(0.5 * Math.sqrt(0.95), law.radiusMm(0.95), 5e-4);
  }

  @Test
  void anErrorAlongOneAxisOnlyIsOneNormal() {
    // 1.959964: the normal quantile of 97.5 %, any table.
    assertEquals(0.2 * 1.959964, law(new Normal(0.2, 0)).radiusMm(0.95), 1e-6);
    assertEquals(0.2 * 1.959964, law(new Normal(0, 0.2)).radiusMm(0.95), 1e-6);
    NormalDistribution normal = NormalDistribution.of(0, 0.2);
    double expected = normal.probability(-0.1, 0.3);
    assertEquals(
        expected, law(new Normal(0.2, 0)).chanceWithin(rectangle(-0.1, -1, 0.3, 1), ORIGIN), 1e-9);
    assertEquals(
        expected, law(new Normal(0, 0.2)).chanceWithin(rectangle(-1, -0.1, 1, 0.3), ORIGIN), 1e-9);
    assertEquals(0, law(new Normal(0, 0.2)).chanceWithin(rectangle(1, -1, 2, 1), ORIGIN), 1e-12);
  }

  @Test
  void radiusOfAnyLawHoldsTheAskedShare() {
    List<PositionLaw> laws =
        List.of(
            law(new Normal(0.1, 0.3)),
            law(0.2, 0.1, new Normal(0.1, 0.1)),
            law(new Bounded(0.2, 0.1), new Normal(0.01, 0.02)),
            law(new Bounded(0.2, 0.3), new Bounded(0.1, 0.1)),
            law(new Circle(0.2), Normal.round(0.05)),
            law(0, 0, new Circle(0.2), new Bounded(0.05, 0.05)));
    for (PositionLaw law : laws) {
      for (double confidence : new double[] {0.5, 0.9, 0.95, 0.999}) {
        double radius = law.radiusMm(confidence);
        List<Region> round = List.of(new Region(circle(0, 0, radius), List.of()));

        assertEquals(confidence, law.chanceWithin(round, ORIGIN), 2e-4, law.toString());
      }
    }
  }

  @Test
  void normalPartsAreAsOne() {
    PositionLaw parts = law(Normal.round(0.03), Normal.round(0.04));

    assertEquals(0.05, parts.sigmaPerAxisMm(), 1e-15);
    assertEquals(law(Normal.round(0.05)).radiusMm(0.9), parts.radiusMm(0.9), 1e-12);
    assertEquals(0.1, law(new Normal(0.02, Math.sqrt(0.0196))).sigmaPerAxisMm(), 1e-12);
    assertEquals(Math.sqrt(1 / 3.0), law(new Bounded(1, 1)).sigmaPerAxisMm(), 1e-12);
    assertEquals(0.5, law(new Circle(1)).sigmaPerAxisMm(), 1e-12);
  }
}
