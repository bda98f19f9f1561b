package org.fettlebench.holes.chance;

import java.util.Arrays;

/** The results of a simulation, and how well they are known. */
public final class Simulated {
  private final double[] rising;
  private final double mean;
  private final double standardDeviation;
  private final boolean reached;

  /**
   * Makes sense of results.
   *
   * @param results all of them, at least two, finite
   * @param asked the standard error of the mean that was asked
   * @throws IllegalArgumentException if there are fewer than two or one is not finite
   */
  public Simulated(double[] results, double asked) {
    if (!(results.length >= 2)) {
      throw new IllegalArgumentException(results.length + " results; at least 2 are needed");
    }
    this.rising = results.clone();
    Arrays.sort(rising);
    if (!(Double.isFinite(rising[0]) && Double.isFinite(rising[rising.length - 1]))) {
      throw new IllegalArgumentException("a trial gave no finite result");
    }
    this.mean = Arrays.stream(rising).sum() / rising.length;
    double squares = Arrays.stream(rising).map(each -> (each - mean) * (each - mean)).sum();
    this.standardDeviation = Math.sqrt(squares / (rising.length - 1));
    this.reached = standardError() <= asked;
  }

  /** Returns how many trials were made. */
  public int trials() {
    return rising.length;
  }

  /** Returns the mean of the results. */
  public double mean() {
    return mean;
  }

  /** Returns the standard deviation of the results. */
  public double standardDeviation() {
    return standardDeviation;
  }

  /** Returns the standard error of the mean. */
  public double standardError() {
    return standardDeviation / Math.sqrt(rising.length);
  }

  /** Tells whether the asked standard error was reached before the trials ran out. */
  public boolean reached() {
    return reached;
  }

  /**
   * Returns the result that a share of all stays below, between neighbours in proportion.
   *
   * @param share between 0 and 1, both included
   * @throws IllegalArgumentException if the share is outside
   */
  public double quantile(double share) {
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("share " + share + " is outside 0 to 1");
    }
    double place = share * (rising.length - 1);
    int below = (int) Math.floor(place);
    int above = Math.min(below + 1, rising.length - 1);
    return rising[below] + (place - below) * (rising[above] - rising[below]);
  }

  /**
   * Returns the standard error of a quantile: half of what it moves by when the count below it
   * moves by its own standard error each way, sqrt(p (1 - p) / n).
   *
   * @param share between 0 and 1, both included
   * @throws IllegalArgumentException if the share is outside
   */
  public double quantileStandardError(double share) {
    double step = Math.sqrt(share * (1 - share) / rising.length);
    double high = quantile(Math.min(1, share + step));
    double low = quantile(Math.max(0, share - step));
    return (high - low) / 2;
  }
}
