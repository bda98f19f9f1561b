package org.fettlebench.tooling;

import org.fettlebench.measure.Length;
import org.fettlebench.tables.Source;

/**
 * A drill as clearance drill for a thread.
 *
 * @param drill the drill, not below the listed hole
 * @param fit close, medium or free
 * @param listed the hole that the standard or list gives for that fit; the major diameter where no
 *     list has such a hole, which the source then says
 * @param clearance drill less major diameter
 * @param source of the listed hole
 */
public record ClearanceChoice(
    DrillSize drill, ClearanceFit fit, Length listed, Length clearance, Source source) {}
