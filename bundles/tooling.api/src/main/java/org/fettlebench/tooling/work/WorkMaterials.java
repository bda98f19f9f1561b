package org.fettlebench.tooling.work;

import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/** The materials that are drilled and tapped, of all tables of kind {@code work-materials}. */
@ProviderType
public interface WorkMaterials {
  /** Returns all materials, those that modules add first. */
  List<WorkMaterial> all();

  /**
   * Finds a material by its id, its name or one of its other names, such as {@code mild steel},
   * {@code EN1A} or {@code brass-cz121}; capitals, spaces and hyphens do not matter.
   */
  Optional<WorkMaterial> find(String name);

  /**
   * Returns the material whose figures stand in where a table has none for the one asked, such as
   * bronze for gunmetal; whoever shows them says so.
   */
  Optional<WorkMaterial> standIn(WorkMaterial material);

  /** Returns materials of which a name holds one of the words written; all if none does. */
  List<WorkMaterial> near(String name);
}
