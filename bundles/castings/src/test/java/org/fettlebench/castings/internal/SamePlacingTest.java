package org.fettlebench.castings.internal;

import static org.fettlebench.castings.internal.TrialCastings.ALL;
import static org.fettlebench.castings.internal.TrialCastings.CLOSE;
import static org.fettlebench.castings.internal.TrialCastings.moved;
import static org.fettlebench.castings.internal.TrialCastings.random;
import static org.fettlebench.castings.internal.TrialCastings.shifts;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.Casting;
import org.fettlebench.castings.Feature;
import org.fettlebench.castings.FlatFace;
import org.fettlebench.castings.Freedom;
import org.fettlebench.castings.Placing;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What may not matter does not: the order of faces, where the rough datum lies. */
class SamePlacingTest {
  @ParameterizedTest
  @MethodSource("org.fettlebench.castings.internal.TrialCastings#seeds")
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
  @MethodSource("org.fettlebench.castings.internal.TrialCastings#seeds")
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
}
