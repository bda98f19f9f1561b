package org.fettlebench.holes.internal.chance;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.FDistribution;
import org.fettlebench.fits.ErrorLaw;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.PositionLaw;
import org.fettlebench.holes.chance.MethodEstimate;
import org.fettlebench.holes.chance.MethodEstimate.Offset;
import org.fettlebench.holes.chance.MethodEstimate.Spread;
import org.fettlebench.measure.Point;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;

/**
 * The arithmetic of one estimate; {@link org.fettlebench.holes.chance.MethodEstimates} tells it.
 */
final class SpreadEstimate {
  /** The usual one chance in twenty. */
  private static final double LUCK = 0.05;

  /** Fewer holes tell nothing of an offset or of a difference between the axes. */
  private static final int FEWEST = 3;

  private final HoleMethod before;
  private final double priorHoles;
  private final int holes;
  private final double meanX;
  private final double meanY;
  private final double aboutMeanX;
  private final double aboutMeanY;

  SpreadEstimate(HoleMethod before, List<Point> errors, double priorHoles) {
    this.before = before;
    this.priorHoles = priorHoles;
    this.holes = errors.size();
    this.meanX = errors.stream().mapToDouble(Point::xMm).average().orElse(0);
    this.meanY = errors.stream().mapToDouble(Point::yMm).average().orElse(0);
    this.aboutMeanX = squares(errors, error -> error.xMm() - meanX);
    this.aboutMeanY = squares(errors, error -> error.yMm() - meanY);
  }

  private static double squares(List<Point> errors, ToDoubleFunction<Point> off) {
    return errors.stream().mapToDouble(off).map(each -> each * each).sum();
  }

  MethodEstimate result(String measuredBy) {
    boolean together = alikeBefore() && !differ();
    Optional<Offset> offset = offset(together);
    // Taking the mean from the same holes costs one of them.
    double counting = offset.isPresent() ? holes - 1 : holes;
    double squaresX = aboutMeanX + (offset.isPresent() ? 0 : holes * meanX * meanX);
    double squaresY = aboutMeanY + (offset.isPresent() ? 0 : holes * meanY * meanY);
    Variances variances = variances(together, counting, squaresX, squaresY);
    Spread x = variances.spreadX();
    Spread y = variances.spreadY();
    HoleMethod now =
        holes == 0 ? before : before.withLaw(law(x, y, offset, measuredBy), source(measuredBy));
    return new MethodEstimate(before, now, holes, priorHoles, x, y, together, offset);
  }

  private PositionLaw law(Spread x, Spread y, Optional<Offset> offset, String measuredBy) {
    return new PositionLaw(
        offset.map(Offset::xMm).orElse(0.0),
        offset.map(Offset::yMm).orElse(0.0),
        List.of(
            new PositionLaw.Part(
                HoleMethod.WHOLE,
                new ErrorLaw.Normal(x.sigmaMm(), y.sigmaMm()),
                source(measuredBy))));
  }

  private Source source(String measuredBy) {
    return new Source(
        "measured by " + measuredBy + ", " + holes + (holes == 1 ? " hole" : " holes"),
        Standing.MEASURED);
  }

  /** Variances of both axes with the degrees of freedom that stand behind each. */
  private record Variances(double x, double y, double freedom) {
    Spread spreadX() {
      return spread(x);
    }

    Spread spreadY() {
      return spread(y);
    }

    private Spread spread(double variance) {
      ChiSquaredDistribution law = ChiSquaredDistribution.of(freedom);
      double tail = (1 - MethodEstimate.CREDIBILITY) / 2;
      double sum = variance * freedom;
      return new Spread(
          Math.sqrt(variance),
          Math.sqrt(sum / law.inverseSurvivalProbability(tail)),
          Math.sqrt(sum / law.inverseCumulativeProbability(tail)));
    }
  }

  private Variances variances(boolean together, double counting, double squaresX, double squaresY) {
    double weight = priorHoles + counting;
    double x = (priorHoles * square(before.law().sigmaXMm()) + squaresX) / weight;
    double y = (priorHoles * square(before.law().sigmaYMm()) + squaresY) / weight;
    double both = (x + y) / 2;
    return together ? new Variances(both, both, 2 * weight) : new Variances(x, y, weight);
  }

  private static double square(double sigma) {
    return sigma * sigma;
  }

  private boolean alikeBefore() {
    return before.law().sigmaXMm() == before.law().sigmaYMm();
  }

  /** F test of both measured variances about their means, both ways. */
  private boolean differ() {
    if (holes < FEWEST || aboutMeanX == 0 && aboutMeanY == 0) {
      return false;
    }
    double greater = Math.max(aboutMeanX, aboutMeanY);
    double less = Math.min(aboutMeanX, aboutMeanY);
    FDistribution law = FDistribution.of(holes - 1, holes - 1);
    return less == 0 || 2 * law.survivalProbability(greater / less) < LUCK;
  }

  private Optional<Offset> offset(boolean together) {
    if (holes < FEWEST) {
      return Optional.empty();
    }
    Variances about = variances(together, holes - 1, aboutMeanX, aboutMeanY);
    double statistic = holes * (meanX * meanX / about.x() + meanY * meanY / about.y()) / 2;
    double luck = FDistribution.of(2, about.freedom()).survivalProbability(statistic);
    return luck < LUCK ? Optional.of(new Offset(meanX, meanY, luck)) : Optional.empty();
  }
}
