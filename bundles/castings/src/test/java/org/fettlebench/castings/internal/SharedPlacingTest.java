package org.fettlebench.castings.internal;

import static org.fettlebench.castings.internal.TrialCastings.flat;
import static org.fettlebench.castings.internal.TrialCastings.place;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.Feature;
import org.fettlebench.castings.Freedom;
import org.fettlebench.castings.Placing;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Spot;
import org.fettlebench.castings.Towards;
import org.junit.jupiter.api.Test;

/** Castings whose rest is hard to share out, since tangents that are kept nearly agree. */
class SharedPlacingTest {
  /** A block with a cored bearing and a spigot, each rough face leaning a little. */
  private static final List<Feature> BLOCK =
      List.of(
          flat(
              Towards.LEFT,
              0,
              0.6,
              new Spot(-1.6, 2.34, 2.07),
              new Spot(-1.55, 37.94, 2.32),
              new Spot(-1.41, 2.04, 23.57),
              new Spot(-1.35, 38.03, 24.57)),
          flat(
              Towards.RIGHT,
              60,
              0.6,
              new Spot(61.98, 1.56, 1.73),
              new Spot(62.07, 37.17, 1.98),
              new Spot(61.89, 1.27, 23.23),
              new Spot(62.53, 37.25, 24.23)),
          flat(
              Towards.NEAR,
              0,
              0.6,
              new Spot(2.98, -1.27, 1.99),
              new Spot(56.37, -2.23, 1.46),
              new Spot(3.09, -1.96, 23.49),
              new Spot(57.09, -2.49, 23.7)),
          flat(
              Towards.FAR,
              40,
              0.6,
              new Spot(3.52, 42.19, 2.6),
              new Spot(56.91, 41.29, 2.06),
              new Spot(3.62, 41.62, 24.09),
              new Spot(57.62, 41.04, 24.31)),
          flat(
              Towards.DOWN,
              0,
              0.6,
              new Spot(3.02, 3.13, -1.33),
              new Spot(56.41, 2.08, -1.71),
              new Spot(3.44, 37.53, -1.24),
              new Spot(57.44, 37.67, -1.33)),
          flat(
              Towards.UP,
              25,
              0.6,
              new Spot(3.16, 2.73, 27.02),
              new Spot(56.56, 1.68, 26.7),
              new Spot(3.59, 37.12, 27.81),
              new Spot(57.59, 37.27, 27.28)),
          new RoundFace(
              "bearing",
              RoundFace.Kind.BORE,
              Axis.Y,
              new Spot(30, 0, 12),
              16,
              0.6,
              List.of(
                  new RoundFace.Rough(new Spot(30.6, 0, 12.9), 13.1),
                  new RoundFace.Rough(new Spot(30.1, 40, 12.3), 13.4)),
              0),
          new RoundFace(
              "spigot",
              RoundFace.Kind.BOSS,
              Axis.Z,
              new Spot(20, 20, 0),
              10,
              0.6,
              List.of(new RoundFace.Rough(new Spot(20.9, 19.7, 26), 13.5)),
              0));

  @Test
  void aPlacingWithCrowdedTangentsIsSharedOutAndNotGivenUp() {
    Freedom freedom = new Freedom(Set.of(Axis.values()), Set.of(Axis.Y, Axis.Z), 3);
    Placing placing = place(freedom, BLOCK.toArray(new Feature[0]));
    // Sequential quadratic programming from 30 starts, SciPy 1.17.1, method SLSQP, with the turn as
    // one vector without x: 0.434305. Turns one after the other roll by a thousandth of a degree.
    assertEquals(0.4343, placing.spareMm(), 1e-4);
  }
}
