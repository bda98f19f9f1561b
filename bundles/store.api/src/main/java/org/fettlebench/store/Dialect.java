package org.fettlebench.store;

import java.sql.SQLException;
import org.osgi.annotation.versioning.ProviderType;

/**
 * The few things in which one engine's SQL differs from another's. All else is written in the SQL
 * that Derby and PostgreSQL share.
 */
@ProviderType
public interface Dialect {
  /** Returns the engine's name, such as {@code derby}. */
  String name();

  /** Returns the column definition of a key that numbers itself. */
  String identityColumn();

  /** Returns the type of a text without a limit: {@code CLOB}, {@code TEXT}. */
  String longTextType();

  /** Returns what follows a SELECT that locks the rows it reads until the transaction ends. */
  String forUpdate();

  /**
   * Returns the clause that keeps at most {@code most} rows; it stands after ORDER BY.
   *
   * @throws IllegalArgumentException if {@code most} is not above nothing
   */
  String firstRows(int most);

  /** Returns whether a statement failed because a table that it names does not exist. */
  boolean isTableMissing(SQLException fault);

  /**
   * Returns whether a transaction failed only because another one was in its way (a deadlock, or
   * the same key at the same moment), so that the whole of it may be tried again.
   */
  boolean isCollision(SQLException fault);
}
