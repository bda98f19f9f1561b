package org.fettlebench.holes.internal.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The best movement, against closed forms, against a search, and under laws it must obey. */
class MotionTest {
  private static final double FINE = 1e-6;

  private static Motion of(double[][] holes) {
    Motion motion = new Motion(holes.length);
    for (double[] hole : holes) {
      motion.add(hole[0], hole[1], hole[2], hole[3], hole[4]);
    }
    return motion;
  }

  private static double[][] random(Random random, int count, double error, boolean samePlay) {
    double[][] holes = new double[count][];
    for (int i = 0; i < count; i++) {
      double x = 40 * random.nextDouble() - 20;
      double y = 40 * random.nextDouble() - 20;
      holes[i] =
          new double[] {
            x + error * random.nextGaussian(),
            y + error * random.nextGaussian(),
            x + error * random.nextGaussian(),
            y + error * random.nextGaussian(),
            samePlay ? 0.2 : 0.4 * random.nextDouble()
          };
    }
    return holes;
  }

  @Test
  void oneHoleAlwaysGoesWithAllItsPlayToSpare() {
    assertEquals(-0.3, of(new double[][] {{4, 5, -7, 9, 0.3}}).least(), FINE);
  }

  @Test
  void twoHolesLackHalfOfWhatTheirDistancesDifferBy() {
    // No movement changes a distance: 30.5 against 30.0 leaves 0.5, shared by two holes.
    double[][] holes = {{0, 0, 1, 2, 0.1}, {30.5, 0, 1, 32, 0.1}};
    Motion motion = of(holes);
    assertEquals(0.25 - 0.1, motion.least(), FINE);
    assertEquals(-Math.PI / 2, motion.turn(), 1e-6);
    assertFalse(motion.enters());
  }

  @Test
  void twoHolesOfUnequalPlayShareTheDifference() {
    double[][] holes = {{0, 0, 0, 0, 0.05}, {30.5, 0, 30, 0, 0.35}};
    assertEquals((0.5 - 0.4) / 2, of(holes).least(), FINE);
  }

  @Test
  void threeGapsThatNoTurnClosesNeedTheCircleRoundThem() {
    // Each hole of an even triangle is out by 0.3 straight outwards: no shift or turn helps.
    double[][] holes = new double[3][];
    for (int i = 0; i < 3; i++) {
      double cos = Math.cos(i * 2 * Math.PI / 3);
      double sin = Math.sin(i * 2 * Math.PI / 3);
      holes[i] = new double[] {20.3 * cos, 20.3 * sin, 20 * cos, 20 * sin, 0.1};
    }
    assertEquals(0.2, of(holes).least(), FINE);
  }

