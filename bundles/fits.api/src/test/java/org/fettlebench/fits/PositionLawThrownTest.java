package org.fettlebench.fits;

import static org.fettlebench.fits.Plane.ORIGIN;
import static org.fettlebench.fits.Plane.circle;
import static org.fettlebench.fits.Plane.law;
import static org.fettlebench.fits.Plane.region;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.stream.Stream;
import org.fettlebench.fits.ErrorLaw.Bounded;
import org.fettlebench.fits.ErrorLaw.Circle;
import org.fettlebench.fits.ErrorLaw.Normal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Chances of every mixture of laws against errors thrown one by one. */
class PositionLawThrownTest {
  @ParameterizedTest
  @MethodSource("laws")
  void triangleHasTheShareOfErrorsThrown(PositionLaw law, double tolerance) {
    double[] t = {-0.31, -0.22, 0.44, -0.05, 0.02, 0.37};

    double chance = law.chanceWithin(region(t), ORIGIN);

    assertEquals(thrown(law, t), chance, tolerance);
    assertTrue(chance > 0.1 && chance < 0.9, "chance " + chance);
  }

  static Stream<Arguments> laws() {
    return Stream.of(
            law(Normal.round(0.2)),
            law(0.1, 0.05, new Normal(0.1, 0.3)),
            law(new Normal(0.1, 0.05), new Bounded(0.2, 0.3)),
            law(Normal.round(0.02), new Bounded(0.2, 0.1), new Bounded(0.1, 0.15)),
            law(new Bounded(0.5, 0.3)),
            law(Normal.round(0.1), new Circle(0.25)),
            law(new Bounded(0.1, 0.2), new Circle(0.25)),
            law(new Circle(0.4)))
        .map(each -> Arguments.of(each, 1.6e-3));
  }

  /** Throws errors one by one and counts: nothing in common with how the law is integrated. */
  private static double thrown(PositionLaw law, double[] t) {
    Random random = new Random(20);
    int trials = 1_500_000;
    int hits = 0;
    for (int i = 0; i < trials; i++) {
      double x = law.offsetXMm();
      double y = law.offsetYMm();
      for (PositionLaw.Part part : law.parts()) {
        if (part.law() instanceof Normal normal) {
          x += normal.sigmaXMm() * random.nextGaussian();
          y += normal.sigmaYMm() * random.nextGaussian();
        } else if (part.law() instanceof Bounded bounded) {
          x += bounded.halfXMm() * (2 * random.nextDouble() - 1);
          y += bounded.halfYMm() * (2 * random.nextDouble() - 1);
        } else if (part.law() instanceof Circle circle) {
          double radius = circle.radiusMm() * Math.sqrt(random.nextDouble());
          double angle = 2 * Math.PI * random.nextDouble();
          x += radius * Math.cos(angle);
          y += radius * Math.sin(angle);
        }
      }
      hits += side(t, 0, 2, x, y) && side(t, 2, 4, x, y) && side(t, 4, 0, x, y) ? 1 : 0;
    }
    return hits / (double) trials;
  }

  private static boolean side(double[] t, int a, int b, double x, double y) {
    return (t[b] - t[a]) * (y - t[a + 1]) - (t[b + 1] - t[a + 1]) * (x - t[a]) >= 0;
  }
}
