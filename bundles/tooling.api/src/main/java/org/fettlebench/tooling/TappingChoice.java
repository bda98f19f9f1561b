package org.fettlebench.tooling;

import java.util.Optional;
import org.fettlebench.measure.Length;

/**
 * A drill as tapping drill for a thread.
 *
 * @param drill the drill
 * @param percentOfThread per cent of thread it leaves, at its nominal size
 * @param percentAsDrilled per cent of thread with the oversize expected of such a drill, where
 *     known
 * @param oversize expected oversize of the hole, where known
 * @param concern why it should not be used as it is ("outside minor diameter limits ..."), if so
 */
public record TappingChoice(
    DrillSize drill,
    double percentOfThread,
    Optional<Double> percentAsDrilled,
    Optional<Length> oversize,
    Optional<String> concern) {}
