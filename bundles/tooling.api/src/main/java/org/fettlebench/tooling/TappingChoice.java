package org.fettlebench.tooling;

import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Source;

/**
 * A drill as tapping drill for a thread.
 *
 * @param drill the drill
 * @param percentOfThread per cent of thread it leaves, at its nominal size, by the convention of
 *     {@link org.fettlebench.threads.ThreadForm#percentDepthPerPitch}
 * @param percentAsDrilled per cent of thread with the oversize expected of such a drill, where
 *     known
 * @param oversize mean oversize expected of the hole, where known; there together with {@code
 *     percentAsDrilled}
 * @param concern why it should not be used as it is ("above the most ..."), if so
 * @param oversizeSource where the oversize comes from, to be shown with it
 */
public record TappingChoice(
    DrillSize drill,
    double percentOfThread,
    Optional<Double> percentAsDrilled,
    Optional<Length> oversize,
    Optional<String> concern,
    Optional<Source> oversizeSource) {

  /** Makes a choice without a source of the oversize. */
  public TappingChoice(
      DrillSize drill,
      double percentOfThread,
      Optional<Double> percentAsDrilled,
      Optional<Length> oversize,
      Optional<String> concern) {
    this(drill, percentOfThread, percentAsDrilled, oversize, concern, Optional.empty());
  }
}
