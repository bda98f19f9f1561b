package org.fettlebench.tooling.internal;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFormatException;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.ClearanceFit;

/** The clearance holes of one list, by a table of kind clearance-holes. */
final class ClearanceList {
  static final String KIND = "clearance-holes";

  /** Lists round inch sizes to 0.01 mm; no two sizes of a series are as close as that. */
  private static final Length SAME_SIZE = Length.ofNanometres(5_000);

  /** The holes of one size. */
  record Holes(Length major, Map<ClearanceFit, Length> byFit, Source source) {}

  private final Set<String> series;
  private final NavigableMap<Length, Holes> byMajor = new TreeMap<>();

  private ClearanceList(Set<String> series, List<Holes> rows) {
    this.series = series;
    rows.forEach(row -> byMajor.put(row.major(), row));
  }

  /**
   * Reads a list.
   *
   * @throws TableFormatException with every fault of the table
   */
  static ClearanceList read(Table table) {
    Set<String> series =
        Arrays.stream(table.requiredHeader("series").split(","))
            .map(String::strip)
            .collect(Collectors.toSet());
    return new ClearanceList(series, RowFaults.read(table, ClearanceList::holes));
  }

  private static Holes holes(Table.Row row) {
    Length major = RowFaults.needed(row, "major");
    Map<ClearanceFit, Length> byFit = new EnumMap<>(ClearanceFit.class);
    for (ClearanceFit fit : ClearanceFit.values()) {
      String name = fit.name().toLowerCase(Locale.ROOT);
      RowFaults.either(row, name).ifPresent(hole -> byFit.put(fit, above(row, major, hole)));
    }
    if (byFit.isEmpty()) {
      throw RowFaults.fault(row, "no hole stands under close, medium or free");
    }
    return new Holes(major, byFit, row.source());
  }

  private static Length above(Table.Row row, Length major, Length hole) {
    if (!(hole.compareTo(major) > 0)) {
      throw RowFaults.fault(row, "hole " + hole + " does not clear the screw of " + major);
    }
    return hole;
  }

  Optional<Holes> of(ScrewThread thread) {
    if (!series.contains(thread.series())) {
      return Optional.empty();
    }
    return Stream.of(byMajor.floorEntry(thread.major()), byMajor.ceilingEntry(thread.major()))
        .filter(Objects::nonNull)
        .map(Map.Entry::getValue)
        .filter(holes -> sameSize(holes, thread))
        .findFirst();
  }

  private static boolean sameSize(Holes holes, ScrewThread thread) {
    return holes.major().minus(thread.major()).abs().compareTo(SAME_SIZE) <= 0;
  }
}
