package org.fettlebench.store;

import java.nio.file.Path;
import javax.sql.DataSource;
import org.osgi.annotation.versioning.ProviderType;

/** A database that is open for the club's records. */
@ProviderType
public interface StoreEngine {
  /** Returns where connections come from; each is used briefly and closed. */
  DataSource dataSource();

  /** Returns the few things in which this engine's SQL differs from another's. */
  Dialect dialect();

  /** Returns what and where the store is, in words for people. */
  String description();

  /**
   * Copies the whole store, as it is at one moment, into a new folder or file.
   *
   * @param why a word for the name, such as {@code before-migration}
   * @return where the copy is
   */
  Path backup(String why);
}
