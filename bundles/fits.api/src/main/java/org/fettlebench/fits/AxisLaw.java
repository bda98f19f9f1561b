package org.fettlebench.fits;

import java.util.Arrays;
import org.apache.commons.numbers.gamma.Erfc;

/**
 * The sum of a normal error and of bounded ones along one axis.
 *
 * <p>With I(0, x) the normal distribution function and I(k, x) its k-fold integral, the sum's
 * distribution function is the k-fold difference of I(k) over the bounds' widths: the sum over all
 * signs of (product of signs) I(k, x + sum of signed bounds) / product of (2 bound). The integrals
 * follow from I(n) = (x I(n-1) + sigma^2 I(n-2)) / n; a derivation is to differentiate it.
 */
final class AxisLaw {
  /** Beyond so many sigma from all bounds nothing is left: less than 1e-15. */
  private static final double FAR = 8;

  /** A bound this small beside sigma is as good as normal: it moves no chance by 1e-6. */
  private static final double SMALL_BESIDE_SIGMA = 0.1;

  /** A bound this small beside the whole spread moves no chance by 1e-5. */
  private static final double SMALL_BESIDE_SPREAD = 1e-3;

  /** Between neighbouring knots the law is a smooth curve, good for eight points of integration. */
  private static final double[] KNOTS = {-8, -6, -4.5, -3, -1.5, 0, 1.5, 3, 4.5, 6, 8};

  private static final double LEAST_GAP = 0.5;

  private final double sigma;
  private final int order;
  private final double[] shifts;
  private final double[] weights;
  private final double reach;
  private final double[] knots;

  AxisLaw(double normalSigma, double[] bounds) {
    double variance = normalSigma * normalSigma;
    double spread = Math.sqrt(variance + Arrays.stream(bounds).map(b -> b * b / 3).sum());
    double[] kept =
        Arrays.stream(bounds)
            .filter(b -> b > SMALL_BESIDE_SIGMA * normalSigma && b > SMALL_BESIDE_SPREAD * spread)
            .toArray();
    double keptVariance = Arrays.stream(kept).map(b -> b * b / 3).sum();
    this.sigma =
        kept.length == bounds.length ? normalSigma : Math.sqrt(spread * spread - keptVariance);
    this.order = kept.length;
    this.shifts = new double[1 << order];
    this.weights = new double[1 << order];
    for (int i = 0; i < shifts.length; i++) {
      weights[i] = 1;
      for (int bit = 0; bit < order; bit++) {
        double sign = (i >> bit & 1) == 0 ? 1 : -1;
        shifts[i] += sign * kept[bit];
        weights[i] *= sign / (2 * kept[bit]);
      }
    }
    this.reach = Arrays.stream(kept).sum() + FAR * sigma;
    this.knots = spread(shifts, sigma);
  }

  private static double[] spread(double[] shifts, double sigma) {
    double[] all = new double[shifts.length * KNOTS.length];
    int count = 0;
    for (double shift : shifts) {
      for (double knot : KNOTS) {
        all[count++] = shift + knot * sigma;
      }
    }
    Arrays.sort(all);
    int kept = 1;
    for (double knot : all) {
      if (knot - all[kept - 1] > LEAST_GAP * sigma) {
        all[kept++] = knot;
      }
    }
    return Arrays.copyOf(all, kept);
  }

  /** Tells whether there is no error at all along this axis. */
  boolean exact() {
    return reach == 0;
  }

  /** Returns how far from nought the law reaches. */
  double reach() {
    return reach;
  }

  /** Returns, rising, between which places the law is smooth. */
  double[] knots() {
    return knots;
  }

  /** Returns the chance of being at or below x. */
  double cumulative(double x) {
    if (x >= reach) {
      return 1;
    }
    return x <= -reach ? 0 : Math.min(1, Math.max(0, difference(x, order)));
  }

  /** Returns the density at x; the law must not be exact. */
  double density(double x) {
    return Math.abs(x) > reach ? 0 : Math.max(0, difference(x, order - 1));
  }

  private double difference(double x, int folds) {
    double sum = 0;
    for (int i = 0; i < shifts.length; i++) {
      sum += weights[i] * folded(x + shifts[i], folds);
    }
    return sum;
  }

  /** Returns the k-fold integral of the normal distribution function; its density for k = -1. */
  private double folded(double x, int folds) {
    double before = sigma > 0 ? density(x / sigma, sigma) : 0;
    if (folds < 0) {
      return before;
    }
    double now = sigma > 0 ? 0.5 * Erfc.value(-x / (sigma * Math.sqrt(2))) : x >= 0 ? 1 : 0;
    for (int n = 1; n <= folds; n++) {
      double next = (x * now + sigma * sigma * before) / n;
      before = now;
      now = next;
    }
    return now;
  }

  private static double density(double z, double sigma) {
    return Math.exp(-0.5 * z * z) / (sigma * Math.sqrt(2 * Math.PI));
  }
}
