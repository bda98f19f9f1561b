package org.fettlebench.tooling.risk;

import java.util.Collection;
import java.util.List;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.work.WorkMaterial;
import org.osgi.annotation.versioning.ProviderType;

/** Compares the torque that tapping takes with the torque that breaks the tap. */
@ProviderType
public interface TapRisks {
  /** Returns the materials for which a cutting resistance is known. */
  List<WorkMaterial> materials();

  /**
   * Works out the ratio for a job and what would lower it.
   *
   * @param job the hole to be tapped
   * @param drills at hand, or the whole catalogue, from which larger holes are proposed; may be
   *     empty
   * @throws org.fettlebench.measure.MeasureException if no table has the cutting resistance of the
   *     material; the message names those that have one
   */
  TapRisk of(TapJob job, Collection<DrillSize> drills);
}
