package org.fettlebench.measure;

/**
 * Every tolerance of the code, each with its reason. A bundle that must call two calculated figures
 * equal takes its tolerance from here, or adds it here.
 */
public final class Tolerances {
  /**
   * Distances in geometry that differ by less are the same: 1 nm, the step of {@link Length}. Far
   * above the rounding of doubles at workshop sizes (1e-13 mm at 1 m), far below what anyone can
   * measure, so that a head that just fits by its figures is not refused by rounding.
   */
  public static final double GEOMETRY_SLACK_MM = 1e-6;

  /**
   * Arcs are broken into straight pieces that leave the true arc by no more: 1 micron, a tenth of
   * the hundredth of a millimetre that is shown.
   */
  public static final double ARC_DEPARTURE_MM = 1e-3;

  /** The best centre of a seat is searched to this: 1 micron, a tenth of what is shown. */
  public static final double CENTRE_SEARCH_MM = 1e-3;

  /**
   * Directions that differ by less are parallel: over 1 m the ends part by the 1 nm of {@link
   * #GEOMETRY_SLACK_MM}.
   */
  public static final double PARALLEL_RADIANS = 1e-9;

  private Tolerances() {}

  /** Returns whether two distances are the same but for {@link #GEOMETRY_SLACK_MM}. */
  public static boolean sameMm(double oneMm, double otherMm) {
    return Math.abs(oneMm - otherMm) <= GEOMETRY_SLACK_MM;
  }
}
