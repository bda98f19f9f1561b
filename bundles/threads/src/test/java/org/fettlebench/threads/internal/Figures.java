package org.fettlebench.threads.internal;

import org.fettlebench.measure.Length;
import org.fettlebench.threads.DiameterRange;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ThreadClasses;
import org.fettlebench.threads.ThreadSide;
import org.fettlebench.threads.Threads;

/** Single figures of limits, as tests of published rows name them. */
final class Figures {
  private Figures() {}

  static <T extends Threads & ThreadClasses> LimitsOfThread limits(
      T threads, String designation, String threadClass, ThreadSide side) {
    return threads.limits(threads.find(designation).orElseThrow(), threadClass).stream()
        .filter(limits -> limits.side() == side)
        .findFirst()
        .orElseThrow();
  }

  /** Returns {@code major least} and its like. */
  static Length figure(LimitsOfThread limits, String which) {
    DiameterRange range = range(limits, which.split(" ")[0]);
    return (which.endsWith("most") ? range.most() : range.least()).orElseThrow();
  }

  static DiameterRange range(LimitsOfThread limits, String diameter) {
    return switch (diameter) {
      case "major" -> limits.major();
      case "effective" -> limits.effective();
      case "minor" -> limits.minor();
      default -> throw new IllegalArgumentException(diameter);
    };
  }

  /** Returns the tolerance in millimetres. */
  static double width(DiameterRange range) {
    return range.most().orElseThrow().minus(range.least().orElseThrow()).millimetres();
  }
}
