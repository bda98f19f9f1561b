package org.fettlebench.holes.internal.patterns;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.fettlebench.fits.ErrorLaw;
import org.fettlebench.fits.PositionLaw;

/** Draws where holes land by a law; all its normal errors are drawn as the one that they add to. */
final class PlaceDraws {
  private final UniformRandomProvider random;
  private final ZigguratSampler.NormalizedGaussian normal;
  private final double offsetX;
  private final double offsetY;
  private final double sigmaX;
  private final double sigmaY;
  private final double[] boundX;
  private final double[] boundY;
  private final double circle;
  private double x;
  private double y;

  PlaceDraws(Optional<PositionLaw> law, UniformRandomProvider random) {
    this.random = random;
    this.normal = ZigguratSampler.NormalizedGaussian.of(random);
    this.offsetX = law.map(PositionLaw::offsetXMm).orElse(0.0);
    this.offsetY = law.map(PositionLaw::offsetYMm).orElse(0.0);
    double squareX = 0;
    double squareY = 0;
    double radius = 0;
    List<ErrorLaw.Bounded> bounds = new ArrayList<>();
    for (PositionLaw.Part part : law.map(PositionLaw::parts).orElse(List.of())) {
      if (part.law() instanceof ErrorLaw.Normal each) {
        squareX += each.varianceXMm2();
        squareY += each.varianceYMm2();
      } else if (part.law() instanceof ErrorLaw.Bounded each) {
        bounds.add(each);
      } else if (part.law() instanceof ErrorLaw.Circle each) {
        radius = each.radiusMm();
      }
    }
    this.sigmaX = Math.sqrt(squareX);
    this.sigmaY = Math.sqrt(squareY);
    this.circle = radius;
    this.boundX = bounds.stream().mapToDouble(ErrorLaw.Bounded::halfXMm).toArray();
    this.boundY = bounds.stream().mapToDouble(ErrorLaw.Bounded::halfYMm).toArray();
  }

  /** Draws the next hole. */
  void next() {
    x = offsetX;
    y = offsetY;
    if (sigmaX > 0 || sigmaY > 0) {
      x += sigmaX * normal.sample();
      y += sigmaY * normal.sample();
    }
    for (int i = 0; i < boundX.length; i++) {
      x += boundX[i] * (2 * random.nextDouble() - 1);
      y += boundY[i] * (2 * random.nextDouble() - 1);
    }
    if (circle > 0) {
      double radius = circle * Math.sqrt(random.nextDouble());
      double angle = 2 * Math.PI * random.nextDouble();
      x += radius * Math.cos(angle);
      y += radius * Math.sin(angle);
    }
  }

  /** Returns how far the hole drawn is out along x. */
  double x() {
    return x;
  }

  /** Returns how far the hole drawn is out along y. */
  double y() {
    return y;
  }
}
