package org.fettlebench.tooling.internal.drilled;

import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Table;
import org.fettlebench.tooling.internal.RowFaults;
import org.fettlebench.tooling.work.WorkMaterial;

/** A table of kind reaming. */
final class ReamingTable {
  static final String KIND = "reaming";

  /** What is left for the reamer, on the diameter, and what the drill cuts beyond its own size. */
  record Left(Length least, Length most, Length oversize, Source source) {}

  private record Span(
      Optional<Length> over, Optional<Length> to, List<String> materials, Left left) {
    boolean holds(Length reamed) {
      return over.filter(over -> reamed.compareTo(over) <= 0).isEmpty()
          && to.filter(to -> reamed.compareTo(to) > 0).isEmpty();
    }
  }

  private final List<Span> spans;

  private ReamingTable(List<Span> spans) {
    this.spans = spans;
  }

  /**
   * Reads a table.
   *
   * @throws org.fettlebench.tables.TableFormatException with every fault of the table
   */
  static ReamingTable read(Table table) {
    return new ReamingTable(RowFaults.read(table, ReamingTable::span));
  }

  private static Span span(Table.Row row) {
    Length least = RowFaults.needed(row, "undersize_least");
    Length most = RowFaults.needed(row, "undersize_most");
    if (most.compareTo(least) < 0) {
      throw RowFaults.fault(row, "least undersize " + least + " is above the most, " + most);
    }
    return new Span(
        row.length("over_mm"),
        row.length("to_mm"),
        row.text("materials").map(ids -> List.of(ids.split("\\s+"))).orElse(List.of()),
        new Left(least, most, RowFaults.needed(row, "drill_oversize"), row.source()));
  }

  /** Returns the row of the size that names the material, else the one that names none. */
  Optional<Left> of(Length reamed, Optional<WorkMaterial> material) {
    List<Span> ofSize = spans.stream().filter(span -> span.holds(reamed)).toList();
    return material
        .flatMap(
            one -> ofSize.stream().filter(span -> span.materials().contains(one.id())).findFirst())
        .or(() -> ofSize.stream().filter(span -> span.materials().isEmpty()).findFirst())
        .map(Span::left);
  }
}
