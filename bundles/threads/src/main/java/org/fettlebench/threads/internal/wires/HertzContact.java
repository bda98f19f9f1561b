package org.fettlebench.threads.internal.wires;

/**
 * Two round bars of one material that lie across each other at right angles and are pressed
 * together: Hertz's elliptical contact (K. L. Johnson, Contact Mechanics, 1985, chapter 4, from
 * memory). Lengths in millimetres, forces in newtons, moduli in newtons per square millimetre.
 */
final class HertzContact {
  /** Ellipses longer than this by the shorter axis are as good as lines. */
  private static final double LEAST_AXES_RATIO = 1e-6;

  private HertzContact() {}

  /**
   * Returns by how much the bars come nearer.
   *
   * @param forceN across the contact
   * @param oneRadiusMm of one bar
   * @param otherRadiusMm of the other
   * @param modulus of the contact: E / (2 (1 - nu^2)) for two bars of one material
   */
  static double approachMm(
      double forceN, double oneRadiusMm, double otherRadiusMm, double modulus) {
    double larger = Math.max(oneRadiusMm, otherRadiusMm);
    double smaller = Math.min(oneRadiusMm, otherRadiusMm);
    double axes = axesRatio(larger / smaller);
    double squared = 1 - axes * axes;
    double k = firstKind(axes);
    double e = secondKind(axes);
    double meanRadius = Math.sqrt(oneRadiusMm * otherRadiusMm);
    // As the ellipse becomes a circle, both brackets over e^2 become pi / 4.
    double brackets =
        squared < 1e-9 ? Math.PI / 4 : Math.sqrt((e / (axes * axes) - k) * (k - e)) / squared;
    double cubed =
        3 * forceN * meanRadius / (4 * modulus) * 4 / Math.PI * Math.pow(axes, 1.5) * brackets;
    double longAxis = Math.cbrt(cubed) / Math.sqrt(axes);
    return 3 * forceN / (2 * Math.PI * longAxis * modulus) * k;
  }

  /** The shorter axis over the longer, from the radii's ratio, by halving. */
  private static double axesRatio(double radii) {
    double low = LEAST_AXES_RATIO;
    double high = 1;
    for (int step = 0; step < 200; step++) {
      double middle = (low + high) / 2;
      if (radiiRatio(middle) > radii) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  private static double radiiRatio(double axes) {
    double squared = 1 - axes * axes;
    if (squared < 1e-9) {
      return 1;
    }
    double k = firstKind(axes);
    double e = secondKind(axes);
    return (e / (axes * axes) - k) / (k - e);
  }

  /** Complete elliptic integral of the first kind, by the arithmetic-geometric mean. */
  private static double firstKind(double axes) {
    double arithmetic = 1;
    double geometric = axes;
    while (arithmetic - geometric > 1e-15 * arithmetic) {
      double next = (arithmetic + geometric) / 2;
      geometric = Math.sqrt(arithmetic * geometric);
      arithmetic = next;
    }
    return Math.PI / (2 * arithmetic);
  }

  /** Complete elliptic integral of the second kind, by the same mean. */
  private static double secondKind(double axes) {
    double arithmetic = 1;
    double geometric = axes;
    double sum = (1 - axes * axes) / 2;
    double weight = 1;
    for (int step = 0; step < 60 && arithmetic - geometric > 1e-15 * arithmetic; step++) {
      double half = (arithmetic - geometric) / 2;
      double next = (arithmetic + geometric) / 2;
      geometric = Math.sqrt(arithmetic * geometric);
      arithmetic = next;
      sum += weight * half * half;
      weight *= 2;
    }
    return Math.PI / (2 * arithmetic) * (1 - sum);
  }
}
