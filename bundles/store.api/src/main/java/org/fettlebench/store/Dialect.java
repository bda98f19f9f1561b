package org.fettlebench.store;

import org.osgi.annotation.versioning.ConsumerType;

/** The few things in which one engine's SQL differs from another's. */
@ConsumerType
public interface Dialect {
  /** Returns the engine's name, such as {@code derby}. */
  String name();

  /** Returns the column definition of a key that numbers itself. */
  String identityColumn();

  /** Returns the type of a text without a limit. */
  String longTextType();

  /** Returns what follows a SELECT that locks the rows it reads until the transaction ends. */
  String forUpdate();

  /** Returns the clause that keeps at most {@code most} rows. */
  String firstRows(int most);
}
