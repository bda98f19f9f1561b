package org.fettlebench.club;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Equal things in one place.
 *
 * @param id key
 * @param goods what
 * @param place where, as a path such as {@code Cabinet / Drawer 3}
 * @param condition good, worn
 * @param quantity how many belong here: the sum of the line's movements, never below nothing
 * @param loans who has how many of them, and until when; what is due first before the rest
 * @param lowMark how many should always be there; empty when not set
 */
public record StockLine(
    long id,
    Goods goods,
    String place,
    Condition condition,
    int quantity,
    List<Loan> loans,
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
    Objects.requireNonNull(lowMark, "lowMark");
    quantity = Words.notBelowNothing("the quantity of " + goods.name(), quantity);
    loans = List.copyOf(loans);
    int lent = lent(loans);
    if (!(lent <= quantity)) {
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

  /** Returns how many are out on loan. */
  public int lent() {
    return lent(loans);
  }

  private static int lent(List<Loan> loans) {
    return loans.isEmpty() ? 0 : loans.stream().mapToInt(Loan::quantity).sum();
  }

  /** Returns who has those, and until when, in words; empty when none is out. */
  public String holder() {
    return loans.stream().map(Loan::words).collect(Collectors.joining("; "));
  }

  /** Returns how many are in their place now: what belongs here less what is lent. */
  public int present() {
    return quantity - lent();
  }
}
