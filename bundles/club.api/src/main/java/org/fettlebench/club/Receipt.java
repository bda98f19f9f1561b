package org.fettlebench.club;

import java.util.Objects;
import java.util.Optional;

/**
 * Something to put into stock.
 *
 * @param goods what
 * @param place where, as a path such as {@code Cabinet / Drawer 3}; made if new; 1 to 300
 *     characters
 * @param condition its state
 * @param quantity how many, above nothing
 * @param lowMark how many should always be there; empty leaves what is set
 */
public record Receipt(
    Goods goods,
    String place,
    StockLine.Condition condition,
    int quantity,
    Optional<Integer> lowMark) {

  /**
   * Checks the receipt.
   *
   * @throws ClubException if there is no place, the quantity is not above nothing, or the low mark
   *     is below nothing
   */
  public Receipt {
    Objects.requireNonNull(goods, "goods");
    Objects.requireNonNull(condition, "condition");
    place = Words.needed("the place of " + goods.name(), place, 300);
    quantity = Words.aboveNothing("the quantity of " + goods.name(), quantity);
    lowMark.ifPresent(mark -> Words.notBelowNothing("the low mark of " + goods.name(), mark));
  }
}
