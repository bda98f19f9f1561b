package org.fettlebench.fits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;

class BoxTest {
  private static final Box BOX =
      Box.of(List.of(new Point(-2, 7), new Point(5, 3), new Point(1, 9)));

  @Test
  void holdsAllPlacesAndNoMore() {
    assertEquals(new Box(-2, 3, 5, 9), BOX);
    assertEquals(7, BOX.width());
    assertEquals(6, BOX.height());
    assertEquals(7, BOX.longest());
    assertEquals(9, new Box(0, 0, 4, 9).longest());
  }

  @Test
  void theFarthestCornerIsTheOneOpposite() {
    assertEquals(Math.hypot(7, 6), BOX.farthestFrom(new Point(-2, 3)));
    assertEquals(Math.hypot(7, 6), BOX.farthestFrom(new Point(5, 9)));
    assertEquals(Math.hypot(8, 7), BOX.farthestFrom(new Point(6, 2)));
    assertEquals(Math.hypot(4, 4), BOX.farthestFrom(new Point(1, 7)));
  }
}
