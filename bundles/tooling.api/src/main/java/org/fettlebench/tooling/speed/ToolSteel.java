package org.fettlebench.tooling.speed;

/** What the cutter is made of. */
public enum ToolSteel {
  /** High-speed steel. */
  HIGH_SPEED("high-speed steel"),
  /** Carbon tool steel, which softens when it runs hot. */
  CARBON("carbon steel");

  private final String words;

  ToolSteel(String words) {
    this.words = words;
  }

  /** Returns it for people. */
  public String words() {
    return words;
  }
}
