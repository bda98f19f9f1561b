package org.fettlebench.holes.internal.chance;

import java.util.List;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.holes.chance.MethodEstimate;
import org.fettlebench.holes.chance.MethodEstimates;
import org.fettlebench.measure.Point;
import org.osgi.service.component.annotations.Component;

/** Estimates spreads; all the work is in {@link SpreadEstimate}. */
@Component(service = MethodEstimates.class)
public final class EstimateService implements MethodEstimates {
  private static final double MOST_PRIOR_HOLES = 1000;

  @Override
  public MethodEstimate estimate(
      HoleMethod before, List<Point> errors, double priorHoles, String measuredBy) {
    if (!(priorHoles > 0 && priorHoles <= MOST_PRIOR_HOLES)) {
      throw new IllegalArgumentException(
          "what was known before cannot count as " + priorHoles + " holes; say 0 to 1000");
    }
    return new SpreadEstimate(before, errors, priorHoles).result(measuredBy);
  }
}
