package org.fettlebench.holes.internal.patterns;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fettlebench.holes.patterns.EdgeRule;
import org.fettlebench.holes.patterns.EdgeRules;
import org.fettlebench.measure.Length;
import org.fettlebench.modules.Faults;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFormatException;
import org.fettlebench.tables.Tables;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Rules of edge distance out of tables, read when they are asked for. */
@Component
public final class EdgeRuleTables implements EdgeRules {
  private final Tables tables;
  private final BiConsumer<Table, RuntimeException> faulty;

  /** Takes the tables of all started bundles and reports bad ones against their module. */
  @Activate
  public EdgeRuleTables(BundleContext context, @Reference Tables tables, @Reference Faults faults) {
    this(
        tables,
        (table, fault) -> faults.report(owner(context, table), "reading edge distances", fault));
  }

  /** Takes tables without a framework. */
  public EdgeRuleTables(Tables tables, BiConsumer<Table, RuntimeException> faulty) {
    this.tables = tables;
    this.faulty = faulty;
  }

  @Override
  public List<EdgeRule> rules() {
    return rows("edge-distances", EdgeRuleTables::rule);
  }

  @Override
  public List<Listed> listed() {
    return rows("edge-distance-sizes", EdgeRuleTables::listed);
  }

  private <T> List<T> rows(String kind, Function<Table.Row, T> reader) {
    List<T> all = new ArrayList<>();
    for (Table table : tables.ofKind(kind)) {
      try {
        all.addAll(table.rows().stream().map(reader).toList());
      } catch (RuntimeException fault) {
        faulty.accept(table, fault);
      }
    }
    return List.copyOf(all);
  }

  private static EdgeRule rule(Table.Row row) {
    double fastener = factor(row, "fastener_diameters");
    double hole = factor(row, "hole_diameters");
    double pitches = factor(row, "thread_pitches");
    if (!(fastener + hole + pitches > 0)) {
      throw new TableFormatException(
          "line " + row.line(), List.of("no factor is above 0; write one"));
    }
    return new EdgeRule(
        row.requiredText("id"),
        row.requiredText("what"),
        to(row),
        fastener,
        hole,
        pitches,
        row.length("above_in").map(Length::millimetres).orElse(0.0),
        row.source());
  }

  private static double factor(Table.Row row, String column) {
    double factor = row.number(column).map(BigDecimal::doubleValue).orElse(0.0);
    if (!(factor >= 0)) {
      throw new TableFormatException(
          "line " + row.line(), List.of("column " + column + ": " + factor + " is below 0"));
    }
    return factor;
  }

  private static EdgeRule.To to(Table.Row row) {
    String word = row.requiredText("to");
    return Arrays.stream(EdgeRule.To.values())
        .filter(to -> to.word().equals(word))
        .findFirst()
        .orElseThrow(
            () ->
                new TableFormatException(
                    "line " + row.line(),
                    List.of(
                        "column to: \""
                            + word
                            + "\" is none of "
                            + Arrays.stream(EdgeRule.To.values())
                                .map(EdgeRule.To::word)
                                .collect(Collectors.joining(", ")))));
  }

  private static Listed listed(Table.Row row) {
    return new Listed(length(row, "fastener"), length(row, "least"), row.source());
  }

  private static double length(Table.Row row, String column) {
    String name = row.text(column + "_mm").isPresent() ? column + "_mm" : column + "_in";
    Length length = row.requiredLength(name);
    if (!length.isPositive()) {
      throw new TableFormatException(
          "line " + row.line(), List.of("column " + name + ": " + length + " is not above 0"));
    }
    return length.millimetres();
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
