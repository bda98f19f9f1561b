package org.fettlebench.fits;

/**
 * Something that would make a head sit, already checked again.
 *
 * @param kind what is changed
 * @param sentence what to do, with figures
 * @param after the answer once it is done
 */
public record SeatCure(Kind kind, String sentence, SeatAnswer after) {
  /** Kinds of cure. */
  public enum Kind {
    /** Move the hole. */
    MOVE_CENTRE,
    /** Use another head. */
    OTHER_HEAD,
    /** Turn the head down to a smaller circle. */
    TURN_HEAD_DOWN,
    /** Set or file the head with its flats square to a wall. */
    SET_SQUARE,
    /** Place the hole by a more careful method. */
    CAREFUL_METHOD,
    /** Leave the washer off. */
    WASHER_OFF,
    /** Turn the same head with another spanner. */
    OTHER_SPANNER,
    /** Turn the washer down to a smaller circle. */
    TURN_WASHER_DOWN
  }
}
