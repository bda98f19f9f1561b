package org.fettlebench.castings.internal;

import static org.fettlebench.castings.internal.TrialCastings.ALL;
import static org.fettlebench.castings.internal.TrialCastings.CLOSE;
import static org.fettlebench.castings.internal.TrialCastings.random;
import static org.fettlebench.castings.internal.TrialCastings.spare;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.Casting;
import org.fettlebench.castings.Freedom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Against searches that know nothing of linear programmes. */
class PlacingFuzzTest {
  @ParameterizedTest
  @MethodSource("org.fettlebench.castings.internal.TrialCastings#seeds")
  void noPoseFoundByTryingIsBetter(long seed) {
    Random random = new Random(seed);
    Casting casting = random(random, ALL);
    Placer.Placed placed = new Placer(casting).place();
    Pose best = placed.pose();
    assertEquals(placed.spareMm(), spare(casting, best), CLOSE);
    double found = Double.NEGATIVE_INFINITY;
    // Wide tries first, then ever closer ones about the best of them and about the answer.
    for (int i = 0; i < 3_000; i++) {
      double width = Math.pow(10, -5 * random.nextDouble());
      Vector3D step = gaussian(random).scalarMultiply(2 * width);
      Vector3D small = gaussian(random).scalarMultiply(0.05 * width);
      Pose tried = best.moved(step, small);
      if (isAllowed(tried)) {
        found = Math.max(found, spare(casting, tried));
      }
    }
    assertTrue(found <= placed.spareMm() + CLOSE, found + " found, " + placed.spareMm());
  }

  private static boolean isAllowed(Pose pose) {
    return pose.turned().getNormInf() <= Math.toRadians(ALL.mostTurnDegrees());
  }

  private static Vector3D gaussian(Random random) {
    return new Vector3D(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
  }

  @ParameterizedTest
  @MethodSource("org.fettlebench.castings.internal.TrialCastings#seeds")
  void aGridOverShiftAndTurnFindsTheSameInThePlane(long seed) {
    Freedom plane = new Freedom(Set.of(Axis.X, Axis.Y), Set.of(Axis.Z), 5);
    Casting casting = random(new Random(seed), plane);
    Placer.Placed placed = new Placer(casting).place();
    Pose start = Pose.none(placed.pose().centre());
    Vector3D middle = Vector3D.ZERO;
    double turn = 0;
    double best = spare(casting, start);
    for (double width = 2; width > 1e-7; width *= 0.7) {
      Vector3D here = middle;
      double now = turn;
      for (int i = -3; i <= 3; i++) {
        for (int j = -3; j <= 3; j++) {
          for (int k = -3; k <= 3; k++) {
            Vector3D step = here.add(new Vector3D(i * width / 3, j * width / 3, 0));
            double angle = now + k * width / 40;
            double spare = spare(casting, start.moved(step, new Vector3D(0, 0, angle)));
            if (spare > best) {
              best = spare;
              middle = step;
              turn = angle;
            }
          }
        }
      }
    }
    // The search may stick on a ridge, never above the answer.
    assertEquals(best, placed.spareMm(), 2e-2);
    assertTrue(best <= placed.spareMm() + CLOSE);
  }
}
