package org.fettlebench.holes.internal.correct;

import static org.fettlebench.holes.internal.correct.Readings.LEFT;
import static org.fettlebench.holes.internal.correct.Readings.NEAR;
import static org.fettlebench.holes.internal.correct.Readings.ask;
import static org.fettlebench.holes.internal.correct.Readings.read;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Tone;
import org.fettlebench.holes.correct.MeasuredHole;
import org.fettlebench.holes.correct.MeasuringQuestion;
import org.fettlebench.holes.correct.Reading;
import org.fettlebench.holes.correct.Reading.Edge;
import org.fettlebench.holes.correct.Reading.Spot;
import org.fettlebench.holes.correct.Reading.To;
import org.fettlebench.holes.internal.Drawn;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;

/** What is drawn of a measured hole is what was read. */
class MeasuringPainterTest {
  private static final double EXACT = 1e-9;
  private final HoleFitter fitter = new HoleFitter();

  @Test
  void drawsADimensionForEachReading() {
    MeasuredHole hole =
        fitter.measure(
            ask(4, 4, new Point(11, 8), read(LEFT, To.OVER_PIN, 14), read(NEAR, To.NEAR_RIM, 5)));
    List<Item.Dimension> dimensions =
        new Drawn(fitter.draw(hole, LengthUnit.MILLIMETRE)).dimensions();
    assertEquals(
        List.of("14.00 mm over pin", "5.00 mm near rim"),
        dimensions.stream().map(Item.Dimension::words).toList());
    // Drawn as long as read: from the edge to the pin's far side, and to the rim's near side.
    assertEquals(14, dimensions.get(0).from().distanceMm(dimensions.get(0).to()), EXACT);
    assertEquals(5, dimensions.get(1).from().distanceMm(dimensions.get(1).to()), EXACT);
  }

  private Drawn drawn(MeasuringQuestion question) {
    return new Drawn(fitter.draw(fitter.measure(question), LengthUnit.MILLIMETRE));
  }

  @Test
  void theHoleIsDrawnWhereItWasFound() {
    Drawn drawn =
        drawn(ask(4, 4, new Point(11, 8), read(LEFT, To.CENTRE, 12), read(NEAR, To.CENTRE, 7)));
    Point centre = drawn.markers(Item.Mark.SALTIRE).get(0);
    assertEquals(0, centre.distanceMm(new Point(12, 7)), EXACT);
    assertEquals(List.of(new Point(11, 8)), drawn.markers(Item.Mark.CROSS));
    assertEquals(
        List.of(new Item.Circle(LineKind.OUTLINE, centre, 2)), drawn.circles(LineKind.OUTLINE));
    assertEquals(2, Drawn.radius(drawn.areas(Tone.EMPTY).get(0), centre), EXACT);
    for (Item.Path line : drawn.paths(LineKind.CENTRE)) {
      double length = line.points().get(0).distanceMm(line.points().get(1));
      assertTrue(length > 4 && length < 6, "just past the circle: " + length);
    }
    assertEquals(2, drawn.paths(LineKind.CENTRE).size());
    assertEquals(
        "hole measured at x 12.00 mm, y 7.00 mm, within 0.024 mm", drawn.drawing().title());
  }

  /** Square to the edge, from its foot, along a 3-4-5 direction. */
  @Test
  void theDimensionStandsSquareToASlantingEdge() {
    Edge slant = new Edge("slant", new Point(2, 3), new Point(10, 9));
    Point hole = new Point(6 - 0.6 * 5, 6 + 0.8 * 5);
    Drawn drawn =
        drawn(ask(4, 4, hole, read(slant, To.CENTRE, 5), read(LEFT, To.CENTRE, hole.xMm())));
    assertEquals(0, drawn.dimensions().get(0).from().distanceMm(new Point(6, 6)), EXACT);
    assertEquals(0, drawn.dimensions().get(0).to().distanceMm(hole), EXACT);
    assertEquals(
        List.of(slant.start(), slant.end()), drawn.paths(LineKind.OUTLINE).get(0).points());
    assertEquals(0, drawn.dimensions().get(0).offsetMm());
    assertEquals(6, drawn.dimensions().get(1).offsetMm(), "clear of the first");
  }

  /** An edge measured from twice is drawn once; a known hole with its circle, a corner without. */
  @Test
  void whatWasMeasuredFromIsDrawnOnce() {
    Spot known = new Spot("hole 1", new Point(2, 3), 3);
    Spot corner = new Spot("corner 1", new Point(0, 0), 0);
    Drawn drawn =
        drawn(
            ask(
                4,
                4,
                new Point(5, 7),
                read(NEAR, To.CENTRE, 7),
                read(NEAR, To.NEAR_RIM, 5),
                read(known, To.OVER_PIN, 8.5),
                read(known, To.TO_PIN, 1.5),
                read(corner, To.CENTRE, Math.sqrt(74))));
    assertEquals(1, drawn.paths(LineKind.OUTLINE).size());
    assertEquals(
        new Item.Circle(LineKind.OUTLINE, new Point(2, 3), 1.5),
        drawn.circles(LineKind.OUTLINE).get(1));
    assertEquals(2, drawn.circles(LineKind.OUTLINE).size(), "the hole and the known one");
    assertEquals(
        List.of(known.centre(), known.centre(), corner.centre()), drawn.markers(Item.Mark.RING));
  }

  /** From a spot each is drawn on the line of both centres, as long as what it was read to. */
  @Test
  void eachKindOfReadingEndsWhereItWasTaken() {
    Spot spot = new Spot("hole 1", new Point(2, 3), 0);
    Point hole = new Point(8, 11);
    double[] reach = {10, 8, 12, 11.9, 8.1};
    To[] kinds = {To.CENTRE, To.NEAR_RIM, To.FAR_RIM, To.OVER_PIN, To.TO_PIN};
    for (int i = 0; i < kinds.length; i++) {
      Drawn drawn =
          drawn(
              ask(
                  4,
                  3.8,
                  hole,
                  new Reading(spot, kinds[i], reach[i], 0.5),
                  new Reading(LEFT, To.CENTRE, 8, 0.5)));
      Item.Dimension size = drawn.dimensions().get(0);
      assertEquals(spot.centre(), size.from());
      Point expected = new Point(2 + 0.6 * reach[i], 3 + 0.8 * reach[i]);
      assertEquals(0, size.to().distanceMm(expected), 1e-6, kinds[i].words());
    }
  }
}
