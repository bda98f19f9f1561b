package org.fettlebench.castings.internal;

import static org.fettlebench.castings.internal.TrialCastings.ALL;
import static org.fettlebench.castings.internal.TrialCastings.CLOSE;
import static org.fettlebench.castings.internal.TrialCastings.flat;
import static org.fettlebench.castings.internal.TrialCastings.place;
import static org.fettlebench.castings.internal.TrialCastings.shifts;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.CastingException;
import org.fettlebench.castings.Feature;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.Freedom;
import org.fettlebench.castings.Placing;
import org.fettlebench.castings.Spot;
import org.fettlebench.castings.Towards;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Flat faces, against closed forms that can be reckoned on paper, shown beside each. */
class FlatPlacingTest {
  @Test
  void aPlateIsSharedEquallyBetweenItsFaces() {
    // 28 mm rough, 25 mm finished, 0.5 mm to clean each: 3 / 2 - 0.5 = 1 spare, datum 1.5 in.
    Placing placing =
        place(
            shifts(Axis.Z),
            flat(Towards.DOWN, 0, 0.5, new Spot(0, 0, -1.8)),
            flat(Towards.UP, 25, 0.5, new Spot(0, 0, 26.2)));
    assertEquals(1, placing.spareMm(), CLOSE);
    assertEquals(-0.3, placing.shift().zMm(), CLOSE);
    assertEquals(1.5, placing.features().get(0).leastMm(), CLOSE);
    assertTrue(placing.features().stream().allMatch(Placing.Coming::governs));
    assertTrue(placing.cleansUp());
    assertEquals(List.of(), placing.givings());
  }

  @Test
  void cutsAndUncertaintyAreTakenOffBeforeSharing() {
    // 3 mm to share: 1 + 0.2 needed below, 0.5 above: spare (3 - 1.7) / 2 = 0.65.
    FlatFace foot = new FlatFace("foot", Towards.DOWN, 0, 1, List.of(new Spot(0, 0, -1.8)), 0.2);
    Placing placing = place(shifts(Axis.Z), foot, flat(Towards.UP, 25, 0.5, new Spot(0, 0, 26.2)));
    assertEquals(0.65, placing.spareMm(), CLOSE);
    assertEquals(1.85, placing.features().get(0).leastMm(), CLOSE);
    assertEquals(1.15, placing.features().get(1).leastMm(), CLOSE);
  }

  @Test
  void aPlateTooThinSaysWhichDimensionGivesAndHowMuch() {
    // 25.4 mm rough, 25 mm finished, 0.5 each: 0.2 - 0.5 = -0.3; one face alone must give 0.6.
    Placing placing =
        place(
            shifts(Axis.Z),
            flat(Towards.DOWN, 0, 0.5, new Spot(0, 0, 0)),
            flat(Towards.UP, 25, 0.5, new Spot(0, 0, 25.4)));
    assertFalse(placing.cleansUp());
    assertEquals(-0.3, placing.spareMm(), CLOSE);
    assertEquals(2, placing.givings().size());
    for (Placing.Giving giving : placing.givings()) {
      assertEquals(0.6, giving.byMm(), 1e-5);
      assertTrue(giving.spareMm() >= 0);
    }
    double top =
        placing.givings().stream()
            .filter(g -> g.feature().name().equals("up"))
            .mapToDouble(Placing.Giving::finishedMm)
            .findFirst()
            .orElseThrow();
    assertEquals(24.4, top, 1e-5);
  }

  @Test
  void aCastingThatJustCleansUpNeedsNothingToGive() {
    // 26 mm rough, 25 mm finished, 0.5 and a hair below what is known to clean each.
    Placing placing =
        place(
            shifts(Axis.Z),
            flat(Towards.DOWN, 0, 0.5, new Spot(0, 0, 0)),
            flat(Towards.UP, 25, 0.5, new Spot(0, 0, 26 - 1e-6)));
    assertTrue(placing.spareMm() < 0);
    assertTrue(placing.cleansUp());
    assertEquals(List.of(), placing.givings());
  }

