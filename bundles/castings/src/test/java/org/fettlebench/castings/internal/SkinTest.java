package org.fettlebench.castings.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Spot;
import org.junit.jupiter.api.Test;

/** A bore is a ring of flats; it learns the one that lies where a rough hole is out of centre. */
class SkinTest {
  private static final Pose AS_DRAWN = Pose.none(Vector3D.ZERO);

  private static Skin bore(RoundFace.Rough... rough) {
    return Skin.of(
        new RoundFace(
            "bore", RoundFace.Kind.BORE, Axis.Y, new Spot(0, 0, 0), 16, 0.5, List.of(rough), 0.1));
  }

  private static RoundFace.Rough at(double x, double z) {
    return new RoundFace.Rough(new Spot(x, 3, z), 13);
  }

  @Test
  void nothingIsLearnedOfAHoleInItsPlace() {
    Skin skin = bore(at(0, 0));
    int before = skin.slopes(AS_DRAWN).size();
    assertFalse(skin.learn(AS_DRAWN));
    assertEquals(before, skin.slopes(AS_DRAWN).size());
  }

  @Test
  void aWayOutOfCentreIsLearnedOnce() {
    Skin skin = bore(at(0.3, 0.1234));
    assertTrue(skin.learn(AS_DRAWN));
    assertFalse(skin.learn(AS_DRAWN));
    int known = bore(at(0, 0)).slopes(AS_DRAWN).size();
    assertEquals(known + 1, skin.slopes(AS_DRAWN).size());
  }

  /** By hand: (16 - 13) / 2 comes off all round, less what the hole is out of centre. */
  @Test
  void whatComesOffIsLeastTowardsTheSideThatIsOut() {
    Skin skin = bore(at(0.3, 0.4), at(0, 0));
    assertEquals(1.0, skin.comesOffMm(AS_DRAWN).get(0), 1e-12);
    assertEquals(1.5, skin.comesOffMm(AS_DRAWN).get(1), 1e-12);
    // 1.0 less the least cut of 0.5 and what may be out, 0.1
    assertEquals(0.4, skin.spareMm(AS_DRAWN), 1e-12);
  }

  @Test
  void oneOfSeveralRoughPlacesIsEnoughToLearn() {
    assertTrue(bore(at(0, 0), at(0.3, 0.1234)).learn(AS_DRAWN));
    assertFalse(bore(at(0, 0), at(0, 0)).learn(AS_DRAWN));
  }
}
