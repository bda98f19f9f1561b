package org.fettlebench.holes.patterns;

import java.util.OptionalDouble;

/** Refuses figures out of range, in the positive form so that what is no number is refused too. */
final class Require {
  private static final double LARGEST_MM = 100_000;

  private Require() {}

  static void size(String what, double millimetres) {
    if (!(millimetres > 0 && millimetres <= LARGEST_MM)) {
      throw outside(what, millimetres, "above 0 to 100000 mm");
    }
  }

  static void notNegative(String what, double millimetres) {
    if (!(millimetres >= 0 && millimetres <= LARGEST_MM)) {
      throw outside(what, millimetres, "0 to 100000 mm");
    }
  }

  /** Refuses a plain hole that the fastener does not enter, wherever it lies. */
  static void passes(String what, OptionalDouble clearanceMm, double fastenerMm) {
    if (clearanceMm.isPresent() && !(clearanceMm.getAsDouble() >= fastenerMm)) {
      throw new IllegalArgumentException(
          what
              + ", "
              + clearanceMm.getAsDouble()
              + " mm, is smaller than the fastener, "
              + fastenerMm
              + " mm, which enters nowhere; open it out, or check both sizes");
    }
  }

  static void count(String what, int number, int least, int most) {
    if (!(number >= least && number <= most)) {
      throw new IllegalArgumentException(
          what + " " + number + " is outside " + least + " to " + most);
    }
  }

  private static IllegalArgumentException outside(String what, double value, String range) {
    return new IllegalArgumentException(what + " " + value + " mm is outside " + range);
  }
}
