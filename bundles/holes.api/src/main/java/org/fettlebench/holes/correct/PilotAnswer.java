package org.fettlebench.holes.correct;

import java.util.List;
import java.util.Optional;

/**
 * Which pilot to take, and what then.
 *
 * @param question what was asked
 * @param ladder every held drill below the finished size, largest first
 * @param choice the largest held pilot whose curable error covers the expected one; empty when none
 *     does
 * @param remedies when no held pilot does, what would help, the least trouble first; each was
 *     worked out again before it is offered
 * @param finishHeld whether the drill of the finished size is at hand
 */
public record PilotAnswer(
    PilotQuestion question,
    List<Rung> ladder,
    Optional<Rung> choice,
    List<Remedy> remedies,
    boolean finishHeld) {
  /** Copies what could change. */
  public PilotAnswer {
    ladder = List.copyOf(ladder);
    remedies = List.copyOf(remedies);
  }

  /**
   * A drill below the finished size.
   *
   * @param drill the drill
   * @param curableMm largest radius of position error that can be filed away afterwards; negative
   *     when the last drill would not clean up even a hole in the right place
   * @param covers whether that is at least the expected error
   */
  public record Rung(Cutter drill, double curableMm, boolean covers) {}

  /**
   * Something that helps when no held pilot does.
   *
   * @param kind what is changed
   * @param sentence what to do, with figures
   * @param pilot the pilot to take then
   */
  public record Remedy(Kind kind, String sentence, Rung pilot) {
    /** Kinds of remedy. */
    public enum Kind {
      /** Place the hole by a more careful method. */
      CAREFUL_METHOD,
      /** Buy a smaller pilot. */
      BUY_PILOT
    }
  }
}
