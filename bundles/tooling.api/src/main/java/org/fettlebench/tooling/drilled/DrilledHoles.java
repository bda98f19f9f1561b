package org.fettlebench.tooling.drilled;

import java.util.Collection;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.work.WorkMaterial;
import org.osgi.annotation.versioning.ProviderType;

/** Tells how drilled holes come out, and chooses what to drill before reaming. */
@ProviderType
public interface DrilledHoles {
  /** Returns what the tables say of the hole that a drill makes. */
  DrilledHole expected(DrillSize drill);

  /**
   * Chooses the drill before a reamer: the hole it makes, as it is counted to come out, leaves the
   * reamer neither too much nor too little.
   *
   * @param reamed diameter to be reamed, above nothing
   * @param material that is reamed; for none told the row that names no material stands
   * @param from drills at hand, or the whole catalogue
   * @return the range, and the drills in it, nearest to its middle first; empty where no table has
   *     the size
   * @throws MeasureException if the size is not above nothing, or nothing would be left to drill
   */
  Optional<ReamingChoice> beforeReaming(
      Length reamed, Optional<WorkMaterial> material, Collection<DrillSize> from);
}
