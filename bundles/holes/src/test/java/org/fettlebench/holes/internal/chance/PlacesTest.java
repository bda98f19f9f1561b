package org.fettlebench.holes.internal.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.apache.commons.rng.simple.RandomSource;
import org.fettlebench.fits.ErrorLaw;
import org.fettlebench.fits.PositionLaw;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.junit.jupiter.api.Test;

class PlacesTest {
  private static final int TRIALS = 200_000;

  private static PositionLaw law(double offsetX, double offsetY, ErrorLaw... laws) {
    Source source = new Source("test", Standing.RULE);
    return new PositionLaw(
        offsetX,
        offsetY,
        List.of(laws).stream().map(each -> new PositionLaw.Part("step", each, source)).toList());
  }

  private static Places places(PositionLaw law) {
    return new Places(Optional.of(law), new LibraryDraws(RandomSource.XO_SHI_RO_256_PP.create(5L)));
  }

  /** Means and spreads of many draws against those that the law itself tells. */
  private static void moments(PositionLaw law) {
    Places places = places(law);
    double[] sums = new double[4];
    for (int i = 0; i < TRIALS; i++) {
      places.next();
      sums[0] += places.x() / TRIALS;
      sums[1] += places.y() / TRIALS;
      sums[2] += Math.pow(places.x() - law.offsetXMm(), 2) / TRIALS;
      sums[3] += Math.pow(places.y() - law.offsetYMm(), 2) / TRIALS;
    }
    assertEquals(law.offsetXMm(), sums[0], 0.002);
    assertEquals(law.offsetYMm(), sums[1], 0.002);
    assertEquals(law.sigmaXMm(), Math.sqrt(sums[2]), 0.002);
    assertEquals(law.sigmaYMm(), Math.sqrt(sums[3]), 0.002);
  }

  @Test
  void everyKindOfLawHasItsMeanAndSpread() {
    moments(law(0.3, -0.2, new ErrorLaw.Normal(0.05, 0.02)));
    moments(law(0, 0.1, new ErrorLaw.Bounded(0.1, 0.2)));
    moments(law(-0.1, 0, new ErrorLaw.Circle(0.12)));
    moments(law(0, 0, new ErrorLaw.Normal(0.1, 0), new ErrorLaw.Normal(0.1, 0.2)));
    moments(
        law(
            0.3,
            -0.2,
            new ErrorLaw.Normal(0.05, 0.02),
            new ErrorLaw.Bounded(0.1, 0.2),
            new ErrorLaw.Bounded(0.2, 0.05),
            new ErrorLaw.Circle(0.12)));
  }

  /** Along one axis only, the other stays where it is. */
  @Test
  void anErrorAlongOneAxisLeavesTheOther() {
    Places along = places(law(0, 0.7, new ErrorLaw.Normal(0.2, 0)));
    Places away = places(law(0.7, 0, new ErrorLaw.Normal(0, 0.2)));
    double greatest = 0;
    for (int i = 0; i < 100; i++) {
      along.next();
      away.next();
      assertEquals(0.7, along.y());
      assertEquals(0.7, away.x());
      greatest = Math.max(greatest, Math.min(Math.abs(along.x()), Math.abs(away.y())));
    }
    assertTrue(greatest > 0.1, "nothing moved");
  }

  /** In a circle the square of the radius is even: a quarter lies within half the radius. */
  @Test
  void circleIsFilledEvenly() {
    Places places = places(law(0, 0, new ErrorLaw.Circle(2)));
    int inner = 0;
    int[] quarters = new int[4];
    for (int i = 0; i < TRIALS; i++) {
      places.next();
      double radius = Math.hypot(places.x(), places.y());
      assertTrue(radius <= 2);
      inner += radius <= 1 ? 1 : 0;
      quarters[(places.x() > 0 ? 1 : 0) + (places.y() > 0 ? 2 : 0)]++;
    }
    double error = 4 * Math.sqrt(0.25 * 0.75 / TRIALS);
    assertEquals(0.25, inner / (double) TRIALS, error);
    for (int quarter : quarters) {
      assertEquals(0.25, quarter / (double) TRIALS, error);
    }
  }

  @Test
  void withoutALawEveryHoleIsWhereItShouldBe() {
    Places exact =
        new Places(Optional.empty(), new LibraryDraws(RandomSource.XO_SHI_RO_256_PP.create(5L)));
    exact.next();
    assertEquals(0, exact.x());
    assertEquals(0, exact.y());
  }
}
