package org.fettlebench.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.Casting;
import org.fettlebench.castings.Feature;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.Freedom;
import org.fettlebench.castings.Placing;
import org.fettlebench.castings.RoundFace;
import org.fettlebench.castings.Spot;
import org.fettlebench.castings.Towards;
import org.fettlebench.castings.internal.CastingPlacer;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** A block of six rough faces and some bores, placed with shifts and turns about all axes. */
@State(Scope.Benchmark)
public class CastingsBenchmark {
  private static final double SIZE_MM = 40;
  private static final int IN_A_ROW = 6;

  private final CastingPlacer castings = new CastingPlacer();
  private final Casting shifted = block(1, Set.of());
  private final Casting turned = block(1, Set.of(Axis.values()));
  private final Casting many = block(30, Set.of(Axis.values()));

  private static Casting block(int bores, Set<Axis> turns) {
    List<Feature> features = new ArrayList<>();
    for (Towards towards : Towards.values()) {
      double finished = towards.sign() > 0 ? SIZE_MM : 0;
      List<Spot> spots = new ArrayList<>();
      for (int i = 0; i < 4; i++) {
        double out = finished + towards.sign() * (1.5 + 0.1 * ((i * 7 + towards.ordinal()) % 5));
        double[] at = {i < 2 ? 3 : 37, i % 2 == 0 ? 4 : 36, i % 3 == 0 ? 5 : 35};
        at[towards.axis().ordinal()] = out;
        spots.add(new Spot(at[0], at[1], at[2]));
      }
      features.add(new FlatFace(towards.word(), towards, finished, 0.5, spots, 0.1));
    }
    for (int i = 0; i < bores; i++) {
      double x = 5 + 6.0 * (i % IN_A_ROW);
      double z = 5 + 6.0 * (i / IN_A_ROW);
      Spot core = new Spot(x + 0.02 * (i % 5), 20, z - 0.03 * (i % 3));
      features.add(
          new RoundFace(
              "bore " + i,
              RoundFace.Kind.BORE,
              Axis.Y,
              new Spot(x, 0, z),
              5,
              0.3,
              List.of(new RoundFace.Rough(core, 3)),
              0.05));
    }
    return new Casting("block", features, new Freedom(Set.of(Axis.values()), turns, 2));
  }

  /** Seven faces, shifted only: what follows every letter typed. */
  @Benchmark
  public Placing shifted() {
    return castings.place(shifted);
  }

  /** Seven faces, turned about three axes. */
  @Benchmark
  public Placing turned() {
    return castings.place(turned);
  }

  /** Thirty-six faces, turned about three axes. */
  @Benchmark
  public Placing many() {
    return castings.place(many);
  }
}
