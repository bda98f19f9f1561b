package org.fettlebench.threads.internal.limits;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;
import org.fettlebench.measure.Length;
import org.fettlebench.threads.ScrewThread;

/**
 * The sizes that the formulas of ASME B1.1 work on, in inches.
 *
 * @param thread what they are of
 * @param major basic major diameter, to 0.0001 in as the standard's worked examples begin
 * @param pitch exact, from the threads per inch
 * @param engagement length of engagement in the formula
 * @param usualEngagement whether that is the standard's own
 */
record UnifiedSizes(
    ScrewThread thread, double major, double pitch, double engagement, boolean usualEngagement) {
  // Coarse and fine threads, and the constant pitches 4, 6 and 8, engage over one diameter; all
  // others over nine pitches (ASME B1.1).
  private static final Set<String> OVER_ONE_DIAMETER = Set.of("UNC", "UNF");

  static UnifiedSizes of(ScrewThread thread, Optional<Length> engagement) {
    double major = Rounding.halfUp(thread.major().inches(), 4);
    double pitch =
        thread
            .threadsPerInch()
            .map(tpi -> 1 / Double.parseDouble(tpi))
            .orElse(thread.pitch().inches());
    double usual = overOneDiameter(thread, pitch) ? major : 9 * pitch;
    return new UnifiedSizes(
        thread, major, pitch, engagement.map(Length::inches).orElse(usual), engagement.isEmpty());
  }

  private static boolean overOneDiameter(ScrewThread thread, double pitch) {
    return OVER_ONE_DIAMETER.contains(thread.series())
        || thread.series().equals("UN") && 1 / pitch < 8.5;
  }

  /** 0.0015 D^(1/3) + 0.0015 LE^(1/2) + 0.015 p^(2/3), to six places. */
  double tolerance2A() {
    return Rounding.halfUp(
        0.0015 * Math.cbrt(major)
            + 0.0015 * Math.sqrt(engagement)
            + 0.015 * Math.cbrt(pitch * pitch),
        6);
  }

  /** Basic effective diameter, to 0.0001 in. */
  double effective() {
    return Rounding.halfUp(major - 0.64951905 * pitch, 4);
  }

  /**
   * Tolerance of the nut's minor diameter: 0.05 p^(2/3) + 0.03 p/D - 0.002, never above 0.394 p;
   * class 3B never below 0.23 p - 1.5 p^2, or 0.12 p coarser than 13 threads per inch; classes 1B
   * and 2B never below 0.25 p - 0.4 p^2, which from 1/4 in up stands alone, or 0.15 p coarser than
   * 4 threads per inch.
   */
  double minorTolerance(boolean class3B) {
    double byDiameter =
        Math.min(0.05 * Math.cbrt(pitch * pitch) + 0.03 * pitch / major - 0.002, 0.394 * pitch);
    // A little slack, since a pitch without threads per inch is held to 1 nm.
    double slack = 1e-6;
    double usual = 0.25 * pitch - 0.4 * pitch * pitch;
    double tolerance;
    if (class3B) {
      double floor = pitch <= 1 / 13.0 + slack ? 0.23 * pitch - 1.5 * pitch * pitch : 0.12 * pitch;
      tolerance = Math.max(byDiameter, floor);
    } else if (major < 0.25) {
      tolerance = Math.max(byDiameter, usual);
    } else {
      tolerance = pitch > 0.25 + slack ? 0.15 * pitch : usual;
    }
    return tolerance;
  }

  boolean hasThreadsPerInch(BigDecimal tpi) {
    return Math.abs(1 / pitch - tpi.doubleValue()) < 1e-3;
  }

  String engagementWords() {
    return usualEngagement
        ? (overOneDiameter(thread, pitch) ? "one diameter" : "nine pitches")
        : engagement + " in";
  }
}
