package org.fettlebench.tooling.internal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Table;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.Drills;
import org.fettlebench.tooling.ListedDrill;
import org.fettlebench.tooling.TappingChoice;

/** Tapping drills that lists name, by a table of kind tapping-drills. */
final class TappingLists {
  static final String KIND = "tapping-drills";

  /**
   * So far off the per cent wanted a listed drill still answers to it: what a published chart calls
   * its 75 per cent drill leaves 65 to 84 (docslib.org/doc/4942776).
   */
  private static final double NEAR_PERCENT = 10;

  private record Named(String thread, DrillSize drill, Source source) {}

  private final Map<String, List<Named>> byThread;

  private TappingLists(List<Named> rows) {
    byThread = rows.stream().collect(Collectors.groupingBy(Named::thread));
  }

  /**
   * Reads a table.
   *
   * @throws org.fettlebench.tables.TableFormatException with every fault of the table
   */
  static TappingLists read(Table table, Drills drills) {
    return new TappingLists(RowFaults.read(table, row -> named(row, drills)));
  }

  private static Named named(Table.Row row, Drills drills) {
    String drill = row.requiredText("drill");
    return new Named(
        key(row.requiredText("thread")),
        drills
            .find(drill)
            .orElseThrow(
                () ->
                    RowFaults.fault(
                        row,
                        "drill '" + drill + "' is not known; write No 22, F, 5/32 in or 4.0 mm")),
        row.source());
  }

  private static String key(String designation) {
    return designation.replaceAll("\\s+", "").toLowerCase(Locale.ROOT);
  }

  /** Returns what the tables name for a thread, smallest drill first. */
  static List<ListedDrill> listed(List<TappingLists> tables, ScrewThread thread) {
    Map<DrillSize, List<Source>> sources = new TreeMap<>();
    for (TappingLists table : tables) {
      for (Named named : table.byThread.getOrDefault(key(thread.designation()), List.of())) {
        sources.computeIfAbsent(named.drill(), drill -> new ArrayList<>()).add(named.source());
      }
    }
    List<ListedDrill> listed = new ArrayList<>();
    sources.forEach(
        (drill, named) ->
            listed.add(new ListedDrill(drill, thread.percentOfThread(drill.diameter()), named)));
    return Collections.unmodifiableList(listed);
  }

  /**
   * Puts drills that lists name near the per cent wanted before the others, those of most lists
   * first; what is equal in that stays as it was.
   */
  static List<TappingChoice> first(
      List<ListedDrill> listed, double wantedPercent, List<TappingChoice> ranked) {
    Map<DrillSize, Integer> lists =
        listed.stream()
            .filter(one -> Math.abs(one.percentOfThread() - wantedPercent) <= NEAR_PERCENT)
            .collect(Collectors.toMap(ListedDrill::drill, one -> one.sources().size()));
    Function<TappingChoice, Integer> named = choice -> lists.getOrDefault(choice.drill(), 0);
    return ranked.stream().sorted(Comparator.comparing(named).reversed()).toList();
  }
}
