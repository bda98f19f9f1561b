package org.fettlebench.holes.correct;

/** Guards of the figures that come in, in the positive form so that not-a-number is refused. */
final class Require {
  /** As far as any bench goes: the same bound as for seats. */
  private static final double LARGEST_MM = 100_000;

  private Require() {}

  static void positive(String what, double mm) {
    if (!(mm > 0 && mm <= LARGEST_MM)) {
      throw new HoleException(what + " " + mm + " mm is not above 0 and at most 100000 mm");
    }
  }

  static void notNegative(String what, double mm) {
    if (!(mm >= 0 && mm <= LARGEST_MM)) {
      throw new HoleException(what + " " + mm + " mm is outside 0 to 100000 mm");
    }
  }
}
