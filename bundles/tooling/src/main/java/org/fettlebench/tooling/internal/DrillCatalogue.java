package org.fettlebench.tooling.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFormatException;
import org.fettlebench.tooling.DrillSize;

/** All drill systems of the moment as one: each size once, with all its names. */
final class DrillCatalogue {
  static final String KIND = "drills";

  private static final Pattern BARE_NUMBER = Pattern.compile("[+-]?[\\d.,]+");

  /** One name in one system. */
  private record Named(String name, Length diameter) {}

  /** A drill system as its table lists it. */
  record DrillSystem(int order, List<Named> drills) {
    /**
     * Reads a system.
     *
     * @throws TableFormatException with every fault of the table
     */
    static DrillSystem read(Table table) {
      return new DrillSystem(order(table), RowFaults.read(table, DrillSystem::named));
    }

    private static int order(Table table) {
      String order = table.header().getOrDefault("order", "999999999");
      if (!order.matches("\\d{1,9}")) {
        throw new TableFormatException(
            KIND + " " + table.id(),
            List.of("'order: " + order + "' must be a whole number such as 10"));
      }
      return Integer.parseInt(order);
    }

    private static Named named(Table.Row row) {
      String name = row.requiredText("name");
      if (BARE_NUMBER.matcher(name).matches()) {
        throw RowFaults.fault(
            row, "name '" + name + "' is a bare number: add what it counts, such as No or mm");
      }
      return new Named(name, RowFaults.needed(row, "diameter"));
    }
  }

  private final NavigableMap<Length, DrillSize> bySize = new TreeMap<>();
  private final Map<String, DrillSize> byName = new HashMap<>();

  DrillCatalogue(List<DrillSystem> systems) {
    Map<Length, List<String>> names = new HashMap<>();
    List<DrillSystem> sorted =
        systems.stream().sorted(Comparator.comparingInt(DrillSystem::order)).toList();
    for (DrillSystem system : sorted) {
      for (Named drill : system.drills()) {
        List<String> sizeNames = names.computeIfAbsent(drill.diameter(), size -> new ArrayList<>());
        if (!sizeNames.contains(drill.name())) {
          sizeNames.add(drill.name());
        }
      }
    }
    names.forEach((diameter, all) -> bySize.put(diameter, new DrillSize(diameter, all)));
    for (DrillSystem system : sorted) {
      system.drills().forEach(d -> byName.putIfAbsent(key(d.name()), bySize.get(d.diameter())));
    }
  }

  List<DrillSize> all() {
    return List.copyOf(bySize.values());
  }

  Optional<DrillSize> named(String name) {
    return Optional.ofNullable(byName.get(key(name)));
  }

  Optional<DrillSize> exactly(Length diameter) {
    return Optional.ofNullable(bySize.get(diameter));
  }

  List<DrillSize> near(Length diameter, int most) {
    if (!(most >= 0)) {
      throw new IllegalArgumentException(most + " drills is below 0");
    }
    // A stable sort of rising sizes: of two equally near, the smaller comes first.
    return bySize.values().stream()
        .sorted(Comparator.comparing(drill -> drill.diameter().minus(diameter).abs()))
        .limit(most)
        .sorted()
        .toList();
  }

  /** Brings the ways of writing one name to one: {@code no22}, {@code f}. */
  private static String key(String name) {
    return name.toLowerCase(Locale.ROOT)
        .replaceAll("[\\s\u00a0]+", "")
        .replaceFirst("^(?:no\\.?|nr\\.?|number|#|\u2116)(?=\\d)", "no")
        .replaceFirst("^letter(?=[a-z]$)", "");
  }
}
