package org.fettlebench.club.store.internal;

import java.sql.SQLException;
import org.fettlebench.club.ClubException;

/**
 * A line whose row is locked until the transaction ends.
 *
 * @param id its key
 * @param name its goods, in words
 * @param placeId key of its place
 * @param quantity how many belong to it
 * @param lent how many of them are on loan
 */
record HeldLine(long id, String name, long placeId, int quantity, int lent) {
  private static final String COLUMNS =
      "SELECT id, name, place_id, quantity, lent FROM stock_line ";

  static HeldLine lock(Transaction transaction, long lineId) throws SQLException {
    return transaction
        .first(
            COLUMNS + "WHERE id = ? " + transaction.dialect().forUpdate(),
            row ->
                new HeldLine(
                    row.getLong(1), row.getString(2), row.getLong(3), row.getInt(4), row.getInt(5)),
            lineId)
        .orElseThrow(() -> Refusals.noLine(lineId));
  }

  int present() {
    return quantity - lent;
  }

  String place(Transaction transaction) throws SQLException {
    return transaction
        .first("SELECT path FROM place WHERE id = ?", row -> row.getString(1), placeId)
        .orElseThrow(() -> new SQLException("place " + placeId + " is lost"));
  }

  /**
   * Returns the line with its quantity changed, stored.
   *
   * @throws ClubException if it would hold more than can be counted
   */
  void changeQuantity(Transaction transaction, int change) throws SQLException {
    transaction.change(
        "UPDATE stock_line SET quantity = ? WHERE id = ?", sum(name, quantity, change), id);
  }

  void changeLent(Transaction transaction, int change) throws SQLException {
    transaction.change("UPDATE stock_line SET lent = ? WHERE id = ?", lent + change, id);
  }

  /** Adds a change to a quantity, refusing what no line can hold. */
  static int sum(String name, int quantity, int change) {
    long sum = (long) quantity + change;
    if (!(sum <= Integer.MAX_VALUE)) {
      throw new ClubException(
          "%d of %s would be more than the %d a line can hold; check the quantity"
              .formatted(sum, name, Integer.MAX_VALUE));
    }
    return (int) sum;
  }
}
