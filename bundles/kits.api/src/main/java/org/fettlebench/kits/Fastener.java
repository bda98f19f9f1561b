package org.fettlebench.kits;

import java.util.Optional;
import org.fettlebench.measure.Length;

/**
 * A screw, bolt, stud, nut or washer by its usual description.
 *
 * @param thread designation, such as {@code 2 BA}, known to the thread series
 * @param style head, nut or washer style, such as {@code hexagon}, known to the head tables
 * @param length under the head; empty for nuts and washers
 * @param material such as {@code steel}; empty when any will do
 */
public record Fastener(String thread, String style, Optional<Length> length, String material) {}
