package org.fettlebench.castings.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.Casting;
import org.fettlebench.castings.Feature;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.Freedom;
import org.fettlebench.castings.Placing;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Spot;
import org.fettlebench.castings.Towards;

/** Castings to try, and what the tests of placings ask of them. */
final class TrialCastings {
  /** How closely the least spare is known, and a little. */
  static final double CLOSE = 5e-6;

  static final Freedom ALL = new Freedom(Set.of(Axis.values()), Set.of(Axis.values()), 5);

  private TrialCastings() {}

  static Placing place(Freedom freedom, Feature... features) {
    return new CastingPlacer().place(new Casting("trial", List.of(features), freedom));
  }

  static Freedom shifts(Axis... axes) {
    return new Freedom(Set.of(axes), Set.of(), 1);
  }

  static FlatFace flat(Towards towards, double finished, double cut, Spot... rough) {
    return new FlatFace(towards.word(), towards, finished, cut, List.of(rough), 0);
  }

  static RoundFace bore(String name, double x, double y, double size, Spot centre, double d) {
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

  static List<Long> seeds() {
    return new Random(20).longs(8).boxed().toList();
  }

  /** A rough part made at random: five faces and two cores, nothing parallel to anything. */
  static Casting random(Random random, Freedom freedom) {
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

  /** The same with a long bore across it and a boss on it, so that tangents crowd. */
  static Casting crowded(Random random, Freedom freedom) {
    List<Feature> features = new ArrayList<>(random(random, freedom).features());
    features.add(
        new RoundFace(
            "across",
            RoundFace.Kind.BORE,
            Axis.Y,
            new Spot(15, 0, 12),
            10,
            0.2,
            List.of(
                new RoundFace.Rough(new Spot(15 + random.nextGaussian() / 3, 0, 12), 7),
                new RoundFace.Rough(new Spot(15, 30, 12 + random.nextGaussian() / 3), 7)),
            0.1));
    features.add(
        new RoundFace(
            "boss",
            RoundFace.Kind.BOSS,
            Axis.Z,
            new Spot(20, 20, 0),
            10,
            0.2,
            List.of(new RoundFace.Rough(new Spot(20.3, 19.7 + random.nextGaussian() / 3, 26), 13)),
            0.1));
    return new Casting("crowded", features, freedom);
  }

  static double spare(Casting casting, Pose pose) {
    return casting.features().stream()
        .mapToDouble(one -> Skin.of(one).spareMm(pose))
        .min()
        .orElseThrow();
  }

  static Feature moved(Feature feature, Vector3D away) {
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

  static Spot moved(Spot spot, Vector3D away) {
    Vector3D to = Pose.vector(spot).add(away);
    return new Spot(to.getX(), to.getY(), to.getZ());
  }
}
