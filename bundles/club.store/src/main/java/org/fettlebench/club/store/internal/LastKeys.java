package org.fettlebench.club.store.internal;

import java.sql.ResultSet;
import java.sql.SQLException;

/**
 * The keys given out so far. Whoever changes the stock locks them first, so that changes come one
 * after another, no two can block each other, and keys rise in the order of the commits.
 */
final class LastKeys {
  private final Transaction transaction;
  private long place;
  private long member;
  private long line;
  private long movement;
  private long loan;

  private LastKeys(Transaction transaction, ResultSet row) throws SQLException {
    this.transaction = transaction;
    place = row.getLong(1);
    member = row.getLong(2);
    line = row.getLong(3);
    movement = row.getLong(4);
    loan = row.getLong(5);
  }

  /** Waits until nobody else changes the stock, and keeps it so until the transaction ends. */
  static LastKeys lock(Transaction transaction) throws SQLException {
    return transaction
        .first(
            "SELECT place_id, member_id, line_id, movement_id, loan_id FROM last_key WHERE id = 1 "
                + transaction.dialect().forUpdate(),
            row -> new LastKeys(transaction, row))
        .orElseThrow(() -> new SQLException("the table last_key has lost its row"));
  }

  long nextPlace() {
    return ++place;
  }

  long nextMember() {
    return ++member;
  }

  long nextLine() {
    return ++line;
  }

  long nextMovement() {
    return ++movement;
  }

  long nextLoan() {
    return ++loan;
  }

  /** Keeps what was given out; to be called before the transaction ends. */
  void save() throws SQLException {
    transaction.change(
        "UPDATE last_key SET place_id = ?, member_id = ?, line_id = ?, movement_id = ?, loan_id = ?"
            + " WHERE id = 1",
        place,
        member,
        line,
        movement,
        loan);
  }
}
