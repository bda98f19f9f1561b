package org.fettlebench.castings.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.optim.linear.UnboundedSolutionException;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.Freedom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A round hole of radius 2 about a centre is held by its tangents: the movement goes to the centre,
 * with 2 to spare on all sides.
 */
class MovementTest {
  private static final double CLOSE = 1e-8;
  private static final Vector3D CENTRE = new Vector3D(0.5, -0.3, 0);

  private static Movement flat() {
    return new Movement(new Freedom(Set.of(Axis.X, Axis.Y), Set.of(), 1), Vector3D.ZERO, 0.1, 10);
  }

  private static Skin.Slope tangent(double degrees) {
    double angle = Math.toRadians(degrees);
    Vector3D way = new Vector3D(Math.cos(angle), Math.sin(angle), 0);
    return new Skin.Slope(2 + way.dotProduct(CENTRE), way.negate(), Vector3D.ZERO);
  }

  private static Movement.Best best(List<Skin.Slope> slopes) {
    return flat().best(List.of(new Movement.Wanted(slopes, Optional.empty())));
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 4, 7, 24, 61, 400})
  void anyNumberOfTangentsHoldsTheCentre(int count) {
    List<Skin.Slope> slopes = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      slopes.add(tangent(360.0 * i / count));
    }
    Movement.Best best = best(slopes);
    assertEquals(0, best.step().distance(CENTRE), CLOSE);
    assertEquals(2, best.spareMm(), CLOSE);
  }

  /** Those tried first all lie on one side: alone they would let the part go for ever. */
  @Test
  void tangentsThatHoldNothingAloneAreHelpedByTheOthers() {
    List<Skin.Slope> slopes = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      slopes.add(tangent(i % 15 == 0 ? i / 3.0 : 90 + 180.0 * (i % 15) / 10));
    }
    Movement.Best best = best(slopes);
    assertEquals(2, best.spareMm(), CLOSE);
    assertEquals(2, best.spareMm(slopes), CLOSE);
  }

  @Test
  void whatNothingHoldsIsNotPlaced() {
    List<Skin.Slope> slopes = List.of(tangent(0), tangent(20), tangent(-20));
    assertThrows(UnboundedSolutionException.class, () -> best(slopes));
  }

  /** One face asks 3 of what two have to share: 10 between them, so the other keeps 7. */
  @Test
  void whatIsKeptIsKeptAndTheRestIsAsked() {
    Skin.Slope left = new Skin.Slope(4, Vector3D.PLUS_I, Vector3D.ZERO);
    Skin.Slope right = new Skin.Slope(6, Vector3D.MINUS_I, Vector3D.ZERO);
    Movement along = new Movement(new Freedom(Set.of(Axis.X), Set.of(), 1), Vector3D.ZERO, 0.1, 10);
    Movement.Best best =
        along.best(
            List.of(
                new Movement.Wanted(List.of(left), Optional.of(3.0)),
                new Movement.Wanted(List.of(right), Optional.empty())));
    assertEquals(7, best.spareMm(), CLOSE);
    assertEquals(-1, best.step().getX(), CLOSE);
  }

  /** A lever 10 long that rises 1: turned by what is allowed, 0.05, it still rises 0.5. */
  @ParameterizedTest
  @ValueSource(doubles = {0.05, 0.2})
  void noTurnIsLargerThanTheStepAllows(double most) {
    Skin.Slope up = new Skin.Slope(0, Vector3D.ZERO, new Vector3D(0, 0, 10));
    Skin.Slope down = new Skin.Slope(1, Vector3D.ZERO, Vector3D.ZERO);
    Movement turning =
        new Movement(new Freedom(Set.of(), Set.of(Axis.Z), 5.73), Vector3D.ZERO, most, 10);
    Movement.Best best =
        turning.best(
            List.of(
                new Movement.Wanted(List.of(up), Optional.empty()),
                new Movement.Wanted(List.of(down), Optional.empty())));
    assertEquals(Math.min(most * 10, 1), best.spareMm(), 1e-4);
  }
}
