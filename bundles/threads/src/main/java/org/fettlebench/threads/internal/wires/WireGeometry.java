package org.fettlebench.threads.internal.wires;

import org.fettlebench.threads.ThreadForm;

/** The geometry of a wire in a groove, in any one unit of length. */
record WireGeometry(double halfAngle, ThreadForm form) {
  static WireGeometry of(ThreadForm form) {
    return new WireGeometry(Math.toRadians(form.includedAngleDegrees() / 2), form);
  }

  /** By how much three wires stand out, over the wire: 1 + cosec a. */
  double perWire() {
    return 1 + 1 / Math.sin(halfAngle);
  }

  /** Height of the sharp triangle: (p/2) cot a. */
  double constant(double pitch) {
    return pitch / 2 / Math.tan(halfAngle);
  }

  double best(double pitch) {
    return pitch / (2 * Math.cos(halfAngle));
  }

  /** The wires are flush with the crests when M is the major diameter. */
  double least(double pitch) {
    return (form.effectiveDropPerPitch() * pitch + constant(pitch)) / perWire();
  }

  /** The wire touches where the straight flank ends, half a crest from the middle of the crest. */
  double most(double pitch) {
    return 2 * (0.5 - halfCrestPerPitch()) * pitch / Math.cos(halfAngle);
  }

  /** A flat of p/8, or a rounding as far as it touches the flank. */
  private double halfCrestPerPitch() {
    return switch (form) {
      case ISO, UNIFIED -> 1.0 / 16;
      // Radii: Machinery's Handbook, 31st edition, p2087; BS 93 (Handbook p2115).
      case WHITWORTH -> 0.137329 * Math.cos(halfAngle);
      case BRITISH_ASSOCIATION -> 0.1808 * Math.cos(halfAngle);
    };
  }

  double over(double pitch, double wire, double effective) {
    return effective - constant(pitch) + wire * perWire();
  }

  double effective(double pitch, double wire, double over) {
    return over + constant(pitch) - wire * perWire();
  }

  /** (w/2) tan^2 s cos a cot a, with tan s = p / (pi E). */
  double helixCorrection(double pitch, double wire, double effective) {
    double tangent = pitch / (Math.PI * effective);
    return wire / 2 * tangent * tangent * Math.cos(halfAngle) / Math.tan(halfAngle);
  }
}
