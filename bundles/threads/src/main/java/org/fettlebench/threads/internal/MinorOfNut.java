package org.fettlebench.threads.internal;

import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.fettlebench.tables.Table;
import org.fettlebench.threads.DiameterLimits;
import org.fettlebench.threads.ScrewThread;

/**
 * Limits of the minor diameter of the nut: from the basic size up by a tolerance that a standard
 * gives by rule or by a table of kind {@code thread-limits}.
 */
final class MinorOfNut {
  static final String KIND = "thread-limits";

  private static final Source BS_93 =
      new Source(
          "BS 93: nut minor diameter +0.375 p (Machinery's Handbook, 31st edition, p2115)",
          Standing.RULE);
  private static final Source BS_84 =
      new Source(
          "BS 84 medium and normal: nut minor diameter +0.2 p and 0.004, 0.005 or 0.007 in by"
              + " pitch (Machinery's Handbook, 27th edition, p1857, remembered)",
          Standing.FROM_MEMORY);
  private static final Source B1_1 =
      new Source(
          "ASME B1.1 class 2B formula, remembered; agrees with the printed limits of #0-80 to 1-8",
          Standing.FROM_MEMORY);

  private MinorOfNut() {}

  static Optional<DiameterLimits> limits(String rule, ScrewThread thread, List<Table> tables) {
    return switch (rule) {
      case "BS 93" -> of("BS 93", thread, 0.375 * thread.pitch().millimetres(), BS_93);
      case "BS 84" -> of("BS 84 medium", thread, bs84ToleranceMm(thread), BS_84);
      case "ASME B1.1 2B" -> class2B(thread);
      default -> fromTable(rule, thread, tables);
    };
  }

  private static Optional<DiameterLimits> of(
      String name, ScrewThread thread, double toleranceMm, Source source) {
    Length least = thread.minorInternal();
    Length most = Length.ofMillimetres(least.millimetres() + toleranceMm);
    return Optional.of(new DiameterLimits(name, least, most, source));
  }

  /** 0.2 p and a constant that steps at 26 and at 20 threads per inch. */
  private static double bs84ToleranceMm(ScrewThread thread) {
    double pitchIn = thread.pitch().inches();
    // A little slack, since the pitch is held to 1 nm.
    double perInch = 1 / pitchIn + 1e-3;
    double constantIn = perInch >= 26 ? 0.004 : perInch >= 22 ? 0.005 : 0.007;
    return (0.2 * pitchIn + constantIn) * 25.4;
  }

  /** Below #6 the standard rounds the basic size and the tolerance to 0.0001 in and adds them. */
  private static Optional<DiameterLimits> class2B(ScrewThread thread) {
    Length least = thread.minorInternal();
    double toleranceIn = class2BToleranceIn(thread);
    double mostIn =
        thread.major().inches() < 0.138
            ? tenThousandths(least.inches()) + tenThousandths(toleranceIn)
            : least.inches() + toleranceIn;
    return Optional.of(new DiameterLimits("ASME B1.1 2B", least, Length.ofInches(mostIn), B1_1));
  }

  private static double tenThousandths(double inches) {
    return Math.round(inches * 1e4) / 1e4;
  }

  /**
   * From 1/4 in: 0.25 p - 0.4 p^2 (0.15 p coarser than 4 per inch); below: 0.05 p^(2/3) + 0.03 p/D
   * - 0.002, held between 0.25 p - 0.4 p^2 and 0.394 p; all in inches.
   */
  private static double class2BToleranceIn(ScrewThread thread) {
    double p = thread.pitch().inches();
    double usual = 0.25 * p - 0.4 * p * p;
    double tolerance;
    if (thread.major().inches() < 0.25) {
      double small = 0.05 * Math.cbrt(p * p) + 0.03 * p / thread.major().inches() - 0.002;
      tolerance = Math.min(Math.max(small, usual), 0.394 * p);
    } else {
      // A little slack, since the pitch is held to 1 nm.
      tolerance = p > 0.25 + 1e-6 ? 0.15 * p : usual;
    }
    return tolerance;
  }

  private static Optional<DiameterLimits> fromTable(
      String rule, ScrewThread thread, List<Table> tables) {
    return tables.stream()
        .filter(table -> table.id().equals(rule))
        .flatMap(table -> table.rows().stream())
        .filter(row -> row.requiredLength("pitch_mm").equals(thread.pitch()))
        .findFirst()
        .flatMap(row -> ofRow(rule, row, thread));
  }

  private static Optional<DiameterLimits> ofRow(String rule, Table.Row row, ScrewThread thread) {
    String standard = rule.replaceFirst(" \\d[A-H]$", "");
    return of(
        standard + " " + row.requiredText("class"),
        thread,
        row.requiredLength("tolerance_mm").millimetres(),
        row.source());
  }
}
