package org.fettlebench.threads.identify;

import org.fettlebench.measure.Length;
import org.fettlebench.threads.ScrewThread;

/**
 * Two threads that could be taken for one another.
 *
 * @param first the one of the earlier series
 * @param second the other
 * @param diameterDifference major diameter of the second less that of the first
 * @param pitchDifference pitch of the second less that of the first
 * @param kind what happens when one is screwed into the other
 */
public record CrossPair(
    ScrewThread first,
    ScrewThread second,
    Length diameterDifference,
    Length pitchDifference,
    Kind kind) {
  /** What happens when one is screwed into the other. */
  public enum Kind {
    /** One thread under two names. */
    SAME("the same thread under two names"),
    /** The pitches agree to one part in a hundred: it goes on and holds badly. */
    GOES_ON("goes on, and holds badly or binds on its flanks"),
    /** It starts and then binds. */
    BINDS("starts, then binds and strips");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** Returns it for people. */
    public String words() {
      return words;
    }
  }
}
