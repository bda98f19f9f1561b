package org.fettlebench.fits;

import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/** The room that spanners and sockets take, from the tables that are enabled now. */
@ProviderType
public interface Spanners {
  /**
   * Returns the tool for a hexagon: the row listed for its size, or by the rule for the kind, which
   * the standing then says; absent when neither is known.
   *
   * @param kind of tool
   * @param acrossFlatsMm of the hexagon, above 0
   */
  Optional<Spanner> find(Spanner.Kind kind, double acrossFlatsMm);
}
