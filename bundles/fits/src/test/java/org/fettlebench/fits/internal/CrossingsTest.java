package org.fettlebench.fits.internal;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Outline.Corner;
import org.fettlebench.fits.SeatException;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.operation.valid.IsValidOp;

/** Closed lines that cross or touch themselves, in every direction and from every corner. */
class CrossingsTest {
  static IntStream seeds() {
    return IntStream.range(0, 400);
  }

  private static String refusal(List<Point> corners) {
    return assertThrows(SeatException.class, () -> Crossings.refuse("outline", Outline.of(corners)))
        .getMessage();
  }

  private static void taken(List<Point> corners) {
    assertDoesNotThrow(() -> Crossings.refuse("outline", Outline.of(corners)));
  }

  /** Turned by any angle and begun at any corner. */
  private static List<Point> seen(List<Point> corners, double degrees, int first) {
    double cos = Math.cos(Math.toRadians(degrees));
    double sin = Math.sin(Math.toRadians(degrees));
    List<Point> seen = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Point at = corners.get((i + first) % corners.size());
      seen.add(new Point(at.xMm() * cos - at.yMm() * sin + 3, at.xMm() * sin + at.yMm() * cos - 8));
    }
    return seen;
  }

  /** Random lines, most of which cross themselves: the library's judgement on the same line. */
  @ParameterizedTest
  @MethodSource("seeds")
  void agreesWithTheLibrary(int seed) {
    Random random = new Random(seed);
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < 4 + seed % 4; i++) {
      corners.add(new Point(random.nextInt(7), random.nextInt(7)));
    }
    for (int i = 0; i < corners.size(); i++) {
      if (corners.get(i).equals(corners.get((i + 1) % corners.size()))) {
        return;
      }
    }
    if (new IsValidOp(AllowedCentres.polygon(corners)).isValid()) {
      taken(corners);
    } else {
      String message = refusal(corners);
      assertTrue(
          message.contains("meets the")
              || message.contains("runs back over")
              || message.contains("lie on one line"),
          message);
    }
  }

  @Test
  void aSpikeIsTakenHoweverItPointsAndOneWithoutWidthIsNot() {
    for (double degrees = 0; degrees < 360; degrees += 15) {
      for (int first = 0; first < 5; first++) {
        // A spike 10 long out of a plate, 0.001 wide at its foot: 1e-4 radians at its point.
        List<Point> spike = Bench.corners(0, 0, 10, 0, 0, 0.001, 0, 5, -5, 2);
        taken(seen(spike, degrees, first));
        List<Point> back = Bench.corners(0, 0, 10, 0, 4, 0, 4, 5, -5, 2);
        String message = refusal(seen(back, degrees, first));
        // Whichever is come upon first: the fold, or the corner that it leaves on the first side.
        assertTrue(message.contains("runs back over") || message.contains("meets the"), message);
      }
    }
  }

  @Test
  void cornersOnOneLineEncloseNothingHoweverItLies() {
    for (double degrees = 0; degrees < 180; degrees += 11) {
      List<Point> line = Bench.corners(0, 0, 9, 0, 4, 0, 6, 0);
      assertTrue(refusal(seen(line, degrees, 1)).contains("its 4 corners lie on one line"));
      taken(seen(Bench.corners(0, 0, 9, 0, 4, 0.001), degrees, 0));
    }
  }

  /** A corner that touches a side from within or from without. */
  @Test
  void aCornerMayNotTouchASide() {
    for (double degrees = 0; degrees < 360; degrees += 90) {
      List<Point> touching = Bench.corners(0, 0, 10, 0, 10, 10, 5, 0, 0, 10);
      assertTrue(refusal(seen(touching, degrees, 2)).contains(" meets the "));
    }
  }

  @Test
  void arcsThatCrossAreNamed() {
    Outline bulging =
        Outline.ofCorners(
            List.of(
                Corner.sharp(new Point(0, 0)).withThrough(new Point(5, 4.5)),
                Corner.sharp(new Point(10, 0)),
                Corner.sharp(new Point(10, 4)),
                Corner.sharp(new Point(0, 4))));
    String message =
        assertThrows(SeatException.class, () -> Crossings.refuse("outline", bulging)).getMessage();
    assertTrue(
        message.startsWith(
            "outline: the arc from corner 1 to corner 2 meets the edge from corner 3 to corner 4"),
        message);
    assertDoesNotThrow(() -> Crossings.refuse("circle", Outline.circle(new Point(1, 2), 3)));
  }
}
