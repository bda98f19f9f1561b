package org.fettlebench.threads.strength;

import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/** The materials of all tables of kind {@code materials}. */
@ProviderType
public interface Materials {
  /** Returns all materials in the order of their tables, the suite's own first. */
  List<Material> all();

  /** Finds a material by its id or name, whatever the capitals, spaces and hyphens. */
  Optional<Material> find(String name);

  /** Returns materials whose name holds every word of what was written, in the tables' order. */
  List<Material> near(String name);
}
