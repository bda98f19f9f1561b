package org.fettlebench.tooling.internal.risk;

import org.fettlebench.tooling.risk.TapJob;

/** The mathematics: torques in newton metres out of lengths in millimetres and stresses in MPa. */
final class TapTorque {
  // 24 of the triangle's area and lever, 1000 from newton millimetres.
  private static final double DIVISOR = 24_000;

  /** A thread whose pitch is below this part of the BA law's counts as fine: common practice. */
  private static final double FINE_BELOW = 0.88;

  private TapTorque() {}

  /** tan(θ/2) kc K (D − d)² (D + 2 d) / 24000, of all the lead's teeth together. */
  static double cutting(TapJob job, double resistanceMpa, double coefficient) {
    double major = job.thread().major().millimetres();
    double hole = job.hole().millimetres();
    double half = Math.toRadians(job.thread().form().includedAngleDegrees() / 2);
    return Math.tan(half)
        * resistanceMpa
        * coefficient
        * (major - hole)
        * (major - hole)
        * (major + 2 * hole)
        / DIVISOR;
  }

  /** π / 16 c³ τ: torsion of a round bar. */
  static double breaking(double coreMm, double strengthMpa) {
    return Math.PI / 16 * coreMm * coreMm * coreMm * strengthMpa / 1000;
  }

  /**
   * Returns the part of the triangle that is cut at once in metal thinner than the lead: the teeth
   * that start the cut take its wide foot, so that it is 1 − (1 − t/L)².
   */
  static double share(TapJob job, double leadPitches) {
    double lead = leadPitches * job.thread().pitch().millimetres();
    double thickness = job.depth().millimetres();
    if (!job.through() || thickness >= lead) {
      return 1;
    }
    double left = 1 - thickness / lead;
    return 1 - left * left;
  }

  /**
   * Returns whether a thread is fine for its size: its pitch is well below (D/6)^(1/1.2), the law
   * of BA, which ISO coarse pitches follow within a tenth to 36 mm.
   */
  static boolean fine(TapJob job) {
    double law = Math.pow(job.thread().major().millimetres() / 6, 1 / 1.2);
    return job.thread().pitch().millimetres() < FINE_BELOW * law;
  }
}
