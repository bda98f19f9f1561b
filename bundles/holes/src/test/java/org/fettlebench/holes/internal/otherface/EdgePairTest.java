package org.fettlebench.holes.internal.otherface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.fettlebench.holes.correct.HoleException;
import org.fettlebench.holes.internal.Outline;
import org.fettlebench.holes.otherface.FaceMark.EdgeDistance;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EdgePairTest {
  private static final double EXACT = 1e-12;

  /** An edge in a direction; only its direction, distance and room count. */
  private static EdgeDistance edge(int number, double degrees, double distance, double room) {
    double turn = Math.toRadians(degrees);
    Point start = new Point(3, -7);
    Point end = start.moved(40 * Math.cos(turn), 40 * Math.sin(turn));
    return new EdgeDistance(number, "edge " + number, start, end, start, distance, room);
  }

  private static List<Integer> best(EdgeDistance... edges) {
    return pair(List.of(), edges).stream().map(EdgeDistance::edge).toList();
  }

  private static List<EdgeDistance> pair(List<Integer> chosen, EdgeDistance... edges) {
    Outline face =
        Outline.of(
            "far face",
            org.fettlebench.fits.Outline.of(
                List.of(new Point(0, 0), new Point(9, 0), new Point(9, 9), new Point(0, 9))));
    return new EdgePair(face, List.of(edges)).choose(chosen);
  }

  @ParameterizedTest
  @CsvSource({"0,30", "10,100", "17,-20", "200,20", "45,45", "5,150"})
  void crossingIsTheSineOfTheAngleBetween(double one, double other) {
    assertEquals(
        Math.abs(Math.sin(Math.toRadians(one - other))),
        EdgePair.crossing(edge(1, one, 5, 5), edge(2, other, 5, 5)),
        EXACT);
  }

  /** A quarter of the distance is enough; with half of that the square bears half as well. */
  @Test
  void aSquareBearsOnWhatLiesBesideTheFoot() {
    assertEquals(1, EdgePair.bearing(edge(1, 0, 8, 2)), EXACT);
    assertEquals(1, EdgePair.bearing(edge(1, 0, 8, 7)), EXACT);
    assertEquals(0.5, EdgePair.bearing(edge(1, 0, 8, 1)), EXACT);
    assertEquals(0.25, EdgePair.bearing(edge(1, 0, 8, 0.5)), EXACT);
    assertEquals(1, EdgePair.bearing(edge(1, 0, 0, 0.5)), EXACT);
  }

  @Test
  void squareCrossingAndGoodBearingAreWeighedAgainstEachOther() {
    EdgeDistance level = edge(1, 0, 8, 5);
    EdgeDistance slanting = edge(2, 60, 8, 5);
    // Upright, with half the bearing: 0.5 against the sine of 60 degrees, 0.866.
    assertEquals(List.of(1, 2), best(level, slanting, edge(3, 90, 8, 1)));
    // With 0.9 of it the upright one is the better.
    assertEquals(List.of(1, 3), best(level, slanting, edge(3, 90, 8, 1.8)));
    // The bearing of the first of a pair counts as well as that of the second: 0.4 of it.
    assertEquals(List.of(2, 3), best(edge(1, 0, 8, 0.8), slanting, edge(3, 120, 8, 1.9)));
    // Of pairs that are alike the first is taken.
    assertEquals(List.of(1, 2), best(level, edge(2, 90, 8, 5), edge(3, 90, 8, 5)));
  }

  @Test
  void withoutACrossingNothingCanBeMarked() {
    for (EdgeDistance[] edges :
        List.of(
            new EdgeDistance[] {},
            new EdgeDistance[] {edge(1, 0, 8, 5)},
            new EdgeDistance[] {edge(1, 0, 8, 5), edge(3, 180.9, 8, 5)})) {
      HoleException none = assertThrows(HoleException.class, () -> pair(List.of(), edges));
      assertTrue(none.getMessage().contains("no two edges that cross"), none.getMessage());
    }
    assertEquals(List.of(1, 3), best(edge(1, 0, 8, 5), edge(3, 181.1, 8, 5)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {1.1, 90, 178.9})
  void chosenEdgesMayCrossAtMoreThanADegree(double degrees) {
    List<EdgeDistance> pair =
        pair(List.of(4, 1), edge(1, 0, 8, 5), edge(4, degrees, 8, 5), edge(2, 90, 1, 1));
    assertEquals(List.of(4, 1), pair.stream().map(EdgeDistance::edge).toList());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.9, 180, 179.1})
  void chosenEdgesThatRunAlikeAreRefused(double degrees) {
    HoleException alike =
        assertThrows(
            HoleException.class,
            () -> pair(List.of(1, 4), edge(1, 0, 8, 5), edge(4, degrees, 8, 5)));
    assertTrue(
        alike.getMessage().contains("edges 1 and 4 of the far face are parallel")
            && alike.getMessage().endsWith("choose one across them: 1, 4"),
        alike.getMessage());
  }

  @Test
  void onlyEdgesOfTheFaceCanBeChosen() {
    EdgeDistance[] edges =
        Stream.of(1, 2, 3).map(n -> edge(n, 90 * n, 8, 5)).toArray(EdgeDistance[]::new);
    assertEquals(2, pair(List.of(1, 2), edges).size());
    for (int none : new int[] {0, -1, 5}) {
      HoleException refused =
          assertThrows(HoleException.class, () -> pair(List.of(1, none), edges));
      assertEquals("edge " + none + " is outside 1 to 4", refused.getMessage());
    }
    HoleException hidden = assertThrows(HoleException.class, () -> pair(List.of(1, 4), edges));
    assertTrue(hidden.getMessage().endsWith("those that can: 1, 2, 3"), hidden.getMessage());
    assertThrows(HoleException.class, () -> pair(List.of(1, 2, 3), edges));
  }
}
