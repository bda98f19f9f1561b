package org.fettlebench.store.derby.internal;

import java.nio.file.Path;
import javax.sql.DataSource;
import org.fettlebench.store.Dialect;
import org.fettlebench.store.StoreEngine;
import org.fettlebench.store.StoreException;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;

/**
 * The store in the data directory. It is opened at the first use, not before, so that whoever does
 * not need it does not wait for it; whoever will need it soon asks early, on a thread of its own.
 */
@Component(service = StoreEngine.class)
public final class DerbyStoreEngine implements StoreEngine, AutoCloseable {
  /** The framework property that names the data directory. */
  static final String DATA_PROPERTY = "fettlebench.data";

  private final StoreFiles files;
  private final Dialect dialect = new DerbyDialect();
  private DerbyDatabase database;
  private boolean closed;

  /** Takes the data directory from the framework. */
  @Activate
  public DerbyStoreEngine(BundleContext framework) {
    this(dataDirectory(framework.getProperty(DATA_PROPERTY)));
  }

  /** Takes {@code data} for the data directory; nothing is opened or made yet. */
  public DerbyStoreEngine(Path data) {
    files = new StoreFiles(data);
  }

  private static Path dataDirectory(String property) {
    if (property == null || property.isBlank()) {
      throw new StoreException(
          "the data directory is not known: start with the framework property " + DATA_PROPERTY);
    }
    return Path.of(property);
  }

  @Override
  public DataSource dataSource() {
    return new StoreDataSource(open());
  }

  private synchronized DerbyDatabase open() {
    if (closed) {
      throw new StoreException("the store in " + files.store() + " is closed");
    }
    if (database == null) {
      database = DerbyDatabase.open(files);
    }
    return database;
  }

  @Override
  public Dialect dialect() {
    return dialect;
  }

  @Override
  public String description() {
    return "Apache Derby, embedded, in " + files.store();
  }

  @Override
  public Path backup(String why) {
    return new DerbyBackup(files).take(open(), why);
  }

  /** Shuts the store down; waits while another thread is opening it. */
  @Override
  @Deactivate
  public synchronized void close() {
    closed = true;
    if (database != null) {
      database.close();
      database = null;
    }
  }
}
