package org.fettlebench.tooling.internal;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Table;
import org.fettlebench.tooling.HoleChooser.PercentWanted;
import org.fettlebench.tooling.ThreadDepth;

/** Usual per cents of thread of one table of kind thread-percent. */
final class PercentHabits {
  static final String KIND = "thread-percent";
  static final String GENERAL = "general";

  /** What stands for the material where nobody says what is cut. */
  static final String NONE_TOLD = "none told";

  private record Habit(String key, PercentWanted wanted) {}

  private final Map<String, PercentWanted> byMaterialAndDepth = new HashMap<>();

  private PercentHabits(List<Habit> habits) {
    habits.forEach(habit -> byMaterialAndDepth.putIfAbsent(habit.key(), habit.wanted()));
  }

  /**
   * Reads a table.
   *
   * @throws org.fettlebench.tables.TableFormatException with every fault of the table
   */
  static PercentHabits read(Table table) {
    return new PercentHabits(RowFaults.read(table, PercentHabits::habit));
  }

  private static Habit habit(Table.Row row) {
    double from = RowFaults.within(row, "percent_from", 0, 100);
    double to = RowFaults.within(row, "percent_to", 0, 100);
    if (!(from <= to)) {
      throw RowFaults.fault(row, "percent_from " + from + " is above percent_to " + to);
    }
    String depth = row.requiredText("depth");
    if (!Set.of("deep", "usual", "thin").contains(depth)) {
      throw RowFaults.fault(row, "depth '" + depth + "' must be deep, usual or thin");
    }
    String range = from == to ? plain(from) : "middle of " + plain(from) + " to " + plain(to);
    String material = row.requiredText("material");
    String what = material.equals(NONE_TOLD) ? "" : " for %s, %s work".formatted(material, depth);
    Source source =
        new Source(
            "%s; %s per cent%s".formatted(row.source().citation(), range, what),
            row.source().standing());
    return new Habit(key(material, depth), new PercentWanted((from + to) / 2, source));
  }

  private static String plain(double percent) {
    return percent == Math.rint(percent) ? String.valueOf((long) percent) : String.valueOf(percent);
  }

  private static String key(String material, String depth) {
    return material.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s-]+", " ") + "/" + depth;
  }

  private Optional<PercentWanted> of(String material, ThreadDepth depth) {
    return Optional.ofNullable(byMaterialAndDepth.get(key(material, depth.word())));
  }

  /**
   * Asks the tables in turn, first for the depth, then for usual work, then in general. Where
   * nothing is told, the first table with a figure for that or in general answers.
   */
  static PercentWanted wanted(List<PercentHabits> tables, String material, ThreadDepth depth) {
    if (material.isBlank() && depth == ThreadDepth.USUAL) {
      return tables.stream()
          .flatMap(table -> table.of(NONE_TOLD, depth).or(() -> table.of(GENERAL, depth)).stream())
          .findFirst()
          .map(usual -> new PercentWanted(usual.percent(), usual.source(), true))
          .orElseThrow(PercentHabits::noGeneral);
    }
    return told(tables, material, depth);
  }

  private static PercentWanted told(
      List<PercentHabits> tables, String material, ThreadDepth depth) {
    return first(tables, material, depth)
        .or(
            () ->
                first(tables, material, ThreadDepth.USUAL)
                    .map(usual -> instead(usual, "no figure for " + depth.word() + " work in it")))
        .or(
            () ->
                first(tables, GENERAL, ThreadDepth.USUAL)
                    .map(
                        usual ->
                            material.isBlank()
                                ? usual
                                : instead(usual, "no figure for '" + material.strip() + "'")))
        .orElseThrow(PercentHabits::noGeneral);
  }

  private static IllegalStateException noGeneral() {
    return new IllegalStateException(
        "no table of kind " + KIND + " gives a per cent for '" + GENERAL + "'");
  }

  private static Optional<PercentWanted> first(
      List<PercentHabits> tables, String material, ThreadDepth depth) {
    return tables.stream().flatMap(table -> table.of(material, depth).stream()).findFirst();
  }

  private static PercentWanted instead(PercentWanted usual, String why) {
    return new PercentWanted(
        usual.percent(),
        new Source(usual.source().citation() + " (" + why + ")", usual.source().standing()));
  }
}
