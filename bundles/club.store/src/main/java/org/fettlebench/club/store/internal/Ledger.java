package org.fettlebench.club.store.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.fettlebench.club.Movement;

/** The table of movements. */
final class Ledger {
  private static final String SELECT =
      "SELECT m.id, m.line_id, m.kind, m.quantity, m.moved_ms, p.name, m.note"
          + " FROM movement m LEFT JOIN member p ON p.id = m.member_id ";
  private static final String INSERT =
      "INSERT INTO movement (id, line_id, kind, quantity, moved_ms, member_id, note, undoes_id)"
          + " VALUES (?, ?, ?, ?, ?, ?, ?, ?)";

  private Ledger() {}

  static List<Movement> ofLine(Transaction transaction, long lineId) throws SQLException {
    return List.copyOf(
        transaction.all(
            SELECT + "WHERE m.line_id = ? ORDER BY m.id DESC", Ledger::movement, lineId));
  }

  static List<Movement> after(Transaction transaction, long movementId, int most)
      throws SQLException {
    String sql = SELECT + "WHERE m.id > ? ORDER BY m.id " + transaction.dialect().firstRows(most);
    return List.copyOf(transaction.all(sql, Ledger::movement, movementId));
  }

  static Optional<Movement> find(Transaction transaction, long movementId) throws SQLException {
    return transaction.first(SELECT + "WHERE m.id = ?", Ledger::movement, movementId);
  }

  static boolean isUndone(Transaction transaction, long movementId) throws SQLException {
    return transaction
        .first("SELECT id FROM movement WHERE undoes_id = ?", row -> row.getLong(1), movementId)
        .isPresent();
  }

  private static Movement movement(ResultSet row) throws SQLException {
    String member = row.getString(6);
    return new Movement(
        row.getLong(1),
        row.getLong(2),
        Movement.Kind.valueOf(row.getString(3)),
        row.getInt(4),
        Instant.ofEpochMilli(row.getLong(5)),
        member == null ? "" : member,
        row.getString(7));
  }

  /** Adds a movement to the batch that {@link #enterAll} enters. */
  static void add(
      Transaction transaction, Movement movement, Optional<Long> member, Optional<Long> undoes)
      throws SQLException {
    transaction.addToBatch(
        INSERT,
        movement.id(),
        movement.lineId(),
        movement.kind().name(),
        movement.quantity(),
        movement.at().toEpochMilli(),
        member.orElse(null),
        movement.note(),
        undoes.orElse(null));
  }

  static void enterAll(Transaction transaction) throws SQLException {
    transaction.runBatch(INSERT);
  }
}
