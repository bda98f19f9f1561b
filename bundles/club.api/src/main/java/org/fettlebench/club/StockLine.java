package org.fettlebench.club;

import java.util.Objects;
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

  /**
   * Checks the line.
   *
   * @throws ClubException if the quantity is below nothing, or more are lent than belong here
   */
  public StockLine {
    Objects.requireNonNull(goods, "goods");
    Objects.requireNonNull(condition, "condition");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(holder, "holder");
    Objects.requireNonNull(lowMark, "lowMark");
    quantity = Words.notBelowNothing("the quantity of " + goods.name(), quantity);
    if (!(lent >= 0 && lent <= quantity)) {
      throw new ClubException(
          "%d of %s are lent, but %d belong to %s".formatted(lent, goods.name(), quantity, place));
    }
  }

  /** State of things. */
  public enum Condition {
    /** Fit for use. */
    GOOD,
    /** Not to be relied on. */
    WORN
  }

  /** Returns how many are in their place now: what belongs here less what is lent. */
  public int present() {
    return quantity - lent;
  }
}
