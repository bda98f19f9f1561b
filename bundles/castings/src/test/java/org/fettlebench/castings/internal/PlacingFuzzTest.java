package org.fettlebench.castings.internal;

import static org.fettlebench.castings.internal.TrialCastings.ALL;
import static org.fettlebench.castings.internal.TrialCastings.CLOSE;
import static org.fettlebench.castings.internal.TrialCastings.crowded;
import static org.fettlebench.castings.internal.TrialCastings.random;
import static org.fettlebench.castings.internal.TrialCastings.spare;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.Casting;
import org.fettlebench.castings.Freedom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

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

  /** Seeds whose programmes rounding once left without an answer, or with one too low. */
  @ParameterizedTest
  @ValueSource(longs = {205, 362, 618, 950, 1058, 1710})
  void aCrowdedCastingIsPlacedAndNoTryIsBetter(long seed) {
    Random random = new Random(seed);
    List<Set<Axis>> turns =
        List.of(Set.of(Axis.Y), Set.of(Axis.Y, Axis.Z), Set.of(Axis.values()), Set.of());
    Casting casting =
        crowded(random, new Freedom(Set.of(Axis.values()), turns.get((int) (seed % 4)), 3));
    Placer.Placed placed = new Placer(casting).place();
    assertEquals(placed.spareMm(), spare(casting, placed.pose()), CLOSE);
    for (int i = 0; i < 1_000; i++) {
      Vector3D step = gaussian(random).scalarMultiply(Math.pow(10, -5 * random.nextDouble()));
      double tried = spare(casting, placed.pose().moved(step, Vector3D.ZERO));
      assertTrue(tried <= placed.spareMm() + CLOSE, tried + " found, " + placed.spareMm());
    }
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
