package org.fettlebench.threads.internal.identify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFormatException;
import org.fettlebench.tables.Tables;
import org.fettlebench.threads.ScrewThread;

/** Across flats of heads and nuts, out of the tables of kind {@code heads}. */
final class Hexagons {
  private record Entry(Set<String> series, Length major, Length flats) {}

  private final List<Entry> entries = new ArrayList<>();

  Hexagons(Tables tables) {
    tables.ofKind("heads").forEach(this::read);
  }

  private void read(Table table) {
    String style = table.header().getOrDefault("style", "");
    if (style.contains("hexagon") || style.contains("nut")) {
      Set<String> series =
          Set.copyOf(List.of(table.header().getOrDefault("series", "").split("[ ,]+")));
      for (Table.Row row : table.rows()) {
        try {
          entry(series, row).ifPresent(entries::add);
        } catch (TableFormatException faulty) {
          // Whoever owns the kind reports the fault; here the row is only of no help.
          continue;
        }
      }
    }
  }

  private static Optional<Entry> entry(Set<String> series, Table.Row row) {
    Optional<Length> major = row.length("major_mm").or(() -> row.length("major_in"));
    Optional<Length> flats = row.length("across_flats_mm").or(() -> row.length("across_flats_in"));
    return major.flatMap(size -> flats.map(across -> new Entry(series, size, across)));
  }

  /** Returns all across flats listed for a thread. */
  List<Length> of(ScrewThread thread) {
    return entries.stream()
        .filter(entry -> entry.series().contains(thread.series()))
        .filter(entry -> entry.major().equals(thread.major()))
        .map(Entry::flats)
        .distinct()
        .toList();
  }
}
