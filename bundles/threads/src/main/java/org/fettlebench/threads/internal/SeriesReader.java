package org.fettlebench.threads.internal;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFormatException;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadForm;
import org.fettlebench.threads.ThreadSeries;

/** Makes a series out of a table of kind {@code thread-series}; finds all faults of it at once. */
final class SeriesReader {
  static final String KIND = "thread-series";

  private static final double MM_PER_INCH = 25.4;

  private final Table table;
  private final ThreadForm form;
  private final String pattern;
  private final List<String> faults = new ArrayList<>();

  private SeriesReader(Table table) {
    this.table = table;
    this.form = form(table);
    this.pattern = table.requiredHeader("designation");
    if (!pattern.contains("{size}")) {
      throw fault("'designation: " + pattern + "' must hold {size}");
    }
  }

  /**
   * Reads a series.
   *
   * @throws TableFormatException with every fault of the table
   */
  static HeldSeries read(Table table) {
    return new SeriesReader(table).readAll();
  }

  private HeldSeries readAll() {
    List<ScrewThread> threads = new ArrayList<>();
    Set<String> sizes = new HashSet<>();
    for (Table.Row row : table.rows()) {
      try {
        ScrewThread thread = thread(row);
        if (sizes.add(thread.size())) {
          threads.add(thread);
        } else {
          faults.add("line " + row.line() + ": size '" + thread.size() + "' is there twice");
        }
      } catch (TableFormatException refused) {
        faults.add(refused.getMessage());
      } catch (MeasureException refused) {
        faults.add("line " + row.line() + ": " + refused.getMessage());
      }
    }
    if (!faults.isEmpty()) {
      throw new TableFormatException(place(), faults);
    }
    ThreadSeries series =
        new ThreadSeries(table.id(), table.title(), form, threads, table.source(), table.module());
    return new HeldSeries(series, aliases(), Optional.ofNullable(header("limits")), order());
  }

  private ScrewThread thread(Table.Row row) {
    Optional<String> tpi = row.text("tpi");
    double pitchMm = tpi.isPresent() ? MM_PER_INCH / threadsPerInch(row) : pitchMm(row);
    Length pitch = Length.ofMillimetres(pitchMm);
    Length major = either(row, "major").orElseThrow(() -> needed(row, "major_mm or major_in"));
    String size = row.requiredText("size");
    Optional<Length> minor = either(row, "minor");
    return new ScrewThread(
        table.id(),
        size,
        designation(size, tpi, row),
        form,
        major,
        pitch,
        tpi,
        either(row, "effective")
            .orElseGet(() -> less(major, form.effectiveDropPerPitch(), pitchMm)),
        minor.orElseGet(() -> less(major, 2 * form.internalDepthPerPitch(), pitchMm)),
        minor.orElseGet(() -> less(major, 2 * form.externalDepthPerPitch(), pitchMm)),
        row.source());
  }

  /** Calculates from the exact pitch, so that the size is rounded only once. */
  private static Length less(Length major, double depths, double pitchMm) {
    return Length.ofMillimetres(major.millimetres() - depths * pitchMm);
  }

  private static double threadsPerInch(Table.Row row) {
    if (row.text("pitch_mm").isPresent()) {
      throw new TableFormatException(
          "line " + row.line(), List.of("give tpi or pitch_mm, not both"));
    }
    BigDecimal tpi = row.requiredNumber("tpi");
    if (!(tpi.signum() > 0)) {
      throw new TableFormatException(
          "line " + row.line(), List.of("column tpi: " + tpi + " must be above 0"));
    }
    return tpi.doubleValue();
  }

  private static double pitchMm(Table.Row row) {
    return row.length("pitch_mm").orElseThrow(() -> needed(row, "tpi or pitch_mm")).millimetres();
  }

  private static Optional<Length> either(Table.Row row, String name) {
    return row.length(name + "_mm").or(() -> row.length(name + "_in"));
  }

  private String designation(String size, Optional<String> tpi, Table.Row row) {
    return pattern
        .replace("{size}", size)
        .replace("{tpi}", tpi.orElse(""))
        .replace("{pitch}", row.text("pitch_mm").orElse(""));
  }

  private List<String> aliases() {
    String names = table.header().getOrDefault("aliases", "");
    return Arrays.stream(names.split(",")).map(String::strip).filter(n -> !n.isEmpty()).toList();
  }

  private int order() {
    String order = header("order");
    if (order == null) {
      return Integer.MAX_VALUE;
    }
    if (!order.matches("\\d{1,9}")) {
      throw fault("'order: " + order + "' must be a whole number such as 10");
    }
    return Integer.parseInt(order);
  }

  private String header(String key) {
    return table.header().get(key);
  }

  private ThreadForm form(Table source) {
    String word = source.requiredHeader("form");
    return ThreadForm.ofWord(word)
        .orElseThrow(() -> fault("'form: " + word + "' must be one of: " + allForms()));
  }

  private static String allForms() {
    return Arrays.stream(ThreadForm.values())
        .map(ThreadForm::word)
        .collect(Collectors.joining(", "));
  }

  private String place() {
    return KIND + " " + table.id();
  }

  private TableFormatException fault(String what) {
    return new TableFormatException(place(), List.of(what));
  }

  private static TableFormatException needed(Table.Row row, String columns) {
    return new TableFormatException(
        "line " + row.line(), List.of("a figure is missing under " + columns));
  }
}
