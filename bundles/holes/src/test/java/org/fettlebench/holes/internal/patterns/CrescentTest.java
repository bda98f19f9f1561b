package org.fettlebench.holes.internal.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.fettlebench.holes.internal.Drawn;
import org.fettlebench.measure.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CrescentTest {
  private static final double EXACT = 1e-9;
  private static final Point CENTRE = new Point(3, -2);

  /** A circle less an equal one moved by d: pi r^2 less the lens of both (Euclid's lune). */
  private static double lune(double radius, double moved) {
    double half = moved / 2;
    double lens =
        moved < 2 * radius
            ? 2 * radius * radius * Math.acos(half / radius)
                - 2 * half * Math.sqrt(radius * radius - half * half)
            : 0;
    return Math.PI * radius * radius - lens;
  }

  @ParameterizedTest
  @CsvSource({"2, 0.3, 0", "2, 0.3, 75", "2, 0.3, 250", "2, 1.5, 130", "0.5, 0.9, -20", "1, 3, 45"})
  void isTheMetalBetweenTheHoleAndTheHoleMoved(double radius, double file, double degrees) {
    List<Point> outline = Crescent.outline(CENTRE, radius, file, degrees);

    assertEquals(lune(radius, file), Drawn.area(outline), 0.01 * lune(radius, file));
    double turn = Math.toRadians(degrees);
    Point moved = CENTRE.moved(file * Math.cos(turn), file * Math.sin(turn));
    Point deepest =
        CENTRE.moved((radius + file) * Math.cos(turn), (radius + file) * Math.sin(turn));
    for (Point point : outline) {
      double onHole = Math.abs(point.distanceMm(CENTRE) - radius);
      double onMoved = Math.abs(point.distanceMm(moved) - radius);
      assertEquals(0, Math.min(onHole, onMoved), EXACT, "on one of both circles");
      assertTrue(point.distanceMm(CENTRE) >= radius - EXACT, "never inside the hole");
    }
    assertEquals(0, outline.stream().mapToDouble(deepest::distanceMm).min().orElseThrow(), EXACT);
  }
}
