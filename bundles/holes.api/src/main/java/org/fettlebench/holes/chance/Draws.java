package org.fettlebench.holes.chance;

import org.osgi.annotation.versioning.ProviderType;

/** Random figures for one trial after another, out of one seed. */
@ProviderType
public interface Draws {
  /** Returns a figure of which each between both ends is as likely. */
  double rectangular(double low, double high);

  /** Returns a normal figure. */
  double normal(double mean, double standardDeviation);

  /** Returns a figure of the triangular law: likeliest at the peak, never beyond the ends. */
  double triangular(double low, double peak, double high);
}
