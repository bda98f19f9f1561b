package org.fettlebench.castings.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.Casting;
import org.fettlebench.castings.Feature;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.Freedom;
import org.fettlebench.castings.Placing;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Spot;
import org.fettlebench.castings.Towards;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A casting seen otherwise leaves the same to come off. The number shown is the seed. */
class CastingLawsTest {
  private static final double CLOSE = 5e-6;
  private static final Freedom ALL = new Freedom(Set.of(Axis.values()), Set.of(Axis.values()), 5);

  static IntStream seeds() {
    return IntStream.range(0, 8);
  }

  /** A block of 40 by 30 by 20 with a bore along z, its rough faces lying anyhow. */
  private static Casting any(int seed) {
    Random random = new Random(seed);
    double[] size = {40, 30, 20};
    List<Feature> features = new ArrayList<>();
    for (Towards towards : Towards.values()) {
      double finished = towards.sign() > 0 ? size[towards.axis().ordinal()] : 0;
      List<Spot> spots = new ArrayList<>();
      for (int i = 0; i < 4; i++) {
        double[] at = {
          size[0] * random.nextDouble(),
          size[1] * random.nextDouble(),
          size[2] * random.nextDouble()
        };
        at[towards.axis().ordinal()] =
            finished + towards.sign() * (1.5 + 0.5 * random.nextGaussian());
        spots.add(new Spot(at[0], at[1], at[2]));
      }
      features.add(
          new FlatFace(towards.word(), towards, finished, random.nextDouble() / 2, spots, 0.05));
    }
    features.add(
        new RoundFace(
            "bore",
            RoundFace.Kind.BORE,
            Axis.Z,
            new Spot(12, 13, 0),
            12,
            0.3,
            List.of(
                new RoundFace.Rough(new Spot(12.3, 13 + 0.2 * random.nextGaussian(), 1), 8.5),
                new RoundFace.Rough(new Spot(12, 13 + 0.2 * random.nextGaussian(), 19), 8.5)),
            0.05));
    return new Casting("any", features, ALL);
  }

  /** How a casting is seen otherwise: places, axes and lengths. */
  private record Seen(UnaryOperator<Spot> spot, UnaryOperator<Axis> axis, double scale) {
    Casting of(Casting casting) {
      return new Casting("seen", casting.features().stream().map(this::feature).toList(), ALL);
    }

    private Feature feature(Feature feature) {
      if (feature instanceof FlatFace flat) {
        return flat(flat);
      }
      RoundFace round = (RoundFace) feature;
      return new RoundFace(
          round.name(),
          round.kind(),
          axis.apply(round.along()),
          spot.apply(round.finishedCentre()),
          round.finishedDiameterMm() * scale,
          round.leastCutMm() * scale,
          round.rough().stream()
              .map(
                  rough ->
                      new RoundFace.Rough(spot.apply(rough.centre()), rough.diameterMm() * scale))
              .toList(),
          round.uncertaintyMm() * scale);
    }

    private FlatFace flat(FlatFace flat) {
      Axis along = axis.apply(flat.towards().axis());
      Spot zero = spot.apply(new Spot(0, 0, 0));
      Spot one = spot.apply(on(flat.towards().axis(), 1));
      int sign =
          flat.towards().sign() * (int) Math.signum(one.alongMm(along) - zero.alongMm(along));
      Towards towards =
          Arrays.stream(Towards.values())
              .filter(each -> each.axis() == along && each.sign() == sign)
              .findFirst()
              .orElseThrow();
      return new FlatFace(
          flat.name(),
          towards,
          spot.apply(on(flat.towards().axis(), flat.finishedMm())).alongMm(along),
          flat.leastCutMm() * scale,
          flat.rough().stream().map(spot).toList(),
          flat.uncertaintyMm() * scale);
    }
  }

  private static Spot on(Axis axis, double mm) {
    return switch (axis) {
      case X -> new Spot(mm, 0, 0);
      case Y -> new Spot(0, mm, 0);
      case Z -> new Spot(0, 0, mm);
    };
  }

  private static void same(Casting casting, Seen seen) {
    Placing placing = new CastingPlacer().place(casting);
    Placing other = new CastingPlacer().place(seen.of(casting));
    double close = CLOSE * seen.scale();
    assertEquals(placing.spareMm() * seen.scale(), other.spareMm(), close);
    for (int i = 0; i < placing.features().size(); i++) {
      Placing.Coming one = placing.features().get(i);
      Placing.Coming two = other.features().get(i);
      assertEquals(one.feature().name(), two.feature().name());
      assertEquals(one.governs(), two.governs(), one.feature().name());
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void mirrored(int seed) {
    same(any(seed), new Seen(at -> new Spot(-at.xMm(), at.yMm(), at.zMm()), axis -> axis, 1));
  }

  /** Rolled about a corner: x becomes y, y becomes z, z becomes x. */
  @ParameterizedTest
  @MethodSource("seeds")
  void rolledOver(int seed) {
    UnaryOperator<Axis> next = axis -> Axis.values()[(axis.ordinal() + 1) % 3];
    same(any(seed), new Seen(at -> new Spot(at.zMm(), at.xMm(), at.yMm()), next, 1));
  }

  /** Half a turn about the upright axis. */
  @ParameterizedTest
  @MethodSource("seeds")
  void turnedRound(int seed) {
    same(any(seed), new Seen(at -> new Spot(-at.xMm(), -at.yMm(), at.zMm()), axis -> axis, 1));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void threeTimesAsLarge(int seed) {
    same(
        any(seed),
        new Seen(at -> new Spot(3 * at.xMm(), 3 * at.yMm(), 3 * at.zMm()), axis -> axis, 3));
  }
}
