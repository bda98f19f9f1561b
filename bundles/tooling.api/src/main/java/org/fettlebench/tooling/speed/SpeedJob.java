package org.fettlebench.tooling.speed;

import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tooling.work.WorkMaterial;

/**
 * A cut for which the spindle's speed is asked.
 *
 * @param operation what is done
 * @param diameter of the cutter where it cuts fastest, above nothing
 * @param material that is cut
 * @param steel of the cutter
 * @param machine its speeds; empty when any speed can be had
 */
public record SpeedJob(
    CuttingOperation operation,
    Length diameter,
    WorkMaterial material,
    ToolSteel steel,
    Optional<SpindleRange> machine) {
  /**
   * Checks the diameter.
   *
   * @throws MeasureException if it is not above nothing
   */
  public SpeedJob {
    if (!diameter.isPositive()) {
      throw new MeasureException("diameter of the cutter " + diameter + " must be above 0 mm");
    }
  }
}
