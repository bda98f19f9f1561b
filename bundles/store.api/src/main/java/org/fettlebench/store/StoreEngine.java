package org.fettlebench.store;

import java.nio.file.Path;
import javax.sql.DataSource;
import org.osgi.annotation.versioning.ProviderType;

/**
 * A database for the club's records. There is one in a running suite; it may open itself as late as
 * the first use, and closes itself when its service goes.
 */
@ProviderType
public interface StoreEngine {
  /**
   * Returns where connections come from, opening the store if it is not open yet. A connection
   * begins in auto-commit at READ COMMITTED or stricter, is used briefly by one thread, and is
   * closed; it is not kept in a field. What was committed is on disk.
   *
   * @throws StoreException if the store cannot be opened: another program holds it, it is damaged,
   *     it is missing though backups are there, or its directory cannot be written. The next call
   *     tries again, so that a cured fault needs no restart.
   */
  DataSource dataSource();

  /** Returns the few things in which this engine's SQL differs from another's; opens nothing. */
  Dialect dialect();

  /** Returns what and where the store is, in words for people; opens nothing. */
  String description();

  /**
   * Copies the whole store, as it is at one moment, into a new folder or file, while it is in use.
   * A copy that fails leaves nothing behind.
   *
   * @param why a word for the name, such as {@code before-migration}: small letters, digits and
   *     single hyphens
   * @return where the copy is
   * @throws IllegalArgumentException if {@code why} has other characters
   * @throws StoreException if the copy cannot be made
   */
  Path backup(String why);
}
