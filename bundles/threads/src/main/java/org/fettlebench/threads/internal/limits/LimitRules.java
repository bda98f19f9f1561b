package org.fettlebench.threads.internal.limits;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.Table;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadSide;

/** The standards' rules by the name that a series gives in its header. */
public final class LimitRules {
  /** Kinds of tables that the rules read. */
  public static final List<String> KINDS =
      List.of(
          "thread-limits",
          MetricTolerances.TOLERANCES,
          MetricTolerances.DEVIATIONS,
          "thread-printed-tolerances");

  private final Map<String, Supplier<LimitRule>> makers;

  /** Made at the first question, since most starts ask none. */
  private final Map<String, LimitRule> made = new ConcurrentHashMap<>();

  /**
   * Takes the tables of the moment.
   *
   * @param tables of all {@link #KINDS}
   */
  public LimitRules(List<Table> tables) {
    makers =
        Map.of(
            "ISO 965-1 6H", () -> new Iso965(tables),
            "ASME B1.1 2B",
                () -> new AsmeB11(ofKind(tables, "thread-printed-tolerances", "ASME B1.1")),
            "BS 84", Bs84::new,
            "BS 93", Bs93::new,
            "ISO 228-1", () -> new Iso228(ofKind(tables, "thread-limits", "ISO 228-1")));
  }

  private static List<Table> ofKind(List<Table> tables, String kind, String id) {
    return tables.stream().filter(one -> one.kind().equals(kind) && one.id().equals(id)).toList();
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
                            + String.join(", ", makers.keySet().stream().sorted().toList())));
    engagement.ifPresent(LimitRules::check);
    List<LimitsOfThread> screws = new ArrayList<>(2);
    List<LimitsOfThread> nuts = new ArrayList<>(2);
    for (String one : parts(threadClass)) {
      for (LimitsOfThread limits : known.limits(thread, one, engagement)) {
        // A nut's one class comes with each class of screw: once is enough.
        List<LimitsOfThread> side = limits.side() == ThreadSide.EXTERNAL ? screws : nuts;
        if (!side.contains(limits)) {
          side.add(limits);
        }
      }
    }
    screws.addAll(nuts);
    return List.copyOf(screws);
  }

  /** Parts 6H/6g at the stroke. */
  private static List<String> parts(String threadClass) {
    int stroke = threadClass.indexOf('/');
    if (stroke < 0) {
      return List.of(threadClass.strip());
    }
    List<String> parts = new ArrayList<>(2);
    for (String part : threadClass.split("/", -1)) {
      parts.add(part.strip());
    }
    return parts;
  }

  private static void check(Length engagement) {
    if (!engagement.isPositive()) {
      throw new MeasureException("length of engagement " + engagement + " must be above 0 mm");
    }
  }

  private Optional<LimitRule> find(Optional<String> rule) {
    return rule.filter(makers::containsKey)
        .map(name -> made.computeIfAbsent(name, unmade -> makers.get(unmade).get()));
  }
}
