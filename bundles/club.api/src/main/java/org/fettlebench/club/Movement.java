package org.fettlebench.club;

import java.time.Instant;
import java.util.Objects;

/**
 * One entry of the stock ledger. Nothing is ever deleted from it.
 *
 * @param id key, rising
 * @param lineId the line it belongs to
 * @param kind what happened
 * @param quantity change of the line's quantity; negative when things left, nothing only when a
 *     count found what was expected
 * @param at when, to the millisecond
 * @param member who; empty if not said
 * @param note why; may be empty
 */
public record Movement(
    long id, long lineId, Kind kind, int quantity, Instant at, String member, String note) {

  /** Checks that nothing is missing. */
  public Movement {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(member, "member");
    Objects.requireNonNull(note, "note");
  }

  /** What happened. */
  public enum Kind {
    /** Came in. */
    RECEIVED,
    /** Taken for use. */
    TAKEN,
    /** Brought back unused. */
    RETURNED,
    /** Difference found in counting. */
    COUNTED,
    /** Thrown away. */
    SCRAPPED,
    /** Counter-entry that undoes an earlier one. */
    UNDONE
  }
}
