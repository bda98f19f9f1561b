package org.fettlebench.tooling;

/** How deep a tapped hole is, as far as the per cent of thread depends on it. */
public enum ThreadDepth {
  /** Deep tapping: less per cent, since chips and torque build up. */
  DEEP("deep"),
  /** Usual work. */
  USUAL("usual"),
  /** Sheet too thin for a full engagement: more per cent. */
  THIN("thin");

  private final String word;

  ThreadDepth(String word) {
    this.word = word;
  }

  /** Returns the word for it in a table file. */
  public String word() {
    return word;
  }
}
