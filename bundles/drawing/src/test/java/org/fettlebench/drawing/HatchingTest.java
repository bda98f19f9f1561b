package org.fettlebench.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class HatchingTest {
  private static final double[] SQUARE = {0, 0, 100, 0, 100, 100, 0, 100};
  private static final double[] HOLE = {40, 40, 60, 40, 60, 60, 40, 60};

  @Test
  void lineLengthTimesSpacingIsTheArea() {
    assertEquals(100 * 100, area(List.of(SQUARE)), 10);
  }

  @Test
  void aHoleStaysFree() {
    assertEquals(100 * 100 - 20 * 20, area(List.of(SQUARE, HOLE)), 10);
    assertTrue(
        Hatching.lines(List.of(SQUARE, HOLE), 3).stream()
            .map(line -> new double[] {(line.x1() + line.x2()) / 2, (line.y1() + line.y2()) / 2})
            .noneMatch(m -> m[0] > 41 && m[0] < 59 && m[1] > 41 && m[1] < 59));
  }

  @Test
  void onlyTheLinesOfTheSheetAreMadeAndOneRunsThroughItsPoint() {
    List<Hatching.Line> all =
        Hatching.lines(List.of(SQUARE), 7, Hatching.Within.sheet(13, 5, 1e9, 1e9));
    List<Hatching.Line> some =
        Hatching.lines(List.of(SQUARE), 7, Hatching.Within.sheet(13, 5, 20, 20));
    assertTrue(some.size() < all.size() / 3, some.size() + " of " + all.size());
    assertTrue(
        all.stream().anyMatch(line -> Math.abs(line.x1() + line.y1() - 18) < 1e-9), "13 + 5");
  }

  @Test
  void noSpacingIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Hatching.lines(List.of(SQUARE), 0));
    assertThrows(IllegalArgumentException.class, () -> Hatching.lines(List.of(SQUARE), Double.NaN));
  }

  private static double area(List<double[]> rings) {
    double spacing = 0.1;
    return spacing
        * Hatching.lines(rings, spacing).stream()
            .mapToDouble(l -> Math.hypot(l.x2() - l.x1(), l.y2() - l.y1()))
            .sum();
  }
}
