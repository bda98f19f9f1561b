package org.fettlebench.tooling.internal.speed;

import java.util.Comparator;
import java.util.Optional;
import org.fettlebench.tooling.speed.SpindleFit;
import org.fettlebench.tooling.speed.SpindleRange;

/** What to set a machine to so that it meets a range of speeds. */
record SpindleSetting(double rpm, SpindleFit fit) {
  static SpindleSetting of(double leastRpm, double mostRpm, Optional<SpindleRange> machine) {
    return machine
        .map(range -> of(leastRpm, mostRpm, range))
        .orElseGet(() -> new SpindleSetting(leastRpm, SpindleFit.ANY_MACHINE));
  }

  private static SpindleSetting of(double leastRpm, double mostRpm, SpindleRange range) {
    if (range.leastRpm() > mostRpm) {
      return new SpindleSetting(range.leastRpm(), SpindleFit.FASTER);
    }
    if (range.stepsRpm().isEmpty()) {
      return range.mostRpm() < leastRpm
          ? new SpindleSetting(range.mostRpm(), SpindleFit.SLOWER)
          : new SpindleSetting(Math.max(leastRpm, range.leastRpm()), SpindleFit.WITHIN);
    }
    return range.stepsRpm().stream()
        .filter(step -> step >= leastRpm && step <= mostRpm)
        .findFirst()
        .map(step -> new SpindleSetting(step, SpindleFit.WITHIN))
        .orElseGet(() -> below(leastRpm, range));
  }

  private static SpindleSetting below(double leastRpm, SpindleRange range) {
    double step =
        range.stepsRpm().stream()
            .filter(rpm -> rpm < leastRpm)
            .max(Comparator.naturalOrder())
            .orElseThrow();
    return new SpindleSetting(step, SpindleFit.SLOWER);
  }
}
