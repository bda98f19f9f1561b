package org.fettlebench.threads.internal.strength;

import org.fettlebench.threads.ThreadForm;

/**
 * Shear areas of threads by FED-STD-H28, for any flank angle: at a diameter beside the effective
 * one the thread is p/2 and twice the difference of radii times the tangent of half the angle wide.
 */
final class ShearArea {
  private ShearArea() {}

  /**
   * Returns the area that shears in the screw's thread, per millimetre engaged, in mm2.
   *
   * @param form flank angle
   * @param pitchMm pitch
   * @param leastEffectiveMm of the screw
   * @param largestMinorMm of the nut: there it shears
   */
  static double ofScrew(
      ThreadForm form, double pitchMm, double leastEffectiveMm, double largestMinorMm) {
    return Math.PI
        * largestMinorMm
        * (0.5 + slope(form) / pitchMm * (leastEffectiveMm - largestMinorMm));
  }

  /**
   * Returns the area that shears in the nut's thread, per millimetre engaged, in mm2.
   *
   * @param form flank angle
   * @param pitchMm pitch
   * @param leastMajorMm of the screw: there it shears
   * @param largestEffectiveMm of the nut
   */
  static double ofNut(
      ThreadForm form, double pitchMm, double leastMajorMm, double largestEffectiveMm) {
    return Math.PI
        * leastMajorMm
        * (0.5 + slope(form) / pitchMm * (leastMajorMm - largestEffectiveMm));
  }

  private static double slope(ThreadForm form) {
    return Math.tan(Math.toRadians(form.includedAngleDegrees() / 2));
  }
}
