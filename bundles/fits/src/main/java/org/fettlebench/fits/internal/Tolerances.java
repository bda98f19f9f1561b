package org.fettlebench.fits.internal;

import org.fettlebench.fits.SeatAnswer;

/** All tolerances and limits of the seat check, each with its reason. */
final class Tolerances {
  /** Closer than this is the same place: far below anything measured, far above rounding. */
  static final double SAME_MM = 1e-9;

  /** Largest co-ordinate or figure taken: a hundred metres is no model and still exact to 1e-9. */
  static final double LARGEST_MM = 100_000;

  /** Shortest side of a seat taken: a hundredth of a micrometre is a slip of the unit. */
  static final double SMALLEST_MM = 1e-5;

  /** A listed spanner goes on a hexagon whose size differs by this at most: sizes are nominal. */
  static final double SAME_HEXAGON_MM = 0.15;

  /** Where the coarse search ends, relative to the size of the seat. */
  static final double COARSE = 1.0 / 128;

  /** A quarter looks round from here on, and is fine enough for any model from there on. */
  private static final int LEAST_SEGMENTS = 8;

  private static final int MOST_SEGMENTS = 512;

  private Tolerances() {}

  /**
   * Returns into how many chords or tangents a quarter of an arc of the allowed region is broken,
   * so that none is farther from its arc than {@link SeatAnswer#REGION_ERROR_MM} says. Figures do
   * not come from these.
   */
  static int arcSegments(double radiusMm) {
    double share = SeatAnswer.REGION_ERROR_MM / Math.max(radiusMm, SeatAnswer.REGION_ERROR_MM);
    double half = Math.acos(1 - share);
    return (int) Math.min(MOST_SEGMENTS, Math.max(LEAST_SEGMENTS, Math.ceil(Math.PI / 4 / half)));
  }
}
