package org.fettlebench.tooling.speed;

import java.util.List;
import org.fettlebench.tooling.work.WorkMaterial;
import org.osgi.annotation.versioning.ProviderType;

/** Works out how fast a spindle should turn. */
@ProviderType
public interface SpindleSpeeds {
  /** Returns the materials for which some source gives a speed for the operation. */
  List<WorkMaterial> materials(CuttingOperation operation);

  /**
   * Works out the range of speeds that the sources allow, and which of the machine's to set: the
   * slowest within the range; if there is none, the fastest below it; if all are above it, the
   * slowest, which is then told to be too fast.
   *
   * @throws org.fettlebench.measure.MeasureException if no source has the material; the message
   *     names those that are known
   */
  SpindleSpeed of(SpeedJob job);
}
