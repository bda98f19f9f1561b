package org.fettlebench.club;

import java.util.Optional;

/**
 * Equal things in one place.
 *
 * @param id key
 * @param goods what
 * @param place where, as a path such as {@code Cabinet / Drawer 3}
 * @param condition good, worn
 * @param quantity how many belong here: the sum of the line's movements, never below nothing
 * @param lent how many of them are out on loan
 * @param holder who has those, and until when, in words; empty when none is out
 * @param lowMark how many should always be there; empty when not set
 */
public record StockLine(
    long id,
    Goods goods,
    String place,
    Condition condition,
    int quantity,
    int lent,
    String holder,
    Optional<Integer> lowMark) {

  /** State of things. */
  public enum Condition {
    /** Fit for use. */
    GOOD,
    /** Not to be relied on. */
    WORN
  }

  /** Returns how many are in their place now. */
  public int present() {
    return quantity - lent;
  }
}
