package org.fettlebench.fits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.fettlebench.fits.Outline.Corner;
import org.fettlebench.fits.Outline.Edge;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Outlines against areas and places in closed form. */
class OutlineTest {
  private static final double EXACT = 1e-9;
  private static final List<Point> RECTANGLE = Plane.points(0, 0, 20, 0, 20, 10, 0, 10);
  // Its inscribed circle has a radius of 10 / (2 sqrt 3).
  private static final List<Point> TRIANGLE = Plane.points(0, 0, 10, 0, 5, 5 * Math.sqrt(3));

  private static Outline rounded(List<Point> corners, double radiusMm) {
    return Outline.ofCorners(
        corners.stream().map(at -> Corner.sharp(at).withRounded(radiusMm)).toList());
  }

  private static void same(double x, double y, Point place) {
    assertEquals(x, place.xMm(), EXACT);
    assertEquals(y, place.yMm(), EXACT);
  }

  /** The area within a polygon, by the sum over its corners. */
  private static double area(List<Point> line) {
    double twice = 0;
    for (int i = 0; i < line.size(); i++) {
      Point a = line.get(i);
      Point b = line.get((i + 1) % line.size());
      twice += a.xMm() * b.yMm() - b.xMm() * a.yMm();
    }
    return twice / 2;
  }

  /** What chords may leave of the area under arcs so long. */
  private static double strip(double arcsMm) {
    return Outline.CHORD_ERROR_MM * arcsMm;
  }

  private static String refusal(List<Corner> corners) {
    return assertThrows(SeatException.class, () -> Outline.ofCorners(corners)).getMessage();
  }

  @Test
  void straightEdgesRunFromCornerToCornerAndBack() {
    Outline outline = Outline.of(RECTANGLE);
    assertEquals(RECTANGLE, outline.points());
    assertFalse(outline.bent());
    assertEquals(
        List.of(
            "edge from corner 1 to corner 2",
            "edge from corner 2 to corner 3",
            "edge from corner 3 to corner 4",
            "edge from corner 4 to corner 1"),
        outline.edges().stream().map(Edge::name).toList());
    assertEquals(RECTANGLE.get(3), outline.edges().get(3).from());
    assertEquals(RECTANGLE.get(0), outline.edges().get(3).to());
  }

  @Test
  void roundingsOfARectangleAreQuartersOfCircles() {
    Outline outline = rounded(RECTANGLE, 3);
    assertTrue(outline.bent());
    assertEquals(8, outline.edges().size());
    Edge first = outline.edges().get(0);
    assertEquals("rounding of corner 1", first.name());
    same(0, 3, first.from());
    same(3, 0, first.to());
    same(3, 3, first.arc().orElseThrow().centre());
    assertEquals(3, first.arc().orElseThrow().radiusMm(), EXACT);
    assertEquals(Math.PI / 2, first.arc().orElseThrow().sweepRadians(), EXACT);
    Edge straight = outline.edges().get(1);
    assertEquals("edge from corner 1 to corner 2", straight.name());
    same(3, 0, straight.from());
    same(17, 0, straight.to());
    same(17, 7, outline.edges().get(4).arc().orElseThrow().centre());
    // Four corners of (1 - pi / 4) r^2 each are lost.
    assertEquals(200 - (4 - Math.PI) * 9, area(outline.points()), strip(6 * Math.PI));
  }

  @Test
  void aReentrantCornerIsFilledIn() {
    List<Corner> corners = new ArrayList<>();
    Plane.points(0, 0, 10, 0, 10, 4, 4, 4, 4, 10, 0, 10)
        .forEach(at -> corners.add(Corner.sharp(at)));
    Outline outline = Outline.ofCorners(corners).withCorner(3, corners.get(3).withRounded(2));
    Edge filled = outline.edges().get(3);
    same(6, 6, filled.arc().orElseThrow().centre());
    assertEquals(-Math.PI / 2, filled.arc().orElseThrow().sweepRadians(), EXACT);
    assertEquals(64 + 4 - Math.PI, area(outline.points()), strip(Math.PI));
  }

  @Test
  void roundingsThatMeetLeaveNoEdgeBetween() {
    double inscribed = 10 / (2 * Math.sqrt(3));
    Outline outline = rounded(TRIANGLE, inscribed);
    assertEquals(3, outline.edges().size());
    for (Edge edge : outline.edges()) {
      same(5, inscribed, edge.arc().orElseThrow().centre());
      assertEquals(2 * Math.PI / 3, edge.arc().orElseThrow().sweepRadians(), 1e-6);
    }
  }

  /** At 60 degrees a rounding takes r / tan 30 of each edge. */
  @Test
  void roundingsThatOverlapAreRefusedWithWhatIsFree() {
    assertEquals(
        "corner 1: a rounding of 2.9 mm takes 5.023 mm of the edge to corner 2, and 4.977 mm are"
            + " free; make it smaller",
        assertThrows(SeatException.class, () -> rounded(TRIANGLE, 2.9)).getMessage());
    assertTrue(
        assertThrows(SeatException.class, () -> rounded(TRIANGLE, 10))
            .getMessage()
            .startsWith(
                "corner 1: a rounding of 10 mm takes 17.321 mm of the edge to corner 2, and"
                    + " 0.000 mm are free"));
  }

  @ParameterizedTest
  @CsvSource({"-1, -1", "-0.25, -0.25", "NaN, NaN", "Infinity, Infinity"})
  void aRoundingIsAboveNothing(double radius, String shown) {
    assertEquals(
        "corner 1: rounding of " + shown + " mm is not above 0; leave it out",
        assertThrows(SeatException.class, () -> rounded(RECTANGLE, radius)).getMessage());
  }

