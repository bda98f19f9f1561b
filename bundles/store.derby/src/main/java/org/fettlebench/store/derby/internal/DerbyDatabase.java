package org.fettlebench.store.derby.internal;

import java.sql.Connection;
import java.sql.SQLException;
import org.apache.derby.jdbc.BasicEmbeddedDataSource40;
import org.fettlebench.store.StoreException;

/** The open database. Connections come straight from the engine: they cost it next to nothing. */
final class DerbyDatabase implements AutoCloseable {
  private static final String SHUT_DOWN = "08006";
  private static final String HELD_BY_ANOTHER = "XSDB6";

  private final StoreFiles files;
  private final BasicEmbeddedDataSource40 source;
  private volatile boolean closed;

  private DerbyDatabase(StoreFiles files) {
    this.files = files;
    source = source(files);
  }

  private static BasicEmbeddedDataSource40 source(StoreFiles files) {
    BasicEmbeddedDataSource40 source = new BasicEmbeddedDataSource40();
    source.setDatabaseName("directory:" + files.store());
    return source;
  }

  /** Opens the store, or makes it if there is none yet. */
  static DerbyDatabase open(StoreFiles files) {
    boolean isNew = files.isNew();
    files.prepare();
    System.setProperty("derby.system.home", files.log().toString());
    System.setProperty("derby.stream.error.file", files.log().resolve("derby.log").toString());
    DerbyDatabase database = new DerbyDatabase(files);
    if (isNew) {
      files.make(() -> database.boot(true));
    } else {
      database.boot(false);
    }
    return database;
  }

  private void boot(boolean isNew) {
    BasicEmbeddedDataSource40 first = source(files);
    if (isNew) {
      first.setCreateDatabase("create");
    }
    try (Connection connection = first.getConnection()) {
      if (connection.isReadOnly()) {
        throw readOnly();
      }
    } catch (SQLException fault) {
      throw cannotOpen(fault);
    }
  }

  private StoreException readOnly() {
    close();
    return new StoreException(
        "the store in " + files.store() + " can only be read; check who may write there");
  }

  private StoreException cannotOpen(SQLException fault) {
    if (has(fault, HELD_BY_ANOTHER)) {
      return new StoreException(
          "the store in "
              + files.store()
              + " is in use by another program; close the suite that has it open, "
              + "or choose another data directory",
          fault);
    }
    return new StoreException(
        "the store in "
            + files.store()
            + " cannot be opened ("
            + deepest(fault).getMessage()
            + "); "
            + files.remedy(),
        fault);
  }

  private static boolean has(SQLException fault, String state) {
    for (Throwable each = fault; each != null; each = each.getCause()) {
      if (each instanceof SQLException sql && state.equals(sql.getSQLState())) {
        return true;
      }
    }
    return fault.getNextException() != null && has(fault.getNextException(), state);
  }

  private static Throwable deepest(SQLException fault) {
    Throwable deepest = fault;
    while (deepest.getCause() != null) {
      deepest = deepest.getCause();
    }
    return deepest;
  }

  Connection connection() throws SQLException {
    // The engine would open the store again for whoever asks after it was shut down.
    if (closed) {
      throw new SQLException("the store in " + files.store() + " is closed", "08003");
    }
    return source.getConnection();
  }

  @Override
  public void close() {
    closed = true;
    BasicEmbeddedDataSource40 last = source(files);
    last.setShutdownDatabase("shutdown");
    try (Connection never = last.getConnection()) {
      throw new StoreException("the store in " + files.store() + " did not shut down: " + never);
    } catch (SQLException said) {
      if (!SHUT_DOWN.equals(said.getSQLState())) {
        throw new StoreException(
            "the store in " + files.store() + " did not shut down: " + said.getMessage(), said);
      }
    }
  }
}
