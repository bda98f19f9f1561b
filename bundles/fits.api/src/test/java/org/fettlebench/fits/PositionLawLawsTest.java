package org.fettlebench.fits;

import static org.fettlebench.fits.Plane.ORIGIN;
import static org.fettlebench.fits.Plane.WIDE;
import static org.fettlebench.fits.Plane.law;
import static org.fettlebench.fits.Plane.points;
import static org.fettlebench.fits.Plane.rectangle;
import static org.fettlebench.fits.Plane.region;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.fettlebench.fits.ErrorLaw.Bounded;
import org.fettlebench.fits.ErrorLaw.Circle;
import org.fettlebench.fits.ErrorLaw.Normal;
import org.fettlebench.fits.SeatAnswer.Region;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;

/** What must hold of every chance, seen otherwise, at its limits and refused. */
class PositionLawLawsTest {
  @Test
  void movedMirroredScaledAndTurnedRoundTheChanceIsTheSame() {
    Random random = new Random(7);
    for (int trial = 0; trial < 60; trial++) {
      double[] c = new double[6];
      for (int i = 0; i < c.length; i++) {
        c[i] = random.nextDouble() - 0.5;
      }
      PositionLaw law =
          trial % 2 == 0
              ? law(0.1, 0.05, new Normal(0.1, 0.2), new Bounded(0.15, 0.05))
              : law(0.1, 0.05, new Normal(0.15, 0.02));
      double chance = law.chanceWithin(region(c), ORIGIN);
      Point moved = new Point(17.3, -4.1);
      double[] there = c.clone();
      double[] mirrored = c.clone();
      double[] swapped = new double[6];
      double[] scaled = new double[6];
      for (int i = 0; i < 6; i += 2) {
        there[i] += 17.3;
        there[i + 1] -= 4.1;
        mirrored[i] = -c[i];
        swapped[i] = c[i + 1];
        swapped[i + 1] = c[i];
        scaled[i] = 25.4 * c[i];
        scaled[i + 1] = 25.4 * c[i + 1];
      }
      List<Point> backwards = new ArrayList<>(points(c));
      Collections.reverse(backwards);
      assertEquals(chance, law.chanceWithin(region(there), moved), 1e-6);
      assertEquals(chance, times(law, -1, 1, false).chanceWithin(region(mirrored), ORIGIN), 1e-6);
      assertEquals(chance, times(law, 1, 1, true).chanceWithin(region(swapped), ORIGIN), 1e-6);
      assertEquals(
          chance, times(law, 25.4, 25.4, false).chanceWithin(region(scaled), ORIGIN), 1e-6);
      assertEquals(
          chance, law.chanceWithin(List.of(new Region(backwards, List.of())), ORIGIN), 1e-12);
    }
  }

  private static PositionLaw times(PositionLaw law, double x, double y, boolean swap) {
    List<PositionLaw.Part> parts =
        law.parts().stream()
            .map(
                part ->
                    new PositionLaw.Part(
                        part.cause(),
                        times(part.law(), Math.abs(x), Math.abs(y), swap),
                        part.source()))
            .toList();
    double offsetX = x * law.offsetXMm();
    double offsetY = y * law.offsetYMm();
    return new PositionLaw(swap ? offsetY : offsetX, swap ? offsetX : offsetY, parts);
  }

  private static ErrorLaw times(ErrorLaw law, double x, double y, boolean swap) {
    if (law instanceof Normal n) {
      return swap
          ? new Normal(n.sigmaYMm(), n.sigmaXMm())
          : new Normal(x * n.sigmaXMm(), y * n.sigmaYMm());
    }
    Bounded b = (Bounded) law;
    return swap
        ? new Bounded(b.halfYMm(), b.halfXMm())
        : new Bounded(x * b.halfXMm(), y * b.halfYMm());
  }

  @Test
  void hugeAndTinyRegionsAndFarAimsAreTakenAsTheyAre() {
    PositionLaw law = law(Normal.round(0.1));

    assertEquals(1, law.chanceWithin(rectangle(-WIDE, -WIDE, WIDE, WIDE), ORIGIN), 1e-12);
    assertEquals(0, law.chanceWithin(rectangle(-1, -1, 1, 1), new Point(WIDE, 0)), 1e-12);
    // Density at the aim times the area.
    double tiny = 1e-8 / (2 * Math.PI * 0.01);
    assertEquals(tiny, law.chanceWithin(rectangle(-5e-5, -5e-5, 5e-5, 5e-5), ORIGIN), tiny * 1e-6);
  }

  @Test
  void whatIsNoLawIsRefusedWithItsFigure() {
    assertThrows(SeatException.class, () -> new Normal(-0.1, 0.1));
    assertThrows(SeatException.class, () -> new Normal(0, 0));
    assertThrows(SeatException.class, () -> new Bounded(Double.NaN, 0.1));
    assertThrows(SeatException.class, () -> new Circle(Double.POSITIVE_INFINITY));
    assertThrows(SeatException.class, () -> law());
    assertThrows(SeatException.class, () -> law(Double.NaN, 0, Normal.round(1)));
    SeatException circles =
        assertThrows(SeatException.class, () -> law(new Circle(1), new Circle(2)));
    assertTrue(circles.getMessage().contains("2 laws in a circle"), circles.getMessage());
    assertThrows(SeatException.class, () -> law(Normal.round(1)).chanceWithinRadius(-1));
    assertThrows(SeatException.class, () -> law(Normal.round(1)).radiusMm(Double.NaN));
    assertEquals(
        "sigma -0.1 mm of an error is outside 0 to 100000.0 mm",
        assertThrows(SeatException.class, () -> new Normal(0.1, -0.1)).getMessage());
  }
}
