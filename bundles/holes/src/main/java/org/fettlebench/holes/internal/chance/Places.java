package org.fettlebench.holes.internal.chance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.fits.ErrorLaw;
import org.fettlebench.fits.PositionLaw;
import org.fettlebench.holes.chance.Draws;

/**
 * Draws where holes land by a law, one after the other; all its normal errors are drawn as the one
 * that they add to.
 */
public final class Places {
  private final Draws draws;
  private final double offsetX;
  private final double offsetY;
  private final double sigmaX;
  private final double sigmaY;
  private final double[] boundX;
  private final double[] boundY;
  private final double circle;
  private double x;
  private double y;

  /**
   * Prepares for draws.
   *
   * @param law of the errors; none for holes that are just where they should be
   */
  public Places(Optional<PositionLaw> law, Draws draws) {
    this.draws = draws;
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
  public void next() {
    x = offsetX;
    y = offsetY;
    if (sigmaX > 0 || sigmaY > 0) {
      x += draws.normal(0, sigmaX);
      y += draws.normal(0, sigmaY);
    }
    for (int i = 0; i < boundX.length; i++) {
      x += draws.rectangular(-boundX[i], boundX[i]);
      y += draws.rectangular(-boundY[i], boundY[i]);
    }
    if (circle > 0) {
      // The root spreads the places evenly over the circle.
      double radius = circle * Math.sqrt(draws.rectangular(0, 1));
      double angle = draws.rectangular(-Math.PI, Math.PI);
      x += radius * Math.cos(angle);
      y += radius * Math.sin(angle);
    }
  }

  /** Returns how far the hole drawn is out along x. */
  public double x() {
    return x;
  }

  /** Returns how far the hole drawn is out along y. */
  public double y() {
    return y;
  }
}
