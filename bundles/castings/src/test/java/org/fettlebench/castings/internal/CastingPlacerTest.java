package org.fettlebench.castings.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.Casting;
import org.fettlebench.castings.CastingException;
import org.fettlebench.castings.Feature;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.Freedom;
import org.fettlebench.castings.Placing;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Spot;
import org.fettlebench.castings.Towards;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Against closed forms that can be reckoned on paper (shown beside each), and against a search that
 * knows nothing of linear programmes.
 */
class CastingPlacerTest {
  private static final double CLOSE = 5e-6;
  private static final Freedom ALL = new Freedom(Set.of(Axis.values()), Set.of(Axis.values()), 5);

  private static Placing place(Freedom freedom, Feature... features) {
    return new CastingPlacer().place(new Casting("trial", List.of(features), freedom));
  }

  private static Freedom shifts(Axis... axes) {
    return new Freedom(Set.of(axes), Set.of(), 1);
  }

  private static FlatFace flat(Towards towards, double finished, double cut, Spot... rough) {
    return new FlatFace(towards.word(), towards, finished, cut, List.of(rough), 0);
  }

  private static RoundFace bore(
      String name, double x, double y, double size, Spot centre, double d) {
    return new RoundFace(
        name,
        RoundFace.Kind.BORE,
        Axis.Z,
        new Spot(x, y, 0),
        size,
        0,
        List.of(new RoundFace.Rough(centre, d)),
        0);
  }

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
  void aBoreIsPutInTheMiddleOfItsCore() {
    Placing placing =
        place(shifts(Axis.X, Axis.Y), bore("bore", 0, 0, 16, new Spot(3.1, -2.7, 5), 13));
    assertEquals(1.5, placing.spareMm(), CLOSE);
    assertEquals(3.1, placing.shift().xMm(), CLOSE);
    assertEquals(-2.7, placing.shift().yMm(), CLOSE);
  }

  @Test
  void coresAtAWrongPitchShareTheError() {
    // Pitch 40 on the drawing, 40.4 as cast: each is 0.2 out, 1.5 - 0.2 = 1.3.
    Placing placing =
        place(
            shifts(Axis.X, Axis.Y),
            bore("left", 0, 0, 16, new Spot(0, 0, 0), 13),
            bore("right", 40, 0, 16, new Spot(40.4, 0, 0), 13));
    assertEquals(1.3, placing.spareMm(), CLOSE);
    assertEquals(0.2, placing.shift().xMm(), CLOSE);
    assertEquals(0, placing.shift().yMm(), CLOSE);
  }

  @Test
  void threeCoresAreAsFarOutAsTheCircleThatHoldsTheirErrors() {
    // Errors at the corners of a triangle of equal sides 1: circle of radius 1 / sqrt 3.
    double height = Math.sqrt(3) / 2;
    Placing placing =
        place(
            shifts(Axis.X, Axis.Y),
            bore("a", 0, 0, 16, new Spot(0, 0, 0), 12),
            bore("b", 50, 0, 16, new Spot(51, 0, 0), 12),
            bore("c", 0, 50, 16, new Spot(0.5, 50 + height, 0), 12));
    assertEquals(2 - 1 / Math.sqrt(3), placing.spareMm(), CLOSE);
    assertTrue(placing.features().stream().allMatch(Placing.Coming::governs));
  }

