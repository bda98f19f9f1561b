package org.fettlebench.holes.internal.patterns;

/**
 * Finds the shift that makes the greatest lack over all holes least, by exact geometry: the lack of
 * a hole is the distance between the shift and the gap that it would have to close, less its play.
 * With one play for all it is the smallest circle round the gaps.
 *
 * <p>Two or three holes decide. From those found so far it goes to the hole that lacks most and
 * solves the small problem of these holes anew; the lack rises with each step, so it ends.
 *
 * <p>Holds its working figures, so that nothing is made anew in a simulation: one thread only.
 */
final class Gap {
  /** A step must raise the lack by more: rounding of doubles at workshop sizes is far below. */
  private static final double RISE_MM = 1e-12;

  /** More steps than sets of three holes that a pattern decides by; it never comes near. */
  private static final int MOST_STEPS = 10_000;

  private final double[] gapX;
  private final double[] gapY;
  private final double[] play;
  private int count;

  private final int[] deciding = new int[4];
  private int decidingCount;
  private final int[] tried = new int[3];
  private final int[] kept = new int[3];
  private double shiftX;
  private double shiftY;
  private double lack;
  private double startX;
  private double startY;
  private double leadX;
  private double leadY;

  Gap(int most) {
    gapX = new double[most];
    gapY = new double[most];
    play = new double[most];
  }

  void clear() {
    count = 0;
  }

  /** Adds a hole: what lies between its two centres, and how much of that is allowed. */
  void add(double x, double y, double playMm) {
    gapX[count] = x;
    gapY[count] = y;
    play[count] = playMm;
    count++;
  }

  double shiftX() {
    return shiftX;
  }

  double shiftY() {
    return shiftY;
  }

  /** Returns the greatest lack at the shift found; 0 or less when every fastener enters. */
  double lack() {
    return lack;
  }

  /** Returns how many holes decide, 1 to 3. */
  int decidingCount() {
    return decidingCount;
  }

  int deciding(int index) {
    return deciding[index];
  }

  double lackOf(int hole) {
    return lackAt(hole, shiftX, shiftY);
  }

  /** Returns the direction from the shift to a gap, along x; 0 when they fall together. */
  double towardX(int hole) {
    double apart = lackOf(hole) + play[hole];
    return apart > 0 ? (gapX[hole] - shiftX) / apart : 0;
  }

  /** Returns the direction from the shift to a gap, along y; 0 when they fall together. */
  double towardY(int hole) {
    double apart = lackOf(hole) + play[hole];
    return apart > 0 ? (gapY[hole] - shiftY) / apart : 0;
  }

  /** Returns the part of a deciding hole in holding the balance; the parts add up to any sum. */
  double share(int index) {
    if (decidingCount < 3) {
      return 1;
    }
    int next = deciding[(index + 1) % 3];
    int after = deciding[(index + 2) % 3];
    return Math.abs(towardX(next) * towardY(after) - towardX(after) * towardY(next));
  }

  private double lackAt(int hole, double x, double y) {
    double dx = gapX[hole] - x;
    double dy = gapY[hole] - y;
    return Math.sqrt(dx * dx + dy * dy) - play[hole];
  }

  /** Finds the shift; at least one hole must have been added. */
  void solve() {
    decidingCount = 1;
    deciding[0] = 0;
    shiftX = gapX[0];
    shiftY = gapY[0];
    lack = -play[0];
    for (int step = 0; step < MOST_STEPS; step++) {
      int worst = worst();
      if (!(lackOf(worst) > lack + RISE_MM)) {
        return;
      }
      double before = lack;
      deciding[decidingCount] = worst;
      decideAnew(decidingCount + 1);
      if (!(lack > before)) {
        return;
      }
    }
  }