  @Test
  void whatIsOnlyTurnedAndShiftedGoesWithAllItsPlay() {
    double[][] holes = new double[5][];
    for (int i = 0; i < 5; i++) {
      double x = 7 * i;
      double y = i * i;
      double up = Math.cos(1.1) * x - Math.sin(1.1) * y + 3;
      holes[i] = new double[] {up, Math.sin(1.1) * x + Math.cos(1.1) * y - 8, x, y, 0.1};
    }
    Motion motion = of(holes);
    // The turn of least squares, where the search begins, is already the best one.
    assertEquals(-0.1, motion.least(), 1e-12);
    assertEquals(1.1, motion.turn(), 1e-12);
    assertEquals(holes[3][0], motion.movedX(holes[3][2], holes[3][3]), FINE);
    assertEquals(holes[3][1], motion.movedY(holes[3][2], holes[3][3]), FINE);
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 3, 4, 5, 8, 12})
  void agreesWithASearch(int count) {
    Random random = new Random(count);
    for (int i = 0; i < 4; i++) {
      double[][] holes = random(random, count, 0.1 + 0.1 * i, i % 2 == 0);
      double searched = BruteForce.least(holes, 2, 0.1);
      double found = of(holes).least();
      assertTrue(found <= searched + FINE, () -> found + " where a search finds " + searched);
      assertEquals(searched, found, FINE);
      assertEquals(found <= 1e-6, of(holes).enters());
    }
  }

  @Test
  void theSameQuestionSeenOtherwiseHasTheSameAnswer() {
    Random random = new Random(7);
    for (int i = 0; i < 200; i++) {
      double[][] holes = random(random, 2 + i % 11, 0.15, false);
      double least = of(holes).least();
      assertEquals(least, of(turned(holes, random.nextDouble() * 6)).least(), FINE);
      assertEquals(least, of(lowerTurned(holes, random.nextDouble() * 6)).least(), FINE);
      assertEquals(least, of(mirrored(holes)).least(), FINE);
      assertEquals(least, of(swapped(holes)).least(), FINE);
      assertEquals(least, of(renumbered(holes)).least(), FINE);
      assertEquals(10 * least, of(scaled(holes, 10)).least(), 10 * FINE);
    }
  }

  @Test
  void theSignIsFoundWithoutTheFigure() {
    Random random = new Random(3);
    int entered = 0;
    for (int i = 0; i < 3000; i++) {
      double[][] holes = random(random, 2 + i % 11, 0.12, i % 3 > 0);
      boolean enters = of(holes).enters();
      assertEquals(of(holes).least() <= FINE, enters);
      entered += enters ? 1 : 0;
    }
    assertTrue(entered > 300 && entered < 2700, "both must be seen, entered " + entered);
  }

  /**
   * A search that closes in less well is still right, only slow, and no figure shows it. Held here
   * to what it took when this was written, a twentieth above: turns looked at, on average over the
   * same thousand patterns, for the figure and for the sign alone.
   */
  @ParameterizedTest
  @CsvSource({"2, 2.1, 0.88", "3, 8.35, 0.82", "6, 10.1, 0.36", "12, 10.4, 0.03"})
  void theSearchClosesInFast(int count, double forFigure, double forSign) {
    Random random = new Random(5);
    int figure = 0;
    int sign = 0;
    for (int i = 0; i < 1000; i++) {
      Motion motion = of(random(random, count, 0.12, false));
      motion.least();
      figure += motion.turnsTried();
      assertTrue(motion.turnsTried() <= 25, "turns " + motion.turnsTried());
      motion.enters();
      sign += motion.turnsTried();
    }
    assertTrue(figure <= 1000 * forFigure, "turns for the figure " + figure);
    assertTrue(figure >= 800 * forFigure, "so few turns are not believed: " + figure);
    assertTrue(sign <= 1000 * forSign, "turns for the sign " + sign);
  }

  @Test
  void holesInOnePlaceDoNotStopIt() {
    double[][] holes = {{0, 0, 0, 0, 0.1}, {0, 0, 0, 0, 0.1}, {0.3, 0, 0, 0, 0.1}};
    assertEquals(0.05, of(holes).least(), FINE);
  }

  private static double[][] turned(double[][] holes, double angle) {
    double[][] turned = new double[holes.length][];
    for (int i = 0; i < holes.length; i++) {
      double[] h = holes[i];
      double cos = Math.cos(angle);
      double sin = Math.sin(angle);
      turned[i] =
          new double[] {
            cos * h[0] - sin * h[1] + 5,
            sin * h[0] + cos * h[1] - 2,
            cos * h[2] - sin * h[3] + 5,
            sin * h[2] + cos * h[3] - 2,
            h[4]
          };
    }
    return turned;
  }

  /** The lower part alone lies elsewhere, far from the upper one. */
  private static double[][] lowerTurned(double[][] holes, double angle) {
    double[][] turned = turned(holes, angle);
    for (int i = 0; i < holes.length; i++) {
      turned[i] =
          new double[] {
            holes[i][0], holes[i][1], turned[i][2] + 300, turned[i][3] - 200, holes[i][4]
          };
    }
    return turned;
  }

  private static double[][] mirrored(double[][] holes) {
    double[][] other = new double[holes.length][];
    for (int i = 0; i < holes.length; i++) {
      double[] h = holes[i];
      other[i] = new double[] {-h[0], h[1], -h[2], h[3], h[4]};
    }
    return other;
  }

  private static double[][] swapped(double[][] holes) {
    double[][] other = new double[holes.length][];
    for (int i = 0; i < holes.length; i++) {
      double[] h = holes[i];
      other[i] = new double[] {h[2], h[3], h[0], h[1], h[4]};
    }
    return other;
  }

  private static double[][] renumbered(double[][] holes) {
    double[][] other = new double[holes.length][];
    for (int i = 0; i < holes.length; i++) {
      other[i] = holes[holes.length - 1 - i];
    }
    return other;
  }

  private static double[][] scaled(double[][] holes, double factor) {
    double[][] other = new double[holes.length][5];
    for (int i = 0; i < holes.length; i++) {
      for (int k = 0; k < 5; k++) {
        other[i][k] = factor * holes[i][k];
      }
    }
    return other;
  }
}
