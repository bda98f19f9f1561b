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

  /** By hand: 3-4-5 triangles over twice the room, or over the stock of 40 mm. */
  @Test
  void aSlipLeansTheLineOverWhatTheSquareBearsOn() {
    assertEquals(5.0 / 3, EdgePair.slips(edge(1, 0, 8, 3)), EXACT);
    assertEquals(5.0 / 4, EdgePair.slips(edge(1, 0, 6, 4)), EXACT);
    assertEquals(5.0 / 4, EdgePair.slips(edge(1, 0, 30, 20)), EXACT);
    assertEquals(5.0 / 4, EdgePair.slips(edge(1, 0, 30, 500)), EXACT);
    assertEquals(1, EdgePair.slips(edge(1, 0, 0, 0.5)), EXACT);
  }

  @Test
  void squareCrossingBearingAndDistanceAreWeighedAgainstEachOther() {
    EdgeDistance level = edge(1, 0, 8, 5);
    EdgeDistance slanting = edge(2, 60, 8, 5);
    // By hand, squares of the slips: 1.64 each and by the sine 2.09; upright with 2 to bear on
    // 4.32.
    assertEquals(List.of(1, 2), best(level, slanting, edge(3, 90, 8, 1)));
    // With 8 to bear on it is 1.91.
    assertEquals(List.of(1, 3), best(level, slanting, edge(3, 90, 8, 4)));
    // The first of a pair counts as the second does.
    assertEquals(List.of(2, 3), best(edge(1, 0, 8, 0.8), slanting, edge(3, 120, 8, 1.9)));
    // Of pairs that are alike the first is taken.
    assertEquals(List.of(1, 2), best(level, edge(2, 90, 8, 5), edge(3, 90, 8, 5)));
    // A near edge that crosses at 80 degrees (1.48) goes before a far one that is square (2.08).
    assertEquals(List.of(1, 3), best(edge(1, 0, 6, 12), edge(2, 90, 60, 60), edge(3, 80, 6, 12)));
  }

  /** Squared lines are scribed with one slip at a time, and where they cross is looked at. */
  @ParameterizedTest
  @CsvSource({"90,8,5,8,5", "60,8,5,3,9", "120,20,4,6,30", "25,5,5,50,70"})
  void slipsAtTheMarkAreWhatScribedLinesShow(
      double degrees, double d1, double room1, double d2, double room2) {
    EdgeDistance[] edges = {edge(1, 0, d1, room1), edge(2, degrees, d2, room2)};
    double squares = 0;
    for (int which = 0; which < 4; which++) {
      double out = scribed(edges, degrees, which, 1e-7).distanceMm(new Point(0, 0));
      squares += out * out / 1e-14;
    }
    assertEquals(Math.sqrt(squares), EdgePair.slips(edges[0], edges[1]), 1e-5);
  }

  /**
   * Returns where the squared lines cross, the mark being 0, 0: each stands on its edge at the
   * foot, off along the edge by the one slip or leaning by it over what the square bears on.
   */
  private static Point scribed(EdgeDistance[] edges, double degrees, int which, double slip) {
    double[][] lines = new double[2][];
    for (int i = 0; i < 2; i++) {
      double along = Math.toRadians(i * degrees);
      double off = which == i ? slip : 0;
      double lean = which == i + 2 ? slip / Math.min(40, 2 * edges[i].endRoomMm()) : 0;
      double x = edges[i].distanceMm() * Math.sin(along) + off * Math.cos(along);
      double y = -edges[i].distanceMm() * Math.cos(along) + off * Math.sin(along);
      // The blade's direction is upright on the edge, leaning; its normal lies along the edge.
      double a = Math.cos(along + lean);
      double b = Math.sin(along + lean);
      lines[i] = new double[] {a, b, a * x + b * y};
    }
    double under = lines[0][0] * lines[1][1] - lines[0][1] * lines[1][0];
    return new Point(
        (lines[0][2] * lines[1][1] - lines[0][1] * lines[1][2]) / under,
        (lines[0][0] * lines[1][2] - lines[0][2] * lines[1][0]) / under);
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
