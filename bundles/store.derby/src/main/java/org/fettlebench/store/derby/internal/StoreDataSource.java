package org.fettlebench.store.derby.internal;

import java.io.PrintWriter;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.SQLFeatureNotSupportedException;
import java.util.logging.Logger;
import javax.sql.DataSource;

/** Hands out connections to the open store, and none after it is closed. */
final class StoreDataSource implements DataSource {
  private final DerbyDatabase database;

  StoreDataSource(DerbyDatabase database) {
    this.database = database;
  }

  @Override
  public Connection getConnection() throws SQLException {
    return database.connection();
  }

  @Override
  public Connection getConnection(String user, String password) throws SQLException {
    throw new SQLFeatureNotSupportedException("the embedded store has no users");
  }

  @Override
  public PrintWriter getLogWriter() {
    return null;
  }

  @Override
  public void setLogWriter(PrintWriter out) throws SQLException {
    throw new SQLFeatureNotSupportedException("the embedded store writes its own log");
  }

  @Override
  public void setLoginTimeout(int seconds) throws SQLException {
    throw new SQLFeatureNotSupportedException("the embedded store has no log-in");
  }

  @Override
  public int getLoginTimeout() {
    return 0;
  }

  @Override
  public Logger getParentLogger() throws SQLFeatureNotSupportedException {
    throw new SQLFeatureNotSupportedException("the embedded store writes its own log");
  }

  @Override
  public <T> T unwrap(Class<T> wanted) throws SQLException {
    throw new SQLException("the store hands out connections only, not a " + wanted.getName());
  }

  @Override
  public boolean isWrapperFor(Class<?> wanted) {
    return false;
  }
}
