package org.fettlebench.desktop.threads.internal;

import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.TapLead;

/**
 * What is asked of a thread.
 *
 * @param thread which
 * @param percent of thread wanted; empty for what is usual in the material
 * @param material to be tapped; empty for most work
 * @param catalogue whether to choose from all drills there are, not only those held
 * @param chosen the drill looked at; empty for the best
 * @param blind the blind hole, where one is asked
 */
record ThreadQuestion(
    ScrewThread thread,
    Optional<Double> percent,
    String material,
    boolean catalogue,
    Optional<DrillSize> chosen,
    Optional<Blind> blind) {

  /**
   * A blind hole.
   *
   * @param fullThread depth of full thread from the face
   * @param metal thickness from the face to what lies below
   * @param lead of the last tap
   */
  record Blind(Length fullThread, Length metal, TapLead lead) {}

  static ThreadQuestion of(ScrewThread thread) {
    return new ThreadQuestion(
        thread, Optional.empty(), "", false, Optional.empty(), Optional.empty());
  }

  ThreadQuestion choosing(Optional<DrillSize> drill) {
    return new ThreadQuestion(thread, percent, material, catalogue, drill, blind);
  }
}