  @Test
  void aWedgeIsTurnedSoThatBothFacesShareIt() {
    // The rough top rises by 2 in 100; without turning 1 less its middle, turned it is shared out.
    Spot[] foot = {new Spot(0, 0, 0), new Spot(100, 0, 0)};
    Spot[] top = {new Spot(0, 0, 22), new Spot(100, 0, 24)};
    FlatFace down = flat(Towards.DOWN, 0, 0, foot);
    FlatFace up = flat(Towards.UP, 20, 0, top);
    // Straight: the thin end has 22 - 20 = 2 to share, 1 each.
    assertEquals(1, place(shifts(Axis.Z), down, up).spareMm(), CLOSE);
    // Turned, the thin end still has 2 square to the part, less what the turn of 0.01 takes.
    Placing turned = place(new Freedom(Set.of(Axis.Z), Set.of(Axis.Y), 5), down, up);
    assertTrue(turned.spareMm() >= 1, "a freedom more cannot make it worse");
    assertEquals(1, turned.spareMm(), 2e-3);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-4, -1, 0.25, 3})
  void aBlockThatLiesAskewIsTurnedStraight(double degrees) {
    Rotation askew =
        new Rotation(
            new Vector3D(1, 2, -1).normalize(),
            Math.toRadians(degrees),
            RotationConvention.VECTOR_OPERATOR);
    // A block of 60 x 40 x 25 with 2 mm all round, lying askew: spare is 2 again, to the last.
    List<Feature> faces = new ArrayList<>();
    double[] least = {0, 0, 0};
    double[] most = {60, 40, 25};
    for (Towards towards : Towards.values()) {
      List<Spot> spots = new ArrayList<>();
      int a = towards.axis().ordinal();
      for (int corner = 0; corner < 4; corner++) {
        double[] at = new double[3];
        at[a] = towards.sign() > 0 ? most[a] + 2 : least[a] - 2;
        at[(a + 1) % 3] = (corner & 1) == 0 ? 3 : most[(a + 1) % 3] - 3;
        at[(a + 2) % 3] = (corner & 2) == 0 ? 3 : most[(a + 2) % 3] - 3;
        Vector3D lies = askew.applyTo(new Vector3D(at)).add(new Vector3D(7, -3, 11));
        spots.add(new Spot(lies.getX(), lies.getY(), lies.getZ()));
      }
      double finished = towards.sign() > 0 ? most[a] : least[a];
      faces.add(new FlatFace(towards.word(), towards, finished, 0, spots, 0));
    }
    Placing placing = place(ALL, faces.toArray(Feature[]::new));
    assertEquals(2, placing.spareMm(), CLOSE);
    assertEquals(7, placing.shift().xMm(), 1e-4);
    assertEquals(-3, placing.shift().yMm(), 1e-4);
    assertEquals(11, placing.shift().zMm(), 1e-4);
    double turn = Math.toDegrees(askew.getAngle());
    Spot turned = placing.turnDegrees();
    assertEquals(turn, Math.hypot(Math.hypot(turned.xMm(), turned.yMm()), turned.zMm()), 1e-4);
  }

  @Test
  void whatDoesNotGovernIsStillSharedWell() {
    // x governs with 0.5; z has 6 to share and is not left where the first answer put it.
    Placing placing =
        place(
            shifts(Axis.X, Axis.Z),
            flat(Towards.LEFT, 0, 0, new Spot(0, 0, 0)),
            flat(Towards.RIGHT, 10, 0, new Spot(11, 0, 0)),
            flat(Towards.DOWN, 0, 0, new Spot(0, 0, 0)),
            flat(Towards.UP, 20, 0, new Spot(0, 0, 26)));
    assertEquals(0.5, placing.spareMm(), CLOSE);
    assertEquals(
        List.of("left", "right"),
        placing.features().stream()
            .filter(Placing.Coming::governs)
            .map(one -> one.feature().name())
            .toList());
    assertEquals(3, placing.features().get(2).spareMm(), CLOSE);
    assertEquals(3, placing.features().get(3).spareMm(), CLOSE);
    assertEquals("left", placing.settingOut().get(0).from().name());
    assertEquals(Axis.Z, placing.settingOut().get(1).axis());
  }

  @Test
  void aPartThatNothingHoldsIsRefused() {
    FlatFace up = flat(Towards.UP, 20, 0, new Spot(0, 0, 26));
    assertEquals(
        "along z only \"up\" holds the part; give the face opposite, or leave z out of what may be"
            + " shifted",
        assertThrows(CastingException.class, () -> place(shifts(Axis.Z), up)).getMessage());
    assertTrue(
        assertThrows(CastingException.class, () -> place(shifts(Axis.X, Axis.Z), up))
            .getMessage()
            .startsWith("along x no face holds the part"));
  }
}
