package org.fettlebench.modules.internal;

/**
 * Whether a module works.
 *
 * @param working whether it has started and every part of it is satisfied
 * @param words in words, and if it does not work why
 */
record Health(boolean working, String words) {
  static final Health WELL = new Health(true, "working");
  static final Health RESTING = new Health(true, "rests until a window is open");
  static final Health LEFT_OUT = new Health(false, "left out");

  /** Returns the health of a module of which a newer version is there. */
  static Health older(String newerVersion) {
    return new Health(
        false, "put aside: version " + newerVersion + " is here too; delete the older jar");
  }

  static Health ill(String words) {
    return new Health(false, words);
  }
}
