package org.fettlebench.threads.strength;

/** What gives way first when a screw is pulled out of its nut. */
public enum GivesWay {
  /** The screw breaks through its core: the wanted way, since it is seen. */
  SCREW_BREAKS("the screw breaks"),
  /** The thread of the screw strips. */
  SCREW_THREAD_STRIPS("the screw's thread strips"),
  /** The thread of the nut or tapped hole strips. */
  NUT_THREAD_STRIPS("the thread in the hole strips");

  private final String words;

  GivesWay(String words) {
    this.words = words;
  }

  /** Returns it for people. */
  public String words() {
    return words;
  }
}
