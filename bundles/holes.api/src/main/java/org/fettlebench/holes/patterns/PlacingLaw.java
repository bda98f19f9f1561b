package org.fettlebench.holes.patterns;

import java.util.List;
import java.util.Optional;
import org.fettlebench.fits.ErrorLaw;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.PositionLaw;
import org.fettlebench.tables.Source;

/**
 * How the holes of a part land round where they should be, each on its own.
 *
 * @param law of each hole; empty when the holes are exactly where they should be
 * @param means what it is and how far to trust it, in words, such as "drill through a jig (common
 *     practice, no source)"
 */
public record PlacingLaw(Optional<PositionLaw> law, String means) {

  /** Returns the law of a way of placing holes. */
  public static PlacingLaw of(HoleMethod method) {
    return new PlacingLaw(
        Optional.of(method.law()), method.title() + " (" + method.standing() + ")");
  }

  /** Returns a normal error, the same along x and y, by its standard deviation per axis. */
  public static PlacingLaw normal(double sigmaMm, String means, Source source) {
    Require.size("standard deviation of the placing", sigmaMm);
    return new PlacingLaw(Optional.of(PositionLaw.round(means, sigmaMm, source)), means);
  }

  /** Returns an error that is anywhere within so much of the place, along x and along y alike. */
  public static PlacingLaw within(double halfMm, String means, Source source) {
    Require.size("bound of the placing", halfMm);
    PositionLaw.Part part =
        new PositionLaw.Part(means, new ErrorLaw.Bounded(halfMm, halfMm), source);
    return new PlacingLaw(Optional.of(new PositionLaw(0, 0, List.of(part))), means);
  }

  /** Returns the law of holes that are exactly where they should be. */
  public static PlacingLaw exact() {
    return new PlacingLaw(Optional.empty(), "exactly in place");
  }

  /** Returns the standard deviation per axis, in millimetres. */
  public double sigmaPerAxisMm() {
    return law.map(PositionLaw::sigmaPerAxisMm).orElse(0.0);
  }
}
