package org.fettlebench.tooling.speed;

/** How the speed that a machine can give meets the speed that is wanted. */
public enum SpindleFit {
  /** No machine was said. */
  ANY_MACHINE("no machine was said"),
  /** The machine can turn within the range wanted. */
  WITHIN("within the range wanted"),
  /** All that is at hand is slower: safe, but the cut takes longer. */
  SLOWER("slower than wanted: safe for the tool, but feed lightly and take longer"),
  /** All that is at hand is faster: the tool will burn. */
  FASTER("faster than wanted: the machine cannot go slow enough");

  private final String words;

  SpindleFit(String words) {
    this.words = words;
  }

  /** Returns it for people. */
  public String words() {
    return words;
  }
}
