package org.fettlebench.holes.correct;

import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Point;

/**
 * Where the hole is, as the readings say.
 *
 * @param question what was read
 * @param centre the place that fits the readings best (least squares, each weighed by its
 *     uncertainty)
 * @param spread uncertainty of that place
 * @param withinMm radius that holds the true centre at 95 per cent or better
 * @param misfits how far each reading is from what it would be at that centre, in their order
 * @param agreement whether the readings agree within their uncertainties
 * @param other the other place that would fit as well, when two readings leave two
 * @param cautions what weakens the result, for people
 */
public record MeasuredHole(
    MeasuringQuestion question,
    Point centre,
    Spread spread,
    double withinMm,
    List<Misfit> misfits,
    Agreement agreement,
    Optional<Point> other,
    List<String> cautions) {
  /** Copies what could change. */
  public MeasuredHole {
    misfits = List.copyOf(misfits);
    cautions = List.copyOf(cautions);
  }

  /**
   * Variances and covariance of the centre's co-ordinates.
   *
   * @param xxMm2 variance along x, mm²
   * @param xyMm2 covariance, mm²
   * @param yyMm2 variance along y, mm²
   */
  public record Spread(double xxMm2, double xyMm2, double yyMm2) {
    /** Returns the greatest standard uncertainty in any direction, mm. */
    public double greatestMm() {
      double half = Math.hypot((xxMm2 - yyMm2) / 2, xyMm2);
      return Math.sqrt((xxMm2 + yyMm2) / 2 + half);
    }

    /** Returns the standard uncertainty along x, mm. */
    public double alongXMm() {
      return Math.sqrt(xxMm2);
    }

    /** Returns the standard uncertainty along y, mm. */
    public double alongYMm() {
      return Math.sqrt(yyMm2);
    }
  }

  /**
   * How a reading fits.
   *
   * @param reading the reading
   * @param misfitMm what was read less what should have been read at the fitted centre
   * @param standardMm standard uncertainty of the reading, with the pin's shake in the hole
   */
  public record Misfit(Reading reading, double misfitMm, double standardMm) {}

  /** Do the readings agree? */
  public enum Agreement {
    /** There are no more readings than needed, so none checks another. */
    UNCHECKED,
    /** They agree within their uncertainties. */
    AGREE,
    /** They contradict each other. */
    CONTRADICT
  }
}
