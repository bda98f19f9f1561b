package org.fettlebench.desktop.seats.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.SeatException;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Arcs against the circle's own rule: radius = (half chord squared + height squared) / 2 height.
 */
class ArcsTest {
  private static final double EXACT = 1e-9;

  private static Outline square(boolean clockwise) {
    List<Point> corners = new ArrayList<>(Sketches.square(12));
    if (clockwise) {
      Collections.reverse(corners);
    }
    return Outline.of(corners);
  }

  /** Side 0 of the square is 12 long: 6 x 6 + h x h over 2 h. */
  @ParameterizedTest
  @CsvSource({"6, 6", "2, 10", "-2, 10", "12, 7.5", "0.5, 36.25"})
  void aSideThatIsMadeAnArcHasItsBulgeAndItsRadius(double bulge, double radius) {
    for (boolean clockwise : new boolean[] {false, true}) {
      Outline outline = Arcs.bulged(square(clockwise), 0, bulge);
      assertEquals(bulge, Arcs.bulgeMm(outline, 0).orElseThrow(), EXACT);
      assertEquals(radius, Arcs.radiusMm(outline, 0).orElseThrow(), EXACT);
      double area = Math.abs(areaMm2(outline.points()));
      assertEquals(bulge > 0, area > 144, "outwards is more metal: " + area);
    }
  }

  private static double areaMm2(List<Point> ring) {
    double twice = 0;
    for (int i = 0; i < ring.size(); i++) {
      Point a = ring.get(i);
      Point b = ring.get((i + 1) % ring.size());
      twice += a.xMm() * b.yMm() - b.xMm() * a.yMm();
    }
    return twice / 2;
  }

  @Test
  void aTypedRadiusKeepsTheSideToWhichTheArcBulges() {
    Outline inwards = Arcs.radius(Arcs.bulged(square(false), 1, -1), 1, 10);
    assertEquals(-2, Arcs.bulgeMm(inwards, 1).orElseThrow(), EXACT);
    Outline outwards = Arcs.radius(square(true), 1, 10);
    assertEquals(2, Arcs.bulgeMm(outwards, 1).orElseThrow(), EXACT);
    assertThrows(SeatException.class, () -> Arcs.radius(square(false), 1, 5.9));
  }

  @Test
  void noBulgeIsStraightAgain() {
    Outline arc = Arcs.bulged(square(false), 2, 3);
    assertTrue(arc.bent());
    assertFalse(Arcs.bulged(arc, 2, 0).bent());
    assertEquals(square(false).points(), Arcs.bulged(arc, 2, 0).points());
  }

  /** Twice the chord, twice the height: the arc is the same in shape. */
  @Test
  void anArcKeepsItsShapeWhileItsCornerMoves() {
    Outline arc = Arcs.bulged(square(false), 0, 3);
    Outline moved = Arcs.moved(arc, 1, new Point(24, 0));
    assertEquals(6, Arcs.bulgeMm(moved, 0).orElseThrow(), EXACT);
    Outline other = Arcs.moved(arc, 0, new Point(-12, 0));
    assertEquals(6, Arcs.bulgeMm(other, 0).orElseThrow(), EXACT);
    assertEquals(new Point(-12, 0), other.corners().get(0).at());
  }

  @Test
  void theTopOfAnArcIsWhereItIsDragged() {
    Outline arc = Arcs.through(square(false), 0, new Point(6, -2));
    assertEquals(0, Arcs.top(arc, 0).orElseThrow().distanceMm(new Point(6, -2)), EXACT);
    Outline off = Arcs.through(square(false), 0, new Point(0.3431457505, -1.5));
    double radius = Arcs.radiusMm(off, 0).orElseThrow();
    Point top = Arcs.top(off, 0).orElseThrow();
    Point centre = new Point(6, top.yMm() + radius);
    assertEquals(radius, centre.distanceMm(new Point(0.3431457505, -1.5)), 1e-6);
    assertEquals(Optional.empty(), Arcs.top(square(false), 0));
  }

  @Test
  void aSketchKnowsItsCornersAndTakesOneAway() {
    Sketch sketch = Sketches.byCorners(Sketches.square(12));
    Sketch bent = sketch.with(Handles.bent(sketch.shape(), o -> Arcs.bulged(o, 1, 2)));
    assertEquals(Sketches.square(12), bent.shape().knots(bent.shape().corners()));
    assertEquals(new Point(14, 6), Handles.at(bent, Handle.of(Handle.Kind.ARC, 1)).orElseThrow());
    Sketch fewer = Handles.removed(bent, Handle.of(Handle.Kind.CORNER, 0));
    assertEquals(3, fewer.shape().knots(fewer.shape().corners()).size());
    assertEquals(
        2, Arcs.bulgeMm(fewer.shape().outline(fewer.shape().corners()), 0).orElseThrow(), EXACT);
    Sketch straight = Handles.removed(bent, Handle.of(Handle.Kind.ARC, 1));
    assertEquals(sketch.shape().given(), straight.shape().given());
    assertEquals(List.of(), straight.shape().bends());
    assertEquals(bent, Draft.read(Draft.write(bent)));
    Sketch impossible = bent.with(Handles.bent(bent.shape(), o -> Arcs.rounded(o, 1, 500)));
    assertEquals(bent, impossible);
  }
}
