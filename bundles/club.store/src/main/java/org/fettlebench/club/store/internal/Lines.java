package org.fettlebench.club.store.internal;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.club.Goods;
import org.fettlebench.club.Loan;
import org.fettlebench.club.StockLine;
import org.fettlebench.measure.Length;

/** Reads stock lines. */
final class Lines {
  private static final String SELECT =
      "SELECT l.id, l.kind, l.name, l.thread, l.style, l.diameter_nm, l.length_nm, l.material,"
          + " p.path, l.fitness, l.quantity, l.low_mark"
          + " FROM stock_line l JOIN place p ON p.id = l.place_id ";

  private static final Comparator<StockLine> ORDER =
      Comparator.comparing((StockLine line) -> line.goods().kind())
          .thenComparing(line -> line.goods().thread())
          .thenComparing(line -> line.goods().name())
          .thenComparing(StockLine::place)
          .thenComparing(StockLine::id);

  private Lines() {}

  static List<StockLine> all(Transaction transaction) throws SQLException {
    Map<Long, List<Loan>> loans = Loans.byLine(transaction);
    List<StockLine> lines = new ArrayList<>(transaction.all(SELECT, row -> line(row, loans)));
    // Sorted here: the engine would sort a hundred thousand lines through its own files.
    lines.sort(ORDER);
    return List.copyOf(lines);
  }

  static Optional<StockLine> find(Transaction transaction, long id) throws SQLException {
    Map<Long, List<Loan>> loans = Loans.byLine(transaction, id);
    return transaction.first(SELECT + "WHERE l.id = ?", row -> line(row, loans), id);
  }

  private static StockLine line(ResultSet row, Map<Long, List<Loan>> loans) throws SQLException {
    long id = row.getLong(1);
    int lowMark = row.getInt(12);
    Optional<Integer> mark = row.wasNull() ? Optional.empty() : Optional.of(lowMark);
    return new StockLine(
        id,
        goods(row),
        row.getString(9),
        StockLine.Condition.valueOf(row.getString(10)),
        row.getInt(11),
        loans.getOrDefault(id, List.of()),
        mark);
  }

  private static Goods goods(ResultSet row) throws SQLException {
    return new Goods(
        Goods.Kind.valueOf(row.getString(2)),
        row.getString(3),
        row.getString(4),
        row.getString(5),
        length(row.getLong(6)),
        length(row.getLong(7)),
        row.getString(8));
  }

  /** Not said is kept as 0, because a length of goods is always above nothing. */
  private static Optional<Length> length(long nanometres) {
    return nanometres == 0 ? Optional.empty() : Optional.of(Length.ofNanometres(nanometres));
  }

  static long nanometres(Optional<Length> length) {
    return length.map(Length::nanometres).orElse(0L);
  }
}
