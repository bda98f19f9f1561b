package org.fettlebench.threads.internal.identify;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFormatException;
import org.fettlebench.tables.Tables;
import org.fettlebench.threads.ScrewThread;

/** Across flats of heads and nuts, out of the tables of kind {@code heads}. */
final class Hexagons {
  /** Across flats by series and major diameter. */
  private final Map<String, Map<Length, Set<Length>>> flats = new HashMap<>();

  Hexagons(Tables tables) {
    tables.ofKind("heads").forEach(this::read);
  }

  private void read(Table table) {
    String style = table.header().getOrDefault("style", "");
    if (style.contains("hexagon") || style.contains("nut")) {
      String[] series = table.header().getOrDefault("series", "").split("[ ,]+");
      for (Table.Row row : table.rows()) {
        try {
          read(series, row);
        } catch (TableFormatException faulty) {
          // Whoever owns the kind reports the fault; here the row is only of no help.
          continue;
        }
      }
    }
  }

  private void read(String[] series, Table.Row row) {
    Optional<Length> major = row.length("major_mm").or(() -> row.length("major_in"));
    Optional<Length> across = row.length("across_flats_mm").or(() -> row.length("across_flats_in"));
    if (major.isPresent() && across.isPresent()) {
      for (String one : series) {
        flats
            .computeIfAbsent(one, unseen -> new HashMap<>())
            .computeIfAbsent(major.get(), unseen -> new LinkedHashSet<>())
            .add(across.get());
      }
    }
  }

  /** Returns all across flats listed for a thread. */
  List<Length> of(ScrewThread thread) {
    return List.copyOf(
        flats.getOrDefault(thread.series(), Map.of()).getOrDefault(thread.major(), Set.of()));
  }
}
