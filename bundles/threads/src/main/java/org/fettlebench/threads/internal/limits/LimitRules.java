package org.fettlebench.threads.internal.limits;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.Table;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ScrewThread;

/** The standards' rules by the name that a series gives in its header. */
public final class LimitRules {
  /** Kinds of tables that the rules read. */
  public static final List<String> KINDS =
      List.of(
          "thread-limits",
          MetricTolerances.TOLERANCES,
          MetricTolerances.DEVIATIONS,
          "thread-printed-tolerances");

  private final Map<String, LimitRule> rules;

  /**
   * Takes the tables of the moment.
   *
   * @param tables of all {@link #KINDS}
   */
  public LimitRules(List<Table> tables) {
    List<Table> printed =
        tables.stream()
            .filter(one -> one.kind().equals("thread-printed-tolerances"))
            .filter(one -> one.id().equals("ASME B1.1"))
            .toList();
    List<Table> limits = tables.stream().filter(one -> one.kind().equals("thread-limits")).toList();
    rules =
        Map.of(
            "ISO 965-1 6H", new Iso965(tables),
            "ASME B1.1 2B", new AsmeB11(printed),
            "BS 84", new Bs84(),
            "BS 93", new Bs93(),
            "ISO 228-1", new Iso228(limits));
  }

  /** Returns the usual classes of a thread; empty where no rule has that name. */
  public List<String> classes(Optional<String> rule, ScrewThread thread) {
    return find(rule).map(known -> known.classes(thread)).orElse(List.of());
  }

  /**
   * Returns the limits of a class, the screw first.
   *
   * @throws MeasureException if the thread has no such class, or no such length of engagement
   */
  public List<LimitsOfThread> limits(
      Optional<String> rule, ScrewThread thread, String threadClass, Optional<Length> engagement) {
    LimitRule known =
        find(rule)
            .orElseThrow(
                () ->
                    new MeasureException(
                        "series %s names no standard for all its limits: give its table a line"
                                .formatted(thread.series())
                            + " '# limits: ...' with one of "
                            + String.join(", ", rules.keySet().stream().sorted().toList())));
    engagement.ifPresent(LimitRules::check);
    List<LimitsOfThread> limits = new ArrayList<>();
    for (String one : threadClass.strip().split("\\s*/\\s*", -1)) {
      limits.addAll(known.limits(thread, one, engagement));
    }
    // A nut's one class comes with each class of screw: once is enough.
    List<LimitsOfThread> once = new ArrayList<>(limits.stream().distinct().toList());
    once.sort(Comparator.comparing(LimitsOfThread::side));
    return List.copyOf(once);
  }

  private static void check(Length engagement) {
    if (!engagement.isPositive()) {
      throw new MeasureException("length of engagement " + engagement + " must be above 0 mm");
    }
  }

  private Optional<LimitRule> find(Optional<String> rule) {
    return rule.map(rules::get);
  }
}
