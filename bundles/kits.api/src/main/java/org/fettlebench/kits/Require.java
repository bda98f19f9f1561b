package org.fettlebench.kits;

import org.fettlebench.measure.Length;

/** Refuses what a kit cannot be, with what is wrong and the range allowed. */
final class Require {
  private Require() {}

  static void name(String what, String value) {
    if (value.isBlank()) {
      throw new IllegalArgumentException(what + " is blank: give it a name");
    }
  }

  static void positive(String what, Length value) {
    if (!value.isPositive()) {
      throw new IllegalArgumentException(what + " " + value + " is not above 0 mm");
    }
  }

  static void atLeast(String what, int value, int least) {
    if (!(value >= least)) {
      throw new IllegalArgumentException(what + " " + value + " is below " + least);
    }
  }

  static void between(String what, double value, double above, double most) {
    if (!(value > above && value <= most)) {
      throw new IllegalArgumentException(
          what + " " + value + " is outside the range above " + above + " to " + most);
    }
  }
}
