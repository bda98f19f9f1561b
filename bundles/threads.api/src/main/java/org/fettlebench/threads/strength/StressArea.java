package org.fettlebench.threads.strength;

import org.fettlebench.tables.Source;

/**
 * The area that carries the pull in a screw thread.
 *
 * @param mm2 in square millimetres
 * @param source the rule it is worked out by
 */
public record StressArea(double mm2, Source source) {}
