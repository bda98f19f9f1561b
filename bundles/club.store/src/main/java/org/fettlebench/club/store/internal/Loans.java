package org.fettlebench.club.store.internal;

import java.sql.Date;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fettlebench.club.Loan;

/** The table of loans. A loan that is over stays in it, with the moment of its return. */
final class Loans {
  private static final String INSERT =
      "INSERT INTO loan (id, line_id, member_id, quantity, lent_ms, due, returned_ms)"
          + " VALUES (?, ?, ?, ?, ?, ?, ?)";
  private static final String OPEN =
      "SELECT o.id, o.line_id, m.name, o.quantity, o.lent_ms, o.due"
          + " FROM loan o JOIN member m ON m.id = o.member_id WHERE o.returned_ms IS NULL ";

  private static final Comparator<OpenLoan> DUE_FIRST =
      Comparator.comparing((OpenLoan loan) -> loan.due().orElse(LocalDate.MAX))
          .thenComparing(OpenLoan::id);

  /** One that is not over. */
  record OpenLoan(
      long id, long lineId, String member, int quantity, long lentMs, Optional<LocalDate> due) {
    private Loan shown() {
      return new Loan(member, quantity, due);
    }
  }

  private Loans() {}

  /** Returns who has what on loan, by line. */
  static Map<Long, List<Loan>> byLine(Transaction transaction) throws SQLException {
    return byLine(transaction.all(OPEN, Loans::loan));
  }

  static Map<Long, List<Loan>> byLine(Transaction transaction, long lineId) throws SQLException {
    return byLine(transaction.all(OPEN + "AND o.line_id = ?", Loans::loan, lineId));
  }

  private static Map<Long, List<Loan>> byLine(List<OpenLoan> loans) {
    return loans.stream()
        .sorted(DUE_FIRST)
        .collect(
            Collectors.groupingBy(
                OpenLoan::lineId, Collectors.mapping(OpenLoan::shown, Collectors.toList())));
  }

  private static OpenLoan loan(ResultSet row) throws SQLException {
    return new OpenLoan(
        row.getLong(1),
        row.getLong(2),
        row.getString(3),
        row.getInt(4),
        row.getLong(5),
        Optional.ofNullable(row.getDate(6)).map(Date::toLocalDate));
  }

  /** Returns what a member has of a line, what is due first before the rest. */
  static List<OpenLoan> of(Transaction transaction, long lineId, String member)
      throws SQLException {
    return transaction
        .all(OPEN + "AND o.line_id = ? AND m.name = ?", Loans::loan, lineId, member)
        .stream()
        .sorted(DUE_FIRST)
        .toList();
  }

  static void begin(Transaction transaction, OpenLoan loan, long memberId) throws SQLException {
    transaction.change(
        INSERT,
        loan.id(),
        loan.lineId(),
        memberId,
        loan.quantity(),
        loan.lentMs(),
        loan.due().map(Date::valueOf).orElse(null),
        null);
  }

  /** Ends a loan, or so many of it: the rest stays on loan, what came back has a row of its own. */
  static void end(Transaction transaction, LastKeys keys, OpenLoan loan, int back, Instant now)
      throws SQLException {
    // A clock that was put back must not make a return come before its loan.
    long returnedMs = Math.max(now.toEpochMilli(), loan.lentMs());
    if (back == loan.quantity()) {
      transaction.change("UPDATE loan SET returned_ms = ? WHERE id = ?", returnedMs, loan.id());
      return;
    }
    transaction.change(
        "UPDATE loan SET quantity = ? WHERE id = ?", loan.quantity() - back, loan.id());
    transaction.change(
        "INSERT INTO loan (id, line_id, member_id, quantity, lent_ms, due, returned_ms)"
            + " SELECT CAST(? AS BIGINT), line_id, member_id, CAST(? AS INTEGER), lent_ms, due,"
            + " CAST(? AS BIGINT) FROM loan WHERE id = ?",
        keys.nextLoan(),
        back,
        returnedMs,
        loan.id());
  }
}
