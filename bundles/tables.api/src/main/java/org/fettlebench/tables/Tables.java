package org.fettlebench.tables;

import java.util.List;
import org.osgi.annotation.versioning.ProviderType;

/** All tables carried by started bundles. */
@ProviderType
public interface Tables {
  /** Returns the tables of a kind: the suite's own first, then by module and id. */
  List<Table> ofKind(String kind);

  /** Returns all tables. */
  List<Table> all();

  /**
   * Returns a number that rises whenever a table comes or goes, so that readers may keep results.
   */
  long revision();
}
