package org.fettlebench.holes.internal.chance;

import org.fettlebench.fits.ErrorLaw;
import org.fettlebench.fits.PositionLaw;
import org.fettlebench.holes.chance.Draws;
import org.fettlebench.holes.chance.Simulations;
import org.fettlebench.measure.Point;

/** One hole after another, thrown by the law of its method. */
final class Landing implements Simulations.Attempt {
  private final PositionLaw law;
  private final Point aimed;
  private final Inside allowed;

  Landing(PositionLaw law, Point aimed, Inside allowed) {
    this.law = law;
    this.aimed = aimed;
    this.allowed = allowed;
  }

  @Override
  public boolean comesOff(Draws draws) {
    double x = aimed.xMm() + law.offsetXMm();
    double y = aimed.yMm() + law.offsetYMm();
    for (PositionLaw.Part part : law.parts()) {
      if (part.law() instanceof ErrorLaw.Normal normal) {
        x += draws.normal(0, normal.sigmaXMm());
        y += draws.normal(0, normal.sigmaYMm());
      } else if (part.law() instanceof ErrorLaw.Bounded bounded) {
        x += draws.rectangular(-bounded.halfXMm(), bounded.halfXMm());
        y += draws.rectangular(-bounded.halfYMm(), bounded.halfYMm());
      } else if (part.law() instanceof ErrorLaw.Circle circle) {
        // The root spreads the places evenly over the circle.
        double radius = circle.radiusMm() * Math.sqrt(draws.rectangular(0, 1));
        double angle = draws.rectangular(-Math.PI, Math.PI);
        x += radius * Math.cos(angle);
        y += radius * Math.sin(angle);
      }
    }
    return allowed.holds(x, y);
  }
}
