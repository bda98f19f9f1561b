package org.fettlebench.club.store.internal;

import java.sql.Date;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The table of loans. A loan that is over stays in it, with the moment of its return. */
final class Loans {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);
  private static final String INSERT =
      "INSERT INTO loan (id, line_id, member_id, quantity, lent_ms, due, returned_ms)"
          + " VALUES (?, ?, ?, ?, ?, ?, ?)";
  private static final String OPEN =
      "SELECT o.id, o.line_id, m.name, o.quantity, o.lent_ms, o.due"
          + " FROM loan o JOIN member m ON m.id = o.member_id WHERE o.returned_ms IS NULL ";

  private static final Comparator<Loan> DUE_FIRST =
      Comparator.comparing((Loan loan) -> loan.due().orElse(LocalDate.MAX)).thenComparing(Loan::id);

  /** One that is not over. */
  record Loan(
      long id, long lineId, String member, int quantity, long lentMs, Optional<LocalDate> due) {
    private String words() {
      String many = quantity == 1 ? member : "%s (%d)".formatted(member, quantity);
      return due.map(day -> many + " until " + DAY.format(day)).orElse(many);
    }
  }

  private Loans() {}

  /** Returns who has what on loan, in words, by line. */
  static Map<Long, String> holders(Transaction transaction) throws SQLException {
    return words(transaction.all(OPEN, Loans::loan));
  }

  static Map<Long, String> holders(Transaction transaction, long lineId) throws SQLException {
    return words(transaction.all(OPEN + "AND o.line_id = ?", Loans::loan, lineId));
  }

  private static Map<Long, String> words(List<Loan> loans) {
    Map<Long, String> words = new HashMap<>();
    loans.stream()
        .sorted(DUE_FIRST)
        .forEach(loan -> words.merge(loan.lineId(), loan.words(), (a, b) -> a + "; " + b));
    return words;
  }

  private static Loan loan(ResultSet row) throws SQLException {
    return new Loan(
        row.getLong(1),
        row.getLong(2),
        row.getString(3),
        row.getInt(4),
        row.getLong(5),
        Optional.ofNullable(row.getDate(6)).map(Date::toLocalDate));
  }

  /** Returns what a member has of a line, what is due first before the rest. */
  static List<Loan> of(Transaction transaction, long lineId, String member) throws SQLException {
    return transaction
        .all(OPEN + "AND o.line_id = ? AND m.name = ?", Loans::loan, lineId, member)
        .stream()
        .sorted(DUE_FIRST)
        .toList();
  }

  static void begin(Transaction transaction, Loan loan, long memberId) throws SQLException {
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
  static void end(Transaction transaction, LastKeys keys, Loan loan, int back, Instant now)
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
