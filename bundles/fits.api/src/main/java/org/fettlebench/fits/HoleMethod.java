package org.fettlebench.fits;

import java.util.List;
import org.fettlebench.tables.Source;

/**
 * A way of placing a hole.
 *
 * @param id as written in files, such as {@code scribe-and-dot}
 * @param title for people
 * @param steps in order, in words
 * @param sigmaPerAxisMm standard deviation of the position error along x and along y
 * @param source of that figure
 */
public record HoleMethod(
    String id, String title, List<String> steps, double sigmaPerAxisMm, Source source) {
  /** Copies what could change, refuses a spread that is not positive. */
  public HoleMethod {
    steps = List.copyOf(steps);
    if (!(sigmaPerAxisMm > 0 && Double.isFinite(sigmaPerAxisMm))) {
      throw new SeatException("method " + id + ": sigma " + sigmaPerAxisMm + " mm is not above 0");
    }
  }

  /**
   * Returns the radius of position error not exceeded at a confidence: sigma sqrt(-2 ln(1 - c)),
   * the Rayleigh quantile of a round bivariate normal error.
   *
   * @param confidence between 0 and 1, both excluded
   */
  public double errorRadiusMm(double confidence) {
    if (!(confidence > 0 && confidence < 1)) {
      throw new SeatException("confidence " + confidence + " is outside 0 to 1");
    }
    return sigmaPerAxisMm * Math.sqrt(-2 * Math.log1p(-confidence));
  }
}
