package org.fettlebench.holes.patterns;

/**
 * Zones of position for one fastener: every T is a DIAMETER of a zone, twice the radius of error.
 *
 * <p>Source: ASME Y14.5, appendix on formulas for positional tolerancing: floating H = F + T; fixed
 * H = F + T1 + T2; fixed without a projected zone H = F + T1 + T2 (1 + 2 P / D). H is the least
 * clearance hole, F the largest fastener, P the greatest thickness passed (or projection of the
 * fastener), D the least depth engaged.
 */
public final class PositionZones {
  private PositionZones() {}

  /**
   * Returns the zone of every clearance hole when all parts have clearance, H - F; negative when
   * the fastener does not pass.
   */
  public static double floatingMm(double holeMm, double fastenerMm) {
    Require.size("clearance hole", holeMm);
    Require.size("fastener diameter", fastenerMm);
    return holeMm - fastenerMm;
  }

  /**
   * Returns how much a tapped hole's own zone counts at the far end of what the fastener passes: 1
   * with a projected zone, 1 + 2 P / D without.
   *
   * @param passedMm thickness passed, or projection of the fastener; 0 or more
   * @param engagedMm depth of thread engaged, above 0
   */
  public static double leaning(double passedMm, double engagedMm) {
    Require.notNegative("thickness passed", passedMm);
    Require.size("depth engaged", engagedMm);
    return 1 + 2 * passedMm / engagedMm;
  }

  /**
   * Returns the zone of each part when both have the same, (H - F) / (1 + leaning).
   *
   * @param leaning 1 with a projected zone, else from {@link #leaning}
   */
  public static double fixedEachMm(double holeMm, double fastenerMm, double leaning) {
    return floatingMm(holeMm, fastenerMm) / (1 + atLeastOne(leaning));
  }

  /** Returns the zone left to the clearance hole, H - F - leaning * T2; negative when none is. */
  public static double fixedClearanceMm(
      double holeMm, double fastenerMm, double tappedZoneMm, double leaning) {
    Require.notNegative("zone of the tapped hole", tappedZoneMm);
    return floatingMm(holeMm, fastenerMm) - atLeastOne(leaning) * tappedZoneMm;
  }

  /** Returns the zone left to the tapped hole, (H - F - T1) / leaning; negative when none is. */
  public static double fixedTappedMm(
      double holeMm, double fastenerMm, double clearanceZoneMm, double leaning) {
    Require.notNegative("zone of the clearance hole", clearanceZoneMm);
    return (floatingMm(holeMm, fastenerMm) - clearanceZoneMm) / atLeastOne(leaning);
  }

  /** Returns the least clearance hole for given zones, F + T1 + leaning * T2; T2 = 0 floating. */
  public static double holeMm(
      double fastenerMm, double clearanceZoneMm, double tappedZoneMm, double leaning) {
    Require.size("fastener diameter", fastenerMm);
    Require.notNegative("zone of the clearance hole", clearanceZoneMm);
    Require.notNegative("zone of the tapped hole", tappedZoneMm);
    return fastenerMm + clearanceZoneMm + atLeastOne(leaning) * tappedZoneMm;
  }

  /**
   * Returns what a hole larger than its least size adds to its zone: the growth of the hole that is
   * left when it stands out of square by so much (the actual mating envelope), never below 0.
   *
   * @param leastHoleMm the least size (maximum material)
   * @param actualHoleMm as measured
   * @param outOfSquareMm orientation error over the depth; 0 when square
   */
  public static double bonusMm(double leastHoleMm, double actualHoleMm, double outOfSquareMm) {
    Require.size("least hole", leastHoleMm);
    Require.size("actual hole", actualHoleMm);
    Require.notNegative("error of squareness", outOfSquareMm);
    return Math.max(0, actualHoleMm - outOfSquareMm - leastHoleMm);
  }

  /**
   * Returns the DIAMETER of the zone that a hole out by dx and dy just lies in, 2 sqrt(dx^2 +
   * dy^2): twice its radius of error.
   */
  public static double zoneOfErrorMm(double dxMm, double dyMm) {
    return 2 * Math.hypot(dxMm, dyMm);
  }

  /** Returns the diameter of the round zone about a square zone of a width: width * sqrt(2). */
  public static double roundAboutSquareMm(double widthMm) {
    Require.notNegative("width of the square zone", widthMm);
    return widthMm * Math.sqrt(2);
  }

  /**
   * Returns the largest clearance hole under a head that still bears all round when the fastener
   * lies against one side of it, (fastener + head) / 2, the head by its flats.
   *
   * @param fastenerMm diameter of the fastener
   * @param headMm across flats, or the diameter of a round head
   */
  public static double largestUnderHeadMm(double fastenerMm, double headMm) {
    Require.size("fastener diameter", fastenerMm);
    Require.size("head", headMm);
    return (fastenerMm + headMm) / 2;
  }

  private static double atLeastOne(double leaning) {
    if (!(leaning >= 1 && Double.isFinite(leaning))) {
      throw new IllegalArgumentException("leaning " + leaning + " is below 1");
    }
    return leaning;
  }
}
