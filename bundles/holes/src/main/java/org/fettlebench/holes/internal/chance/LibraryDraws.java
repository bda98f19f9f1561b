package org.fettlebench.holes.internal.chance;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.SharedStateContinuousSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.fettlebench.holes.chance.Draws;

/** Figures out of a library's generator. */
final class LibraryDraws implements Draws {
  private final UniformRandomProvider source;
  private final SharedStateContinuousSampler normal;

  LibraryDraws(UniformRandomProvider source) {
    this.source = source;
    this.normal = ZigguratSampler.NormalizedGaussian.of(source);
  }

  @Override
  public double rectangular(double low, double high) {
    return low + (high - low) * source.nextDouble();
  }

  @Override
  public double normal(double mean, double standardDeviation) {
    return mean + standardDeviation * normal.sample();
  }

  /** The share of the law below the peak tells on which side a figure lies; the root follows. */
  @Override
  public double triangular(double low, double peak, double high) {
    if (!(low <= peak && peak <= high && low < high)) {
      throw new IllegalArgumentException(
          "a triangle from " + low + " to " + high + " has no peak at " + peak);
    }
    double share = source.nextDouble();
    double width = high - low;
    double rise = peak - low;
    return share * width < rise
        ? low + Math.sqrt(share * width * rise)
        : high - Math.sqrt((1 - share) * width * (high - peak));
  }
}
