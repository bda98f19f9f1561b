package org.fettlebench.holes.internal.patterns;

import org.fettlebench.measure.Tolerances;

/**
 * Finds the rigid movement of the lower holes, shift and turn, that makes the greatest lack over
 * all holes least: for a given turn {@link Gap} finds the shift exactly and tells how the lack
 * rises or falls with the turn; over the turn the lack is convex, so that tangents from both sides
 * close in on the least from below while every turn tried bounds it from above.
 *
 * <p>Convex it is but for what {@link #departure} bounds, which the search allows for; it vanishes
 * with the square of what is left to search.
 *
 * <p>Holds its working figures: one thread only.
 */
final class Motion {
  /** The least lack is found to this: a tenth of the slack of geometry. */
  private static final double FINE_MM = Tolerances.GEOMETRY_SLACK_MM / 10;

  /** Steps over the turn; halving alone would do with half as many. */
  private static final int MOST_TURNS = 200;

  /** A turn of less than this changes nothing that could be measured: radians. */
  private static final double FIRST_STEP = 1e-6;

  /** A lack that changes by less per radian is level: over a turn of 1 it stays the same. */
  private static final double LEVEL = 1e-12;

  private final int most;
  private final double[] upperX;
  private final double[] upperY;
  private final double[] lowerX;
  private final double[] lowerY;
  private final double[] play;
  private int count;
  private double middleX;
  private double middleY;
  private double radius;
  private double usualTurn;
  private final Gap gap;

  private int turnsTried;
  private double turn;
  private double lack;
  private double slope;
  private double bestTurn;
  private double bestLack;
  private double leftTurn;
  private double leftLack;
  private double leftSlope;
  private double rightTurn;
  private double rightLack;
  private double rightSlope;

  Motion(int most) {
    this.most = most;
    upperX = new double[most];
    upperY = new double[most];
    lowerX = new double[most];
    lowerY = new double[most];
    play = new double[most];
    gap = new Gap(most);
  }

  void clear() {
    count = 0;
  }

  /** Adds a hole: where it is in both parts, and how far apart the two may lie. */
  void add(double upX, double upY, double lowX, double lowY, double playMm) {
    if (count == most) {
      throw new IllegalStateException("more than " + most + " holes");
    }
    upperX[count] = upX;
    upperY[count] = upY;
    lowerX[count] = lowX;
    lowerY[count] = lowY;
    play[count] = playMm;
    count++;
  }

  /** Returns whether some movement lets every fastener enter. */
  boolean enters() {
    prepare();
    return !pairForbids() && search(true) <= Tolerances.GEOMETRY_SLACK_MM;
  }

  /** Finds the best movement and returns its greatest lack; 0 or less when all enter. */
  double least() {
    prepare();
    search(false);
    look(bestTurn);
    return bestLack;
  }

  /** Returns how many turns the last search looked at: what it costs. */
  int turnsTried() {
    return turnsTried;
  }

  /** Returns the turn of the lower part found best, anticlockwise. */
  double turn() {
    return bestTurn;
  }

  /** Returns where a place of the lower part comes to lie, along x. */
  double movedX(double x, double y) {
    return gap.shiftX() + middleX + Math.cos(turn) * (x - middleX) - Math.sin(turn) * (y - middleY);
  }

  /** Returns where a place of the lower part comes to lie, along y. */
  double movedY(double x, double y) {
    return gap.shiftY() + middleY + Math.sin(turn) * (x - middleX) + Math.cos(turn) * (y - middleY);
  }

  double middleX() {
    return middleX;
  }

  double middleY() {
    return middleY;
  }

  /** Returns whether a hole has no more room than the worst. */
  boolean governs(int hole) {
    return gap.lackOf(hole) > gap.lack() - Tolerances.GEOMETRY_SLACK_MM;
  }

  /** Turns are about the middle of the lower holes; the turn of least squares is the start. */
  private void prepare() {
    turnsTried = 0;
    middleX = 0;
    middleY = 0;
    for (int i = 0; i < count; i++) {
      middleX += lowerX[i] / count;
      middleY += lowerY[i] / count;
    }
    double cross = 0;
    double dot = 0;
    for (int i = 0; i < count; i++) {
      // As these add up to nothing, the upper holes may be counted from anywhere near them.
      double x = lowerX[i] - middleX;
      double y = lowerY[i] - middleY;
      cross += x * (upperY[i] - upperY[0]) - y * (upperX[i] - upperX[0]);
      dot += x * (upperX[i] - upperX[0]) + y * (upperY[i] - upperY[0]);
    }
    radius = 0;
    for (int i = 0; i < count; i++) {
      radius = Math.max(radius, Math.hypot(lowerX[i] - middleX, lowerY[i] - middleY));
    }
    usualTurn = cross == 0 && dot == 0 ? 0 : Math.atan2(cross, dot);
  }

  /** No movement changes how far two holes of a part are apart. */
  private boolean pairForbids() {
    for (int i = 1; i < count; i++) {
      for (int j = 0; j < i; j++) {
        double differs = upperApart(i, j) - lowerApart(i, j);
        if (Math.abs(differs) > play[i] + play[j] + 2 * Tolerances.GEOMETRY_SLACK_MM) {
          return true;
        }
      }
    }
    return false;
  }

