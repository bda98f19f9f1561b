package org.fettlebench.club;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * An error as it stands in the book of measured errors. Nothing is ever deleted from it; a wrong
 * entry is struck out and stays to be read.
 *
 * @param id key, rising
 * @param error what was measured
 * @param entered when it was written down, to the millisecond
 * @param struck why it no longer counts; empty while it does
 */
public record MeasuredError(long id, HoleError error, Instant entered, Optional<Strike> struck) {
  /** Checks that nothing is missing. */
  public MeasuredError {
    Objects.requireNonNull(error, "error");
    Objects.requireNonNull(entered, "entered");
    Objects.requireNonNull(struck, "struck");
  }

  /** Tells whether it counts. */
  public boolean counts() {
    return struck.isEmpty();
  }

  /**
   * Why an entry was struck out.
   *
   * @param at when, to the millisecond
   * @param member who did it; empty if not said
   * @param reason why; not empty
   */
  public record Strike(Instant at, String member, String reason) {
    /**
     * Checks the strike.
     *
     * @throws ClubException if no reason is given, or a text is too long
     */
    public Strike {
      Objects.requireNonNull(at, "at");
      member = Words.optional("the member", member, 120);
      reason = Words.needed("the reason for striking an error out", reason, 500);
    }
  }
}
