package org.fettlebench.fits.internal;

/** All tolerances and limits of the seat check, each with its reason. */
final class Tolerances {
  /** Closer than this is the same place: far below anything measured, far above rounding. */
  static final double SAME_MM = 1e-9;

  /** Largest co-ordinate or figure taken: a hundred metres is no model and still exact to 1e-9. */
  static final double LARGEST_MM = 100_000;

  /** Shortest side of a seat taken: a hundredth of a micrometre is a slip of the unit. */
  static final double SMALLEST_MM = 1e-5;

  /**
   * Segments per quarter of the arcs in the allowed region; for drawing only, never for figures.
   */
  static final int ARC_SEGMENTS = 16;

  /** A listed spanner goes on a hexagon whose size differs by this at most: sizes are nominal. */
  static final double SAME_HEXAGON_MM = 0.15;

  /** Where the coarse search ends, relative to the size of the seat. */
  static final double COARSE = 1.0 / 128;

  private Tolerances() {}
}
