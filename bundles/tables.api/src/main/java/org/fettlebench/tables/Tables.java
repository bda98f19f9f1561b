package org.fettlebench.tables;

import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/** All tables carried by started bundles. */
@ProviderType
public interface Tables {
  /** Returns the tables of a kind: the suite's own first, then by module and id. */
  List<Table> ofKind(String kind);

  /** Returns the table of a kind with an id, such as {@code BA}; empty if there is none. */
  default Optional<Table> find(String kind, String id) {
    return ofKind(kind).stream().filter(table -> table.id().equals(id)).findFirst();
  }

  /** Returns all tables, each kind and id once: of two the suite's own stands. */
  List<Table> all();

  /**
   * Returns a number that rises whenever a table comes or goes, so that readers may keep results.
   */
  long revision();
}
