package org.fettlebench.command.internal.hole;

import java.util.List;
import java.util.Optional;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.BlindHole;
import org.fettlebench.tooling.ClearanceChoice;
import org.fettlebench.tooling.ListedDrill;
import org.fettlebench.tooling.TapLead;
import org.fettlebench.tooling.TappingChoice;

/**
 * A plan of the holes for a thread.
 *
 * @param thread to tap
 * @param wanted per cent of thread
 * @param from where the drills come from
 * @param tapping drills for the thread, best first
 * @param listed drills that lists name for the thread, held or not
 * @param clearance drills for the screw to pass
 * @param leads taps for which {@code blind} was worked out, in the same order
 * @param blind depths with the best tapping drill; empty when the hole goes right through
 * @param pointDegrees angle of the drill's point
 */
record Plan(
    ScrewThread thread,
    PlanWanted wanted,
    DrillsAsked.From from,
    List<TappingChoice> tapping,
    List<ListedDrill> listed,
    List<ClearanceChoice> clearance,
    List<TapLead> leads,
    List<BlindHole> blind,
    double pointDegrees) {
  /** A few choices are a help, all are a burden. */
  static final int MOST_CHOICES = 6;

  /**
   * Returns the best drill to tap that raises no concern, else the best; empty when none will do.
   */
  Optional<TappingChoice> suggested() {
    return suggested(tapping);
  }

  /** Returns the best choice that raises no concern, else the best; empty when there is none. */
  static Optional<TappingChoice> suggested(List<TappingChoice> choices) {
    return choices.stream()
        .filter(choice -> choice.concern().isEmpty())
        .findFirst()
        .or(() -> choices.stream().findFirst());
  }

  /** Returns whether there is no drill without a concern, or every blind hole breaks through. */
  boolean wanting() {
    boolean noDrill = suggested().filter(choice -> choice.concern().isEmpty()).isEmpty();
    boolean through = !blind.isEmpty() && blind.stream().allMatch(BlindHole::breaksThrough);
    return noDrill || clearance.isEmpty() || through;
  }
}
