package org.fettlebench.fits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Arcs against the circle's own geometry. */
class ArcTest {
  private static final double EXACT = 1e-9;
  private static final Arc QUARTER = new Arc(new Point(1, 2), 5, 0, Math.PI / 2);

  private static void same(Point expected, Point place) {
    assertEquals(expected.xMm(), place.xMm(), EXACT);
    assertEquals(expected.yMm(), place.yMm(), EXACT);
  }

  @Test
  void placesLieWhereTheTurnOfTheCircleHasThem() {
    double eighth = 5 * Math.sqrt(0.5);
    same(new Point(6, 2), QUARTER.at(0));
    same(new Point(1 + eighth, 2 + eighth), QUARTER.at(0.5));
    same(new Point(1, 7), QUARTER.at(1));
    Arc clockwise = new Arc(new Point(1, 2), 5, Math.PI / 2, -Math.PI);
    same(new Point(6, 2), clockwise.at(0.5));
    same(new Point(1, -3), clockwise.at(1));
  }

  @Test
  void aPartAndTheWayBackPassTheSamePlaces() {
    Arc arc = new Arc(new Point(-3, 4), 7, 0.4, -2.1);
    Arc part = arc.part(0.25, 0.75);
    for (double share : new double[] {0, 0.3, 1}) {
      same(arc.at(0.25 + share / 2), part.at(share));
      same(arc.at(1 - share), arc.reversed().at(share));
    }
  }

  /**
   * A chord over an angle a rises r (1 - cos(a / 2)) below its arc: for 0.0005 mm at 5 mm a quarter
   * needs 55.5 chords; for a hundred-thousandth of 200 mm 175.6; below that rise one will do.
   */
  @ParameterizedTest
  @CsvSource({"5, 56", "200, 176", "0.0001, 1"})
  void chordsAreAsManyAsTheRiseAsks(double radius, int chords) {
    Arc arc = new Arc(new Point(1, 2), radius, 1, Math.PI / 2);
    List<Point> points = arc.points();
    assertEquals(chords + 1, points.size());
    assertEquals(points.size(), arc.reversed().points().size());
    for (int i = 0; i <= chords; i++) {
      same(arc.at((double) i / chords), points.get(i));
    }
  }

  @Test
  void threePlacesGiveBackTheirCircle() {
    Random random = new Random(3);
    for (int trial = 0; trial < 200; trial++) {
      Point centre = new Point(20 * random.nextDouble() - 10, 20 * random.nextDouble() - 10);
      double radius = 0.5 + 20 * random.nextDouble();
      double begin = 2 * Math.PI * random.nextDouble() - Math.PI;
      double sweep = (trial % 2 == 0 ? 1 : -1) * (0.3 + 5.7 * random.nextDouble());
      Arc drawn = new Arc(centre, radius, begin, sweep);

      Point middle = drawn.at(0.2 + 0.6 * random.nextDouble());
      Arc found = Arc.through("arc", drawn.at(0), middle, drawn.at(1));

      assertEquals(0, centre.distanceMm(found.centre()), 1e-7);
      assertEquals(radius, found.radiusMm(), 1e-7);
      assertEquals(begin, found.fromRadians(), 1e-7);
      assertEquals(sweep, found.sweepRadians(), 1e-7);
    }
  }

  @ParameterizedTest
  @CsvSource({"4, 0", "4, 0.0000001", "0, 0"})
  void aMiddleThatBendsNothingIsRefusedWithItsPlace(double x, double y) {
    Point from = new Point(0, 0);
    SeatException refused =
        assertThrows(
            SeatException.class,
            () -> Arc.through("arc 7", from, new Point(x, y), new Point(8, 0)));
    assertTrue(refused.getMessage().startsWith("arc 7: x " + x + " mm, y " + y), refused::toString);
  }

  /** Rise s over a half chord c: r = (c^2 + s^2) / 2 s; here within the 10 km that are taken. */
  @Test
  void aSlightBendIsTaken() {
    Arc arc = Arc.through("arc", new Point(0, 0), new Point(4, 1e-6), new Point(8, 0));
    assertEquals(8e6, arc.radiusMm(), 1);
    assertTrue(arc.sweepRadians() < 0);
  }
}
