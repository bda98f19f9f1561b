package org.fettlebench.club.store.internal;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.store.Dialect;

/**
 * The statements of one transaction. A statement's text is prepared once, however often it runs.
 */
final class Transaction implements AutoCloseable {
  /** Makes something of the row at which a result stands. */
  @FunctionalInterface
  interface RowReader<T> {
    T read(ResultSet row) throws SQLException;
  }

  private final Connection connection;
  private final Dialect dialect;
  private final Map<String, PreparedStatement> statements = new HashMap<>();

  Transaction(Connection connection, Dialect dialect) {
    this.connection = connection;
    this.dialect = dialect;
  }

  Dialect dialect() {
    return dialect;
  }

  /** Returns all rows. Each argument is a String, Long, Integer, java.sql.Date or null. */
  <T> List<T> all(String sql, RowReader<T> reader, Object... arguments) throws SQLException {
    List<T> rows = new ArrayList<>();
    try (ResultSet found = bind(sql, arguments).executeQuery()) {
      while (found.next()) {
        rows.add(reader.read(found));
      }
    }
    return rows;
  }

  /** Returns the first row, if there is one. */
  <T> Optional<T> first(String sql, RowReader<T> reader, Object... arguments) throws SQLException {
    try (ResultSet found = bind(sql, arguments).executeQuery()) {
      return found.next() ? Optional.of(reader.read(found)) : Optional.empty();
    }
  }

  /** Changes rows; returns how many. */
  int change(String sql, Object... arguments) throws SQLException {
    return bind(sql, arguments).executeUpdate();
  }

  /** Adds one more set of arguments for {@link #runBatch}. */
  void addToBatch(String sql, Object... arguments) throws SQLException {
    bind(sql, arguments).addBatch();
  }

  /** Runs what was added, in its order; nothing if nothing was. */
  void runBatch(String sql) throws SQLException {
    prepared(sql).executeBatch();
  }

  private PreparedStatement bind(String sql, Object... arguments) throws SQLException {
    PreparedStatement statement = prepared(sql);
    for (int i = 0; i < arguments.length; i++) {
      statement.setObject(i + 1, arguments[i]);
    }
    return statement;
  }

  private PreparedStatement prepared(String sql) throws SQLException {
    PreparedStatement statement = statements.get(sql);
    if (statement == null) {
      statement = connection.prepareStatement(sql);
      statements.put(sql, statement);
    }
    return statement;
  }

  @Override
  public void close() throws SQLException {
    for (PreparedStatement statement : statements.values()) {
      statement.close();
    }
  }
}
