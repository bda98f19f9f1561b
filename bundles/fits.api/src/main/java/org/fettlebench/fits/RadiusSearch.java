package org.fettlebench.fits;

/** Finds the radius that holds an asked share of the errors. */
final class RadiusSearch {
  /** A radius is found to this share of the whole reach: finer than the figures it comes from. */
  private static final double FINE = 1e-9;

  private RadiusSearch() {}

  /** Closes in by regula falsi, halving the weight of an end that stays (the Illinois rule). */
  static double radiusMm(Mixture law, double confidence) {
    double low = 0;
    double high = law.reach();
    double below = -confidence;
    double above = 1 - confidence;
    double fine = FINE * high;
    int side = 0;
    while (high - low > fine) {
      double middle = low + (high - low) * (-below / (above - below));
      // A step that hardly moves would take for ever where the law has a jump.
      middle = Math.min(high - fine / 4, Math.max(low + fine / 4, middle));
      double off = law.chance(CircleIntegral.of(middle)) - confidence;
      if (off >= 0) {
        high = middle;
        above = off;
        below = side == 1 ? below / 2 : below;
        side = 1;
      } else {
        low = middle;
        below = off;
        above = side == -1 ? above / 2 : above;
        side = -1;
      }
    }
    return high;
  }
}
