package org.fettlebench.fits;

/** Directions on a face or a drawing in words, by eighths of a turn from the right on. */
public final class Eighths {
  private static final String[] WORDS = {
    "right",
    "right and away",
    "away",
    "left and away",
    "left",
    "left and near",
    "near",
    "right and near"
  };

  /** How many directions have a name. */
  public static final int COUNT = WORDS.length;

  private Eighths() {}

  /**
   * Returns the direction nearest to an angle.
   *
   * @param degrees anticlockwise from the right, any
   */
  public static String words(double degrees) {
    int eighth = (int) Math.rint(degrees * COUNT / 360);
    return WORDS[Math.floorMod(eighth, COUNT)];
  }

  /** Returns the direction of a step of {@code dx} to the right and {@code dy} away. */
  public static String words(double dx, double dy) {
    return words(Math.toDegrees(Math.atan2(dy, dx)));
  }
}
