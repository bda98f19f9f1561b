package org.fettlebench.club;

import java.util.Optional;
import org.fettlebench.measure.Length;

/**
 * What a stock line holds. Two lines of equal goods in one place and condition are one line.
 *
 * @param kind what sort of thing
 * @param name short name for people, such as {@code 2 BA hexagon screw x 1/2 in} or {@code 5/32 in}
 * @param thread designation of the thread, for fasteners and taps; else empty
 * @param style head, nut or washer style of a fastener, lead of a tap ({@code taper}, {@code
 *     second}, {@code bottoming}); else empty
 * @param diameter of a drill
 * @param length under the head of a screw, of a stud, where it matters
 * @param material such as {@code steel}, {@code brass}; empty if not said
 */
public record Goods(
    Kind kind,
    String name,
    String thread,
    String style,
    Optional<Length> diameter,
    Optional<Length> length,
    String material) {

  /** Sorts of thing. */
  public enum Kind {
    /** Screw, bolt, stud, nut, washer. */
    FASTENER,
    /** Drill. */
    DRILL,
    /** Tap. */
    TAP,
    /** Anything else. */
    SUNDRY
  }
}
