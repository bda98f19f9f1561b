package org.fettlebench.fasteners;

import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;

/**
 * How a head is to sit.
 *
 * @param hole the hole for the screw, where known; else the thread's major diameter is taken
 * @param below how far the top of the head lies under the face; nothing for flush
 * @param washer whether a plain washer goes under the head
 */
public record SinkWanted(Optional<Length> hole, Length below, boolean washer) {
  /** Flush, with the hole not yet chosen, without a washer. */
  public static final SinkWanted FLUSH = new SinkWanted(Optional.empty(), Length.ZERO, false);

  /**
   * Checks the lengths.
   *
   * @throws MeasureException if the hole is not above nothing or the depth is below it
   */
  public SinkWanted {
    if (hole.isPresent() && !hole.get().isPositive()) {
      throw new MeasureException("hole " + hole.get() + " must be above 0 mm");
    }
    if (!(below.compareTo(Length.ZERO) >= 0)) {
      throw new MeasureException("depth of the head under the face " + below + " is below 0 mm");
    }
  }
}
