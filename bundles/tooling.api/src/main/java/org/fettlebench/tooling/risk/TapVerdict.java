package org.fettlebench.tooling.risk;

/** What the ratio of torques says; never that a tap will not break. */
public enum TapVerdict {
  /** Even by the assumptions that are hardest on the tap, the torque is below what breaks it. */
  BELOW("the steady torque is below what breaks the tap, even by the hardest assumptions"),
  /** By the hardest assumptions the torque is at or above what breaks it. */
  MAY_BREAK("may break the tap: by the hardest assumptions the torque is more than it bears"),
  /** By the middle of the assumptions the torque is at or above what breaks it. */
  WILL_LIKELY_BREAK("will likely break the tap: the torque expected is more than it bears");

  private final String words;

  TapVerdict(String words) {
    this.words = words;
  }

  /** Returns it for people. */
  public String words() {
    return words;
  }
}
