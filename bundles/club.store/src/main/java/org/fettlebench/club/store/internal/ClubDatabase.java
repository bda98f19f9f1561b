package org.fettlebench.club.store.internal;

import java.sql.Connection;
import java.sql.SQLException;
import javax.sql.DataSource;
import org.fettlebench.store.StoreEngine;
import org.fettlebench.store.StoreException;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.Reference;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The store with the club's schema in it, and the one way to run a transaction there. */
@Component(service = ClubDatabase.class, immediate = true)
public final class ClubDatabase implements AutoCloseable {
  /**
   * Set to {@code false} by a start that may not need the store, so that it is opened when used.
   */
  static final String EARLY_PROPERTY = "fettlebench.store.early";

  private static final Logger LOG = LoggerFactory.getLogger(ClubDatabase.class);
  private static final int MOST_TRIES = 5;

  /** What is done in one transaction. */
  @FunctionalInterface
  interface Work<T> {
    T in(Transaction transaction) throws SQLException;
  }

  private final StoreEngine engine;
  private DataSource source;
  private boolean closed;

  /** Begins to open the store in the background, so that it is open when it is first wanted. */
  @Activate
  public ClubDatabase(BundleContext framework, @Reference StoreEngine engine) {
    this(engine);
    if (!"false".equals(framework.getProperty(EARLY_PROPERTY))) {
      Thread early = new Thread(this::openEarly, "open-store");
      early.setDaemon(true);
      early.start();
    }
  }

  /** Opens the store when it is first used. */
  public ClubDatabase(StoreEngine engine) {
    this.engine = engine;
  }

  private void openEarly() {
    try {
      open();
    } catch (RuntimeException fault) {
      // Whoever uses the store next is told; here it is only kept for the log.
      LOG.warn("The store was not opened early: {}", fault.getMessage(), fault);
    }
  }

  private synchronized DataSource open() {
    if (closed) {
      throw new StoreException("the club's books are closed; start the suite again");
    }
    if (source == null) {
      DataSource opened = engine.dataSource();
      new SchemaRunner(engine, Migrations.ofThisVersion()).bringUpToDate();
      source = opened;
    }
    return source;
  }

  /** Closes the books; waits while another thread is opening them. */
  @Override
  @Deactivate
  public synchronized void close() {
    closed = true;
    source = null;
  }

  /** Runs statements that belong together: all of them are kept, or none. */
  <T> T inTransaction(Work<T> work) {
    DataSource opened = open();
    for (int tried = 1; ; tried++) {
      try {
        return once(opened, work);
      } catch (SQLException fault) {
        if (tried == MOST_TRIES || !engine.dialect().isCollision(fault)) {
          throw new StoreException(
              "the store refused (%s); nothing was changed. Store: %s"
                  .formatted(fault.getMessage(), engine.description()),
              fault);
        }
        LOG.debug("Tried {} times: another transaction was in the way", tried, fault);
      }
    }
  }

  private <T> T once(DataSource opened, Work<T> work) throws SQLException {
    try (Connection connection = opened.getConnection()) {
      connection.setAutoCommit(false);
      boolean done = false;
      try (Transaction transaction = new Transaction(connection, engine.dialect())) {
        T result = work.in(transaction);
        connection.commit();
        done = true;
        return result;
      } finally {
        if (!done) {
          connection.rollback();
        }
      }
    }
  }
}
