package org.fettlebench.club;

import java.time.LocalDate;
import java.util.Objects;
import org.fettlebench.measure.Length;

/**
 * How far a hole was out, as somebody measured it.
 *
 * @param method the way it was placed, by the id that kit files write, such as {@code
 *     scribe-and-dot}; 1 to 60 characters
 * @param x how far it lies to the right of where it was aimed; negative to the left
 * @param y how far it lies away from the reader; negative towards the reader
 * @param measured the day it was measured
 * @param member who drilled it; empty if not said, at most 120 characters
 * @param machine on what; empty if not said, at most 120 characters
 * @param note anything else; may be empty, at most 500 characters
 */
public record HoleError(
    String method,
    Length x,
    Length y,
    LocalDate measured,
    String member,
    String machine,
    String note) {
  /** More than this is no error of placing but a slip of the unit or of the measuring. */
  private static final Length MOST = Length.ofMillimetres(25);

  /**
   * Checks the error.
   *
   * @throws ClubException if a text is missing or too long, or the hole is more than 25 mm out
   */
  public HoleError {
    method = Words.needed("the method", method, 60);
    member = Words.optional("the member", member, 120);
    machine = Words.optional("the machine", machine, 120);
    note = Words.optional("the note", note, 500);
    Objects.requireNonNull(measured, "measured");
    within("x", x);
    within("y", y);
  }

  private static void within(String axis, Length out) {
    if (!(Math.abs(out.nanometres()) <= MOST.nanometres())) {
      throw new ClubException(
          "the error along %s, %s mm, is more than 25 mm; look at the unit and at what was aimed at"
              .formatted(axis, out.millimetres()));
    }
  }
}
