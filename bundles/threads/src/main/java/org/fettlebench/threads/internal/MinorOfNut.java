package org.fettlebench.threads.internal;

import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.Table;
import org.fettlebench.threads.DiameterLimits;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadSide;
import org.fettlebench.threads.internal.limits.LimitRules;

/**
 * Limits of the minor diameter of the nut: those of the standard's usual class, or for a series
 * that names a table of kind {@code thread-limits} from the basic size up by its tolerance.
 */
final class MinorOfNut {
  static final String KIND = "thread-limits";

  private MinorOfNut() {}

  static Optional<DiameterLimits> limits(
      String rule, ScrewThread thread, LimitRules rules, List<Table> tables) {
    return rules.classes(Optional.of(rule), thread).stream()
        .findFirst()
        .map(usual -> usual(rule, usual, thread, rules))
        .orElseGet(() -> fromTable(rule, thread, tables));
  }

  private static Optional<DiameterLimits> usual(
      String rule, String threadClass, ScrewThread thread, LimitRules rules) {
    try {
      return rules.limits(Optional.of(rule), thread, threadClass, Optional.empty()).stream()
          .filter(limits -> limits.side() == ThreadSide.INTERNAL)
          .findFirst()
          .flatMap(MinorOfNut::of);
    } catch (MeasureException none) {
      // The standard has no such pitch: a thread by rule or of a club may be any.
      return Optional.empty();
    }
  }

  private static Optional<DiameterLimits> of(LimitsOfThread nut) {
    return nut.minor()
        .least()
        .flatMap(
            least ->
                nut.minor()
                    .most()
                    .map(
                        most ->
                            new DiameterLimits(
                                nut.threadClass(), least, most, nut.minor().source())));
  }

  private static Optional<DiameterLimits> fromTable(
      String rule, ScrewThread thread, List<Table> tables) {
    return tables.stream()
        .filter(table -> table.id().equals(rule))
        .flatMap(table -> table.rows().stream())
        .filter(row -> row.requiredLength("pitch_mm").equals(thread.pitch()))
        .findFirst()
        .map(row -> ofRow(rule, row, thread));
  }

  private static DiameterLimits ofRow(String rule, Table.Row row, ScrewThread thread) {
    Length least = thread.minorInternal();
    Length most = least.plus(row.requiredLength("tolerance_mm"));
    return new DiameterLimits(rule + " " + row.requiredText("class"), least, most, row.source());
  }
}