  private double upperApart(int i, int j) {
    double dx = upperX[i] - upperX[j];
    double dy = upperY[i] - upperY[j];
    return Math.sqrt(dx * dx + dy * dy);
  }

  private double lowerApart(int i, int j) {
    double dx = lowerX[i] - lowerX[j];
    double dy = lowerY[i] - lowerY[j];
    return Math.sqrt(dx * dx + dy * dy);
  }

  /**
   * Closes in on the best turn.
   *
   * @param signOnly whether to stop as soon as it is sure which side of nothing the least lack is
   */
  private double search(boolean signOnly) {
    bestLack = Double.POSITIVE_INFINITY;
    double enough = signOnly ? 0 : Double.NEGATIVE_INFINITY;
    look(usualTurn);
    if (flat() || bestLack <= enough || !bracket(enough)) {
      return bestLack;
    }
    double hopeless = signOnly ? Tolerances.GEOMETRY_SLACK_MM : Double.POSITIVE_INFINITY;
    for (int step = 0; step < MOST_TURNS; step++) {
      double meet = meet();
      double bound = leftLack + leftSlope * (meet - leftTurn) - departure();
      if (!(bound < bestLack - FINE_MM && bound <= hopeless)) {
        return bestLack;
      }
      look(within(step % 2 == 0 ? meet : level()));
      if (flat() || bestLack <= enough || !narrow()) {
        return bestLack;
      }
    }
    return bestLack;
  }

  /** Steps out downhill, twice as far each time, until the lack rises again. */
  private boolean bracket(double enough) {
    keepSide();
    double direction = -Math.signum(slope);
    double step = Math.max(FIRST_STEP, (lack + mostPlay()) / radius / 4);
    while (Math.abs(turn - usualTurn) < Math.PI) {
      look(turn + direction * step);
      step *= 2;
      if (flat() || bestLack <= enough) {
        return false;
      }
      boolean beyond = direction > 0 ? slope > 0 : slope < 0;
      keepSide();
      if (beyond) {
        return true;
      }
    }
    return false;
  }

  private double mostPlay() {
    double most = 0;
    for (int i = 0; i < count; i++) {
      most = Math.max(most, play[i]);
    }
    return most;
  }

  /**
   * How far the lack may lie below its tangents: a hole's distance bends downwards by no more than
   * a quarter of itself per turn squared (taken twice), where its gap runs nearly along its own
   * direction.
   */
  private double departure() {
    double width = rightTurn - leftTurn;
    double apart = Math.max(leftLack, rightLack) + mostPlay();
    return apart * width * width / 16;
  }

  private void keepSide() {
    if (slope < 0) {
      leftTurn = turn;
      leftLack = lack;
      leftSlope = slope;
    } else {
      rightTurn = turn;
      rightLack = lack;
      rightSlope = slope;
    }
  }

  /** Takes the turn just looked at as an end; false when the ends no longer close in. */
  private boolean narrow() {
    double before = rightTurn - leftTurn;
    keepSide();
    return rightTurn - leftTurn < before;
  }

  /** Returns the turn where the tangents of both ends meet: below it the lack cannot be. */
  private double meet() {
    return (rightLack - leftLack + leftSlope * leftTurn - rightSlope * rightTurn)
        / (leftSlope - rightSlope);
  }

  /** Returns the turn where the slope would be level if it changed evenly. */
  private double level() {
    return leftTurn - leftSlope * (rightTurn - leftTurn) / (rightSlope - leftSlope);
  }

  private double within(double next) {
    double width = rightTurn - leftTurn;
    boolean inside = next > leftTurn + 0.01 * width && next < rightTurn - 0.01 * width;
    return inside ? next : leftTurn + width / 2;
  }

  private boolean flat() {
    return Math.abs(slope) < LEVEL;
  }

  /** Finds the shift for a turn, and how the lack changes with the turn there. */
  private void look(double newTurn) {
    turnsTried++;
    turn = newTurn;
    double cos = Math.cos(turn);
    double sin = Math.sin(turn);
    gap.clear();
    for (int i = 0; i < count; i++) {
      double x = lowerX[i] - middleX;
      double y = lowerY[i] - middleY;
      gap.add(
          upperX[i] - middleX - (cos * x - sin * y),
          upperY[i] - middleY - (sin * x + cos * y),
          play[i]);
    }
    gap.solve();
    lack = gap.lack();
    slope = slope(cos, sin);
    if (lack < bestLack) {
      bestLack = lack;
      bestTurn = turn;
    }
  }

  /** The shares that balance the deciding holes carry over to the slopes of their lacks. */
  private double slope(double cos, double sin) {
    double all = 0;
    double weights = 0;
    for (int k = 0; k < gap.decidingCount(); k++) {
      int hole = gap.deciding(k);
      double x = lowerX[hole] - middleX;
      double y = lowerY[hole] - middleY;
      double weight = gap.share(k);
      weights += weight;
      // The gap moves by (sin x + cos y, -cos x + sin y) for a turn of one.
      all +=
          weight
              * (gap.towardX(hole) * (sin * x + cos * y) + gap.towardY(hole) * (sin * y - cos * x));
    }
    return weights > 0 ? all / weights : 0;
  }
}
