package org.fettlebench.fits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.measure.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Tall pads side by side on a common strip, like a comb: each is a place of its own where a search
 * could get stuck, and all answers are known. In a pad narrower than it is high a round head has
 * half the width less its radius; it is allowed in a rectangle.
 */
class CombSeatTest {
  private static final double EXACT = 1e-6;
  private static final double RADIUS = 2;

  static IntStream seeds() {
    return IntStream.range(0, 40);
  }

  /** A pad from left to right, up to its height. */
  private record Pad(double left, double right, double height) {
    double width() {
      return right - left;
    }

    /** How far a place at its own level lies from where the head is allowed. */
    double fromMm(Point at) {
      double dx = Math.max(left + RADIUS - at.xMm(), at.xMm() - right + RADIUS);
      double dy = Math.max(RADIUS - 1 - at.yMm(), at.yMm() - height + RADIUS);
      return Math.hypot(Math.max(0, dx), Math.max(0, dy));
    }
  }

  private static List<Pad> pads(Random random) {
    List<Pad> pads = new ArrayList<>();
    double x = 0;
    for (int i = 0; i < 3 + random.nextInt(7); i++) {
      double width = 2.5 + 5 * random.nextDouble();
      pads.add(new Pad(x, x + width, 12 + 8 * random.nextDouble()));
      x += width + 0.5 + 2 * random.nextDouble();
    }
    return pads;
  }

  /** From the strip's far left along the top, up and down each pad, and back below. */
  private static List<Point> outline(List<Pad> pads) {
    List<Point> corners = new ArrayList<>();
    corners.add(new Point(pads.get(0).left(), -1));
    corners.add(new Point(pads.get(pads.size() - 1).right(), -1));
    for (int i = pads.size() - 1; i >= 0; i--) {
      Pad pad = pads.get(i);
      if (i < pads.size() - 1) {
        corners.add(new Point(pad.right(), 0));
      }
      corners.add(new Point(pad.right(), pad.height()));
      corners.add(new Point(pad.left(), pad.height()));
      if (i > 0) {
        corners.add(new Point(pad.left(), 0));
      }
    }
    return corners;
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void theWidestPadIsBestAndTheNearestWideEnoughIsNearest(int seed) {
    Random random = new Random(seed);
    List<Pad> pads = pads(random);
    Pad own = pads.get(random.nextInt(pads.size()));
    Point intended =
        new Point(
            own.left() + own.width() * random.nextDouble(),
            4 + (own.height() - 4) * random.nextDouble());
    SeatAnswer answer =
        new SeatChecker()
            .check(
                new SeatQuestion(
                    Bench.seat(outline(pads), intended), Bench.round(2 * RADIUS), 1, 0.1, ""));

    double widest = pads.stream().mapToDouble(Pad::width).max().orElseThrow();
    assertEquals(widest / 2 - RADIUS, answer.allowanceAtBestMm(), EXACT);
    double nearest =
        pads.stream()
            .filter(pad -> pad.width() >= 2 * RADIUS)
            .mapToDouble(pad -> pad.fromMm(intended))
            .min()
            .orElse(Double.NaN);
    double inside =
        Math.min(
            Math.min(intended.xMm() - own.left(), own.right() - intended.xMm()),
            own.height() - intended.yMm());
    if (inside >= RADIUS) {
      assertEquals(inside - RADIUS, answer.allowanceAtIntendedMm(), EXACT);
    } else if (widest >= 2 * RADIUS) {
      assertEquals(-nearest, answer.allowanceAtIntendedMm(), EXACT);
    }
  }
}
