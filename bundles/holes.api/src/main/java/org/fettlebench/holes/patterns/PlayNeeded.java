package org.fettlebench.holes.patterns;

import java.util.Arrays;
import org.fettlebench.holes.chance.Chance;

/**
 * How much play each simulated pair of parts needs, so that one simulation answers for every size
 * of hole: the chance rises with the hole and never wavers.
 */
public final class PlayNeeded {
  private final double[] sortedMm;

  private PlayNeeded(double[] sortedMm) {
    this.sortedMm = sortedMm;
  }

  /**
   * Returns the needs of all trials, given in any order.
   *
   * @param needsMm least play at which every fastener of the trial enters; at least one
   */
  public static PlayNeeded of(double[] needsMm) {
    Require.count("number of trials", needsMm.length, 1, Integer.MAX_VALUE);
    double[] sorted = needsMm.clone();
    Arrays.sort(sorted);
    return new PlayNeeded(sorted);
  }

  /** Returns how many trials there were. */
  public int trials() {
    return sortedMm.length;
  }

  /** Returns the chance that all enter with a play. */
  public Chance chanceAt(double playMm) {
    int low = 0;
    int high = sortedMm.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (sortedMm[middle] <= playMm) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return counted(low, sortedMm.length);
  }

  /**
   * Returns the least play at which so large a part of the trials entered.
   *
   * @param chance above 0 and below 1
   */
  public double playFor(double chance) {
    if (!(chance > 0 && chance < 1)) {
      throw new IllegalArgumentException("chance " + chance + " is outside 0 to 1");
    }
    int wanted = (int) Math.ceil(chance * sortedMm.length - 1e-9);
    return sortedMm[Math.max(1, wanted) - 1];
  }

  /**
   * Returns the chance out of a count, with a standard error that is not nothing when none or all
   * came off: that of a count with one more each way (Laplace's rule of succession).
   */
  public static Chance counted(long good, long trials) {
    double near = (good + 1.0) / (trials + 2.0);
    return new Chance((double) good / trials, Math.sqrt(near * (1 - near) / trials), trials);
  }
}
