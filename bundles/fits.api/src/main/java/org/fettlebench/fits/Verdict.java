package org.fettlebench.fits;

/** Does the head sit? */
public enum Verdict {
  /** The allowance is at least the position error expected. */
  CLEARS("clears"),
  /** There is an allowance, but less than the position error expected. */
  TIGHT("tight"),
  /** It fails even if the hole is exactly where it should be. */
  FOULS("fouls");

  private final String word;

  Verdict(String word) {
    this.word = word;
  }

  /** Returns the word shown to people. */
  public String word() {
    return word;
  }
}
