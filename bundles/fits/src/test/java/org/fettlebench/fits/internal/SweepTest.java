package org.fettlebench.fits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Shapes of heads and spanners about the hole. */
class SweepTest {
  private static final double EXACT = 1e-9;

  /** How far a shape reaches in a direction. */
  private static double support(List<Point> corners, double degrees) {
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    return corners.stream().mapToDouble(at -> at.xMm() * cos + at.yMm() * sin).max().orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 10, 33, 60, 145, -20})
  void aHexagonHasFlatsAlongItsDirectionAndCornersBetween(double degrees) {
    List<Point> corners = Sweep.hexagon(6, 10, degrees);

    assertEquals(6, corners.size());
    for (int i = 0; i < 6; i++) {
      // Square to the flats half the size, between them half across corners.
      assertEquals(3, support(corners, degrees + 90 + 60 * i), EXACT);
      assertEquals(6 / Math.sqrt(3), support(corners, degrees + 60 * i), EXACT);
    }
    assertTrue(Plan.areaMm2(corners) > 0, "anticlockwise");
  }

  /** Chamfered at a circle of 6.4: of each flat 2 sqrt(3.2^2 - 3^2) is left. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 10, 33, 60, 145, -20})
  void chamferedCornersAreCutOffAtTheirCircle(double degrees) {
    List<Point> corners = Sweep.hexagon(6, 3.2, degrees);
    double flat = 2 * Math.sqrt(3.2 * 3.2 - 3 * 3);

    assertEquals(12, corners.size());
    for (int i = 0; i < 12; i++) {
      Point one = corners.get(i);
      Point next = corners.get((i + 1) % 12);
      assertEquals(3.2, Math.hypot(one.xMm(), one.yMm()), EXACT);
      if (i % 2 == 0) {
        assertEquals(flat, one.distanceMm(next), EXACT);
        assertEquals(
            3, Math.hypot((one.xMm() + next.xMm()) / 2, (one.yMm() + next.yMm()) / 2), EXACT);
      }
    }
    assertEquals(3, support(corners, degrees + 90), EXACT);
  }

  /**
   * On the handle's side its head's circle, as far round as it swings (15 degrees past square), and
   * on the other side the hexagon's; circles overrated by a thousandth at most.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0, 40, 90, 217})
  void anOpenSpannerReachesFarOnItsOwnSideOnly(double from) {
    List<Point> corners = Sweep.openSpanner(9, 4, Math.toRadians(from)).corners();

    for (double off = -105; off <= 105; off += 2.5) {
      double reach = support(corners, from + off);
      assertTrue(reach >= 9 - EXACT && reach <= 9 * 1.001, off + ": " + reach);
    }
    for (double off = 180 - 3; off <= 180 + 3; off += 1) {
      double reach = support(corners, from + off);
      assertTrue(reach >= 4 - EXACT && reach <= 4 * 1.001, off + ": " + reach);
    }
    assertEquals(9 / Math.cos(Math.PI / 72), Sweep.openSpanner(9, 4, 0).radiusMm(), EXACT);
    // A spanner is never narrower than what it turns.
    assertTrue(Sweep.openSpanner(3, 4, 0).radiusMm() >= 4);
  }

  @Test
  void aHeadThatTurnsIsRoundAndASetOneIsNot() {
    SeatedHead head = Bench.hexagon(6);
    assertTrue(Sweep.head(head).round());
    assertEquals(6 / Math.sqrt(3), Sweep.head(head).radiusMm(), EXACT);
    assertEquals(6 / Math.sqrt(3), Sweep.head(head).leastReachMm(), EXACT);
    Sweep set = Sweep.head(head.withFlatsAlong(20));
    assertTrue(!set.round());
    for (int i = 0; i < 6; i++) {
      assertEquals(3, support(set.corners(), 110 + 60 * i), EXACT);
    }
    assertEquals(3, set.leastReachMm(), EXACT);
  }
}