  @Test
  void whereALineRunsOnOrFoldsBackThereIsNothingToRound() {
    for (double far : new double[] {10, 3}) {
      List<Corner> corners = new ArrayList<>();
      Plane.points(0, 0, 5, 0, far, 0, 5, 9).forEach(at -> corners.add(Corner.sharp(at)));
      corners.set(1, corners.get(1).withRounded(1));
      assertEquals(
          "corner 2: its edges lie on one line, so there is nothing to round; leave it out",
          refusal(corners));
    }
  }

  @Test
  void anArcsEndIsNotRounded() {
    for (int arc : new int[] {0, 1}) {
      List<Corner> corners = new ArrayList<>();
      RECTANGLE.forEach(at -> corners.add(Corner.sharp(at)));
      corners.set(1, corners.get(1).withRounded(1));
      corners.set(arc, corners.get(arc).withThrough(arc == 0 ? at(10, -2) : at(22, 5)));
      assertEquals(
          "corner 2: an arc ends here, so it cannot be rounded; give the rounding as an arc too",
          refusal(corners));
    }
  }

  private static Point at(double x, double y) {
    return new Point(x, y);
  }

  @Test
  void anArcBulgesAsItsPlaceSays() {
    List<Corner> corners = new ArrayList<>();
    RECTANGLE.forEach(at -> corners.add(Corner.sharp(at)));
    corners.set(1, corners.get(1).withThrough(at(25, 5)));
    Outline outline = Outline.ofCorners(corners);
    Edge end = outline.edges().get(1);
    assertTrue(outline.bent());
    assertEquals("arc from corner 2 to corner 3", end.name());
    assertEquals(4, outline.edges().size());
    same(20, 5, end.arc().orElseThrow().centre());
    // Half a circle of radius 5 on the end of it.
    assertEquals(200 + Math.PI * 25 / 2, area(outline.points()), strip(5 * Math.PI));
    assertEquals(Outline.of(RECTANGLE), outline.withCorner(1, corners.get(1).withStraightEdge()));
  }

  @Test
  void aCircleIsTwoArcsRunAnticlockwise() {
    Outline circle = Outline.circle(at(3, -4), 6);
    assertEquals(2, circle.edges().size());
    for (Edge half : circle.edges()) {
      same(3, -4, half.arc().orElseThrow().centre());
      assertEquals(Math.PI, half.arc().orElseThrow().sweepRadians(), EXACT);
    }
    same(-3, -4, circle.edges().get(0).from());
    same(3, -10, circle.edges().get(0).arc().orElseThrow().at(0.5));
    for (Point place : circle.points()) {
      assertEquals(6, place.distanceMm(at(3, -4)), EXACT);
    }
    assertEquals(Math.PI * 36, area(circle.points()), strip(12 * Math.PI));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN})
  void aCircleHasARadius(double radius) {
    assertEquals(
        "circle: radius " + radius + " mm is not above 0; give its radius",
        assertThrows(SeatException.class, () -> Outline.circle(at(0, 0), radius)).getMessage());
  }

  /** Over a chord of 8 a radius of 5 rises 2 (3, 4, 5); one of 4 is half a circle. */
  @Test
  void anArcOfARadiusRisesToItsSide() {
    same(4, 2, Outline.throughOfRadius(at(0, 0), at(8, 0), 5, true));
    same(4, -2, Outline.throughOfRadius(at(0, 0), at(8, 0), 5, false));
    same(4, 4, Outline.throughOfRadius(at(0, 0), at(8, 0), 4, true));
    // Turned so that its chord runs 0.6 across and 0.8 away, from 1, 2.
    same(1 + 2.4 - 1.6, 2 + 3.2 + 1.2, Outline.throughOfRadius(at(1, 2), at(5.8, 8.4), 5, true));
  }

  @Test
  void aRadiusThatDoesNotReachIsRefusedWithTheLeastThatDoes() {
    assertEquals(
        "arc radius 3.9 mm does not reach; at least 4.0 mm is needed",
        assertThrows(
                SeatException.class, () -> Outline.throughOfRadius(at(0, 0), at(8, 0), 3.9, true))
            .getMessage());
    assertThrows(SeatException.class, () -> Outline.throughOfRadius(at(1, 1), at(1, 1), 5, true));
  }

  @Test
  void cornersAreMovedAddedAndTakenAway() {
    Outline outline = Outline.of(RECTANGLE);
    Outline moved = outline.withCornerAt(2, at(21, 11));
    assertEquals(Plane.points(0, 0, 20, 0, 21, 11, 0, 10), moved.points());
    assertNotEquals(outline, moved);
    Outline added = outline.withCornerAdded(1, Corner.sharp(at(10, -1)));
    assertEquals(Plane.points(0, 0, 10, -1, 20, 0, 20, 10, 0, 10), added.points());
    assertEquals(outline, added.withoutCorner(1));
    assertEquals(outline.hashCode(), added.withoutCorner(1).hashCode());
    assertNotEquals(outline.hashCode(), added.hashCode());
    assertEquals(added.corners().toString(), added.toString());
    assertNotEquals(outline, (Object) outline.corners());
    assertEquals(
        rounded(RECTANGLE, 3).corners().get(2).withAt(at(21, 11)),
        rounded(RECTANGLE, 3).withCornerAt(2, at(21, 11)).corners().get(2));
  }
}