  @Test
  void aBossIsTurnedSmallerAndABoreCutLarger() {
    RoundFace boss =
        new RoundFace(
            "boss",
            RoundFace.Kind.BOSS,
            Axis.Z,
            new Spot(0, 0, 0),
            20,
            0.25,
            List.of(new RoundFace.Rough(new Spot(1, 1, 0), 22)),
            0);
    // Centres 0.6 apart and (22 - 20)/2 - 0.25 = 0.75, (16 - 14)/2 = 1: shared 1.75 - 0.6 over 2.
    Placing placing =
        place(shifts(Axis.X, Axis.Y), boss, bore("bore", 0, 0, 16, new Spot(1.6, 1, 0), 14));
    assertEquals(0.575, placing.spareMm(), CLOSE);
    assertEquals(1.175, placing.shift().xMm(), CLOSE);
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

  static List<Long> seeds() {
    return new Random(20).longs(8).boxed().toList();
  }

  /** A rough part made at random: five faces and two cores, nothing parallel to anything. */
  private static Casting random(Random random, Freedom freedom) {
    List<Feature> features = new ArrayList<>();
    for (Towards towards : Towards.values()) {
      List<Spot> spots = new ArrayList<>();
      for (int i = 0; i < 3; i++) {
        double out = towards.sign() * (towards.sign() > 0 ? 32 : 2) + random.nextGaussian();
        double one = random.nextDouble() * 30;
        double two = random.nextDouble() * 30;
        spots.add(
            switch (towards.axis()) {
              case X -> new Spot(out, one, two);
              case Y -> new Spot(one, out, two);
              case Z -> new Spot(one, two, out);
            });
      }
      double finished = towards.sign() > 0 ? 30 : 0;
      features.add(
          new FlatFace(towards.word(), towards, finished, random.nextDouble() / 2, spots, 0.05));
    }
    features.add(
        bore("a", 8, 8, 9, new Spot(8 + random.nextGaussian() / 3, 8, random.nextDouble() * 9), 6));
    features.add(bore("b", 22, 22, 9, new Spot(22, 22 + random.nextGaussian() / 3, 5), 6));
    return new Casting("random", features, freedom);
  }

  private static double spare(Casting casting, Pose pose) {
    return casting.features().stream()
        .mapToDouble(one -> Skin.of(one).spareMm(pose))
        .min()
        .orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("seeds")
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
  @MethodSource("seeds")
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

  @ParameterizedTest
  @MethodSource("seeds")
  void theOrderOfFacesAndTheRoughDatumDoNotMatter(long seed) {
    Casting casting = random(new Random(seed), ALL);
    Placing placing = new CastingPlacer().place(casting);
    List<Feature> mixed = new ArrayList<>(casting.features());
    Collections.shuffle(mixed, new Random(seed));
    Placing other = new CastingPlacer().place(new Casting("mixed", mixed, ALL));
    assertEquals(placing.spareMm(), other.spareMm(), CLOSE);
    Vector3D away = new Vector3D(100, -40, 7);
    List<Feature> moved = casting.features().stream().map(one -> moved(one, away)).toList();
    Placing shifted = new CastingPlacer().place(new Casting("moved", moved, ALL));
    assertEquals(placing.spareMm(), shifted.spareMm(), CLOSE);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void flatFacesAndNoTurnsHaveOnePlacingToTheLastFace(long seed) {
    Freedom straight = shifts(Axis.values());
    List<Feature> flat =
        random(new Random(seed), straight).features().stream()
            .filter(FlatFace.class::isInstance)
            .toList();
    Casting casting = new Casting("flat", flat, straight);
    Placing placing = new CastingPlacer().place(casting);
    List<Feature> mixed = new ArrayList<>(casting.features());
    Collections.shuffle(mixed, new Random(seed));
    Vector3D away = new Vector3D(100, -40, 7);
    List<Feature> moved = mixed.stream().map(one -> moved(one, away)).toList();
    Placing other = new CastingPlacer().place(new Casting("moved", moved, straight));
    assertEquals(placing.shift().xMm() + 100, other.shift().xMm(), 1e-3);
    assertEquals(placing.shift().yMm() - 40, other.shift().yMm(), 1e-3);
    assertEquals(placing.shift().zMm() + 7, other.shift().zMm(), 1e-3);
  }

  private static Feature moved(Feature feature, Vector3D away) {
    if (feature instanceof FlatFace face) {
      return new FlatFace(
          face.name(),
          face.towards(),
          face.finishedMm(),
          face.leastCutMm(),
          face.rough().stream().map(spot -> moved(spot, away)).toList(),
          face.uncertaintyMm());
    }
    RoundFace round = (RoundFace) feature;
    return new RoundFace(
        round.name(),
        round.kind(),
        round.along(),
        round.finishedCentre(),
        round.finishedDiameterMm(),
        round.leastCutMm(),
        round.rough().stream()
            .map(one -> new RoundFace.Rough(moved(one.centre(), away), one.diameterMm()))
            .toList(),
        round.uncertaintyMm());
  }

  private static Spot moved(Spot spot, Vector3D away) {
    Vector3D to = Pose.vector(spot).add(away);
    return new Spot(to.getX(), to.getY(), to.getZ());
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
