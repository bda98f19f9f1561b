package org.fettlebench.tooling.speed;

import java.util.List;
import org.fettlebench.measure.MeasureException;

/**
 * The speeds that a machine's spindle can turn at.
 *
 * @param leastRpm slowest, above 0
 * @param mostRpm fastest, not below the slowest, at most 200000
 * @param stepsRpm the speeds of its pulleys or gears, rising; empty when it can be set anywhere
 *     between the two
 */
public record SpindleRange(double leastRpm, double mostRpm, List<Double> stepsRpm) {
  private static final double FASTEST = 200_000;

  /**
   * Copies what could change and checks the speeds.
   *
   * @throws MeasureException naming the speed that cannot be
   */
  public SpindleRange {
    stepsRpm = List.copyOf(stepsRpm);
    check(leastRpm);
    check(mostRpm);
    if (!(leastRpm <= mostRpm)) {
      throw new MeasureException(
          "slowest speed " + leastRpm + " rpm is above the fastest, " + mostRpm + " rpm");
    }
  }

  private static void check(double rpm) {
    if (!(rpm > 0 && rpm <= FASTEST)) {
      throw new MeasureException(
          rpm + " rpm is no spindle speed: it must be above 0 and up to " + (int) FASTEST);
    }
  }

  /** Returns a machine that can be set anywhere between two speeds. */
  public static SpindleRange between(double leastRpm, double mostRpm) {
    return new SpindleRange(leastRpm, mostRpm, List.of());
  }

  /**
   * Returns a machine with some fixed speeds, in any order.
   *
   * @throws MeasureException if there is none or one cannot be
   */
  public static SpindleRange steps(List<Double> rpm) {
    if (rpm.isEmpty()) {
      throw new MeasureException("a machine needs at least one speed");
    }
    List<Double> rising = rpm.stream().distinct().sorted().toList();
    rising.forEach(SpindleRange::check);
    return new SpindleRange(rising.get(0), rising.get(rising.size() - 1), rising);
  }
}
