package org.fettlebench.fits;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * The chance of landing in a circle about the place aimed at: the integral over x of the density
 * along x times the chance of lying between the circle's lower and upper half along y, with x = r
 * sin(angle), which is smooth at the ends.
 */
final class CircleIntegral implements Mixture.Integral {
  /** Pieces of the half turn, besides those that the laws ask for. */
  private static final int PIECES = 16;

  private final double radius;

  private CircleIntegral(double radius) {
    this.radius = radius;
  }

  static CircleIntegral of(double radius) {
    return new CircleIntegral(radius);
  }

  @Override
  public double chance(Mixture.Component law) {
    if (law.x().exact()) {
      return Math.abs(law.offsetX()) <= radius ? between(law, law.offsetX()) : 0;
    }
    double[] cuts = cuts(law);
    double sum = 0;
    for (int i = 1; i < cuts.length; i++) {
      sum += Gauss.integral(angle -> slice(law, angle), cuts[i - 1], cuts[i]);
    }
    return sum;
  }

  private double slice(Mixture.Component law, double angle) {
    double x = radius * Math.sin(angle);
    return law.x().density(x - law.offsetX()) * between(law, x) * radius * Math.cos(angle);
  }

  private double between(Mixture.Component law, double x) {
    double half = Math.sqrt(Math.max(0, radius * radius - x * x));
    double offset = law.offsetY();
    return law.y().cumulative(half - offset) - law.y().cumulative(Math.nextDown(-half) - offset);
  }

  private double[] cuts(Mixture.Component law) {
    DoubleStream even =
        IntStream.rangeClosed(0, PIECES).mapToDouble(i -> Math.PI * (i - PIECES / 2.0) / PIECES);
    DoubleStream alongX =
        DoubleStream.of(law.x().knots())
            .map(knot -> (knot + law.offsetX()) / radius)
            .filter(sine -> Math.abs(sine) < 1)
            .map(Math::asin);
    DoubleStream alongY =
        DoubleStream.of(law.y().knots())
            .map(knot -> (knot + law.offsetY()) / radius)
            .filter(cosine -> Math.abs(cosine) < 1)
            .map(cosine -> Math.acos(Math.abs(cosine)))
            .flatMap(angle -> DoubleStream.of(-angle, angle));
    return DoubleStream.concat(even, DoubleStream.concat(alongX, alongY)).sorted().toArray();
  }
}
