package org.fettlebench.holes.chance;

import java.util.List;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.measure.Point;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Estimates how widely the holes of a method spread, from what was known before and from measured
 * errors.
 *
 * <p>The variance has an inverse-gamma prior: shape half the degrees of freedom of so many holes,
 * scale so that it says what was known before. With the squares of n measured errors the estimate
 * is the root of the weighted mean of both variances, (w before^2 + sum of squares) / (w + n), and
 * the credible interval follows from the chi-square distribution. Both axes are taken together when
 * they were alike before and the measured ones do not differ more than luck would have it (F test
 * at 5 per cent). An offset is one when Hotelling's test with that spread says so at 5 per cent,
 * from three holes on; the spread is then about it, which costs one hole.
 */
@ProviderType
public interface MethodEstimates {
  /**
   * What was known before counts as this many measured holes unless the caller says otherwise:
   * common practice, no source. Three holes that are out twice as far as expected then raise sigma
   * by a third, not to the double.
   */
  double USUAL_PRIOR_HOLES = 10;

  /**
   * Returns what errors say of a method.
   *
   * @param before the method as known before
   * @param errors measured errors along x and y
   * @param priorHoles how many holes that counts for; above 0, at most 1000
   * @param measuredBy for the source of the estimate, such as {@code the club}
   * @throws IllegalArgumentException if the weight is out of its range
   */
  MethodEstimate estimate(
      HoleMethod before, List<Point> errors, double priorHoles, String measuredBy);
}
