package org.fettlebench.castings;

/** A direction of the frame. */
public enum Axis {
  /** To the right. */
  X("x"),
  /** Away from the reader. */
  Y("y"),
  /** Up. */
  Z("z");

  private final String word;

  Axis(String word) {
    this.word = word;
  }

  /** Returns its letter. */
  public String word() {
    return word;
  }
}
