package org.fettlebench.fits;

import java.util.function.DoubleUnaryOperator;

/** Integration over a smooth piece by Gauss and Legendre's eight points: exact to degree 15. */
final class Gauss {
  // Roots of the eighth Legendre polynomial and their weights: NIST Digital Library of Mathematical
  // Functions, table 3.5.2; a test holds them to the integrals of powers.
  private static final double[] AT = {
    0.183434642495649804939,
    0.525532409916328985818,
    0.796666477413626739592,
    0.960289856497536231684
  };
  private static final double[] WEIGHT = {
    0.362683783378361982965,
    0.313706645877887287338,
    0.222381034453374470544,
    0.101228536290376259153
  };

  private Gauss() {}

  /** Returns the integral of a function from one place to another. */
  static double integral(DoubleUnaryOperator function, double from, double to) {
    double middle = (from + to) / 2;
    double half = (to - from) / 2;
    double sum = 0;
    for (int i = 0; i < AT.length; i++) {
      double step = half * AT[i];
      sum +=
          WEIGHT[i]
              * (function.applyAsDouble(middle - step) + function.applyAsDouble(middle + step));
    }
    return sum * half;
  }
}
