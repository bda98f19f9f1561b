package org.fettlebench.castings;

/** Refuses figures out of range, in the positive form so that what is no number is refused too. */
final class Require {
  private static final double LARGEST_MM = 100_000;

  private Require() {}

  static String name(String what, String name) {
    if (name.isBlank()) {
      throw new CastingException(what + " has no name; give it one");
    }
    return name.strip();
  }

  static void place(String what, double millimetres) {
    between(what, millimetres, -LARGEST_MM, LARGEST_MM);
  }

  static void size(String what, double millimetres) {
    if (!(millimetres > 0 && millimetres <= LARGEST_MM)) {
      throw new CastingException(
          what + " " + millimetres + " mm is outside above 0 to 100000 mm; give its size");
    }
  }

  static void notNegative(String what, double millimetres) {
    between(what, millimetres, 0, LARGEST_MM);
  }

  private static void between(String what, double millimetres, double least, double most) {
    if (!(millimetres >= least && millimetres <= most)) {
      throw new CastingException(
          "%s %s mm is outside %.0f to %.0f mm; measure it again"
              .formatted(what, millimetres, least, most));
    }
  }
}
