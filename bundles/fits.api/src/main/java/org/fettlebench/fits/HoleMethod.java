package org.fettlebench.fits;

import java.math.BigDecimal;
import java.util.List;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;

/**
 * A way of placing a hole.
 *
 * @param id as written in files, such as {@code scribe-and-dot}
 * @param title for people
 * @param steps in order, in words
 * @param law where its holes land: the sum of what the steps bring
 * @param source of the method and, where its parts have none of their own, of its figures
 */
public record HoleMethod(
    String id, String title, List<String> steps, PositionLaw law, Source source) {
  /** What a single law is the law of, when the steps have none of their own. */
  public static final String WHOLE = "the whole method";

  /** Copies what could change. */
  public HoleMethod {
    steps = List.copyOf(steps);
  }

  /**
   * Makes a method of which only the whole error is known, normal and the same along x and y.
   *
   * @param sigmaPerAxisMm standard deviation along x and along y
   * @throws SeatException if the spread is not above 0
   */
  public HoleMethod(
      String id, String title, List<String> steps, double sigmaPerAxisMm, Source source) {
    this(id, title, steps, whole(id, sigmaPerAxisMm, source), source);
  }

  private static PositionLaw whole(String id, double sigmaMm, Source source) {
    if (!(sigmaMm > 0 && Double.isFinite(sigmaMm))) {
      throw new SeatException("method " + id + ": sigma " + sigmaMm + " mm is not above 0");
    }
    return PositionLaw.round(WHOLE, sigmaMm, source);
  }

  /** Returns the same method with another law, such as one that was measured. */
  public HoleMethod withLaw(PositionLaw other, Source from) {
    return new HoleMethod(id, title, steps, other, from);
  }

  /**
   * Returns the standard deviation of the position error per axis: the root of the mean of the
   * variances along x and along y, without an offset.
   */
  public double sigmaPerAxisMm() {
    return law.sigmaPerAxisMm();
  }

  /**
   * Returns the radius of position error not exceeded at a confidence: for a round normal error
   * sigma sqrt(-2 ln(1 - c)), else by integration.
   *
   * @param confidence between 0 and 1, both excluded
   * @throws SeatException if the confidence is outside
   */
  public double errorRadiusMm(double confidence) {
    return law.radiusMm(confidence);
  }

  /**
   * Returns what that radius means, in words: the way, the share of holes, and the standing of its
   * figure where that is less than published.
   *
   * @param confidence between 0 and 1, both excluded
   */
  public String errorMeans(double confidence) {
    String share =
        BigDecimal.valueOf(confidence).movePointRight(2).stripTrailingZeros().toPlainString();
    return title
        + ", "
        + share
        + " % of holes"
        + (measured() || source.doubt().isPresent() ? " (" + standing() + ")" : "");
  }

  /**
   * Returns how far its figures can be trusted, in words: whose holes were measured and how many,
   * else the standing of the table's figure.
   */
  public String standing() {
    return measured() ? source.citation() : source.standing().words();
  }

  private boolean measured() {
    return source.standing() == Standing.MEASURED && source.citation().startsWith("measured by ");
  }
}
