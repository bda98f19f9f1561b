package org.fettlebench.fits.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import org.fettlebench.fits.SeatException;
import org.fettlebench.fits.Spanner;
import org.fettlebench.fits.Spanners;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFormatException;
import org.fettlebench.tables.Tables;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Spanners out of all tables of kind {@code spanners}; reads them again when tables change. */
@Component
public final class SpannerTables implements Spanners {
  private final Tables tables;
  private final BiConsumer<Table, RuntimeException> faulty;
  private Read read = new Read(Long.MIN_VALUE, List.of());

  private record Read(long revision, List<Row> rows) {}

  /** One listed size, or a rule when it has no size of its own. */
  private record Row(
      Spanner.Kind kind,
      OptionalDouble flatsMm,
      OptionalDouble heightMm,
      double times,
      double plusMm,
      Source source) {
    private double offMm(double acrossFlatsMm) {
      return flatsMm.isPresent()
          ? Math.abs(flatsMm.getAsDouble() - acrossFlatsMm)
          : Double.MAX_VALUE;
    }

    private Spanner of(double acrossFlatsMm) {
      Length flats = Length.ofMillimetres(acrossFlatsMm);
      return new Spanner(
          kind,
          kind.words() + " for " + LengthFormat.show(flats, LengthUnit.MILLIMETRE),
          flatsMm.isPresent() ? plusMm : times * acrossFlatsMm + plusMm,
          heightMm,
          0,
          source.citation() + " (" + source.standing().words() + ")");
    }
  }

  /** Takes the tables of all started bundles and reports bad ones against their module. */
  @Activate
  public SpannerTables(BundleContext context, @Reference Tables tables, @Reference Faults faults) {
    this(tables, (table, fault) -> faults.report(owner(context, table), "reading spanners", fault));
  }

  /** Takes tables without a framework. */
  SpannerTables(Tables tables, BiConsumer<Table, RuntimeException> faulty) {
    this.tables = tables;
    this.faulty = faulty;
  }

  @Override
  public Optional<Spanner> find(Spanner.Kind kind, double acrossFlatsMm) {
    if (!(acrossFlatsMm > 0 && acrossFlatsMm <= Tolerances.LARGEST_MM)) {
      throw new SeatException("across flats " + acrossFlatsMm + " mm is not above 0");
    }
    return rows().stream()
        .filter(row -> row.kind() == kind)
        .filter(
            row ->
                row.flatsMm().isEmpty() || row.offMm(acrossFlatsMm) <= Tolerances.SAME_HEXAGON_MM)
        .min(Comparator.comparingDouble(row -> row.offMm(acrossFlatsMm)))
        .map(row -> row.of(acrossFlatsMm));
  }

  private synchronized List<Row> rows() {
    long revision = tables.revision();
    if (read.revision() != revision) {
      List<Row> rows = new ArrayList<>();
      for (Table table : tables.ofKind("spanners")) {
        try {
          rows.addAll(rows(table));
        } catch (RuntimeException fault) {
          faulty.accept(table, fault);
        }
      }
      read = new Read(revision, List.copyOf(rows));
    }
    return read.rows();
  }

  private static List<Row> rows(Table table) {
    String words = table.requiredHeader("spanner");
    Spanner.Kind kind = kind(table, words);
    return table.rows().stream().map(row -> row(kind, row)).toList();
  }

  private static Spanner.Kind kind(Table table, String words) {
    try {
      return Spanner.Kind.valueOf(words.strip().toUpperCase(Locale.ROOT));
    } catch (IllegalArgumentException unknown) {
      throw new TableFormatException(
          "spanners " + table.id(),
          List.of("'# spanner: " + words + "' is none of ring, open, socket"));
    }
  }

  private static Row row(Spanner.Kind kind, Table.Row row) {
    Optional<Length> flats = either(row, "across_flats");
    if (flats.isEmpty()) {
      return new Row(
          kind,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          row.requiredNumber("times_flats").doubleValue(),
          row.requiredLength("plus_mm").millimetres(),
          row.source());
    }
    Length head =
        either(row, "head_diameter").orElseGet(() -> row.requiredLength("head_diameter_mm"));
    return new Row(
        kind,
        OptionalDouble.of(flats.get().millimetres()),
        either(row, "height")
            .map(height -> OptionalDouble.of(height.millimetres()))
            .orElse(OptionalDouble.empty()),
        0,
        head.millimetres(),
        row.source());
  }

  private static Optional<Length> either(Table.Row row, String column) {
    return row.length(column + "_mm").or(() -> row.length(column + "_in"));
  }

  private static Object owner(BundleContext context, Table table) {
    for (Bundle bundle : context.getBundles()) {
      if (table.module().equals(bundle.getSymbolicName())) {
        return bundle;
      }
    }
    return context.getBundle();
  }
}