  private int worst() {
    int worst = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      double each = lackOf(i);
      if (each > most) {
        most = each;
        worst = i;
      }
    }
    return worst;
  }

  /** Solves for the first so many deciding holes, the last of which must be among the deciders. */
  private void decideAnew(int holes) {
    int last = holes - 1;
    lack = Double.POSITIVE_INFINITY;
    int keptCount = 0;
    for (int mask = 0; mask < 1 << last; mask++) {
      if (Integer.bitCount(mask) <= 2) {
        int size = choose(mask, last);
        if (trySet(size, holes)) {
          keptCount = size;
          System.arraycopy(tried, 0, kept, 0, size);
        }
      }
    }
    decidingCount = keptCount;
    System.arraycopy(kept, 0, deciding, 0, keptCount);
  }

  private int choose(int mask, int last) {
    tried[0] = deciding[last];
    int size = 1;
    for (int i = 0; i < last; i++) {
      if ((mask & 1 << i) != 0) {
        tried[size++] = deciding[i];
      }
    }
    return size;
  }

  /** Tries the shift that makes the lack of a few holes the same and least. */
  private boolean trySet(int size, int holes) {
    return switch (size) {
      case 1 -> tryShift(gapX[tried[0]], gapY[tried[0]], holes);
      case 2 -> tryPair(tried[0], tried[1], holes);
      default -> tryThree(tried[0], tried[1], tried[2], holes);
    };
  }

  private boolean tryPair(int one, int other, int holes) {
    double dx = gapX[other] - gapX[one];
    double dy = gapY[other] - gapY[one];
    double apart = Math.sqrt(dx * dx + dy * dy);
    double along = (apart + play[one] - play[other]) / 2;
    if (!(apart > 0 && along >= 0 && along <= apart)) {
      return false;
    }
    return tryShift(gapX[one] + dx * along / apart, gapY[one] + dy * along / apart, holes);
  }

  /**
   * The circle that touches three: with the first gap as zero, subtracting its equation from the
   * others leaves the shift as a straight line in the lack, which the first equation then cuts.
   */
  private boolean tryThree(int one, int two, int three, int holes) {
    double x2 = gapX[two] - gapX[one];
    double y2 = gapY[two] - gapY[one];
    double x3 = gapX[three] - gapX[one];
    double y3 = gapY[three] - gapY[one];
    double area = 2 * (x2 * y3 - x3 * y2);
    if (area == 0) {
      return false;
    }
    double more2 = play[one] - play[two];
    double more3 = play[one] - play[three];
    double r2 = x2 * x2 + y2 * y2 - more2 * more2;
    double r3 = x3 * x3 + y3 * y3 - more3 * more3;
    startX = (r2 * y3 - r3 * y2) / area;
    startY = (x2 * r3 - x3 * r2) / area;
    leadX = 2 * (more2 * y3 - more3 * y2) / area;
    leadY = 2 * (x2 * more3 - x3 * more2) / area;
    return tryLine(one, holes);
  }

  /** Cuts the straight line of shifts, start + distance * lead, with the distance to a gap. */
  private boolean tryLine(int one, int holes) {
    double square = leadX * leadX + leadY * leadY - 1;
    double half = startX * leadX + startY * leadY;
    double rest = startX * startX + startY * startY;
    if (square == -1) {
      return tryShift(gapX[one] + startX, gapY[one] + startY, holes);
    }
    double root = Math.sqrt(Math.max(0, half * half - square * rest));
    // The stable form of both roots: none is lost when the square nearly vanishes.
    double sum = -(half + Math.copySign(root, half));
    boolean first = tryDistance(sum / square, one, holes);
    return tryDistance(rest / sum, one, holes) || first;
  }

  private boolean tryDistance(double distance, int one, int holes) {
    return distance >= 0
        && tryShift(
            gapX[one] + startX + distance * leadX, gapY[one] + startY + distance * leadY, holes);
  }

  /** Takes a shift when it makes the greatest lack of the deciding holes less. */
  private boolean tryShift(double x, double y, int holes) {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < holes; i++) {
      most = Math.max(most, lackAt(deciding[i], x, y));
    }
    if (!(most < lack)) {
      return false;
    }
    lack = most;
    shiftX = x;
    shiftY = y;
    return true;
  }
}
