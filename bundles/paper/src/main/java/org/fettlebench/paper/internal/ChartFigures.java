package org.fettlebench.paper.internal;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.fettlebench.fasteners.Head;
import org.fettlebench.fasteners.Heads;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.paper.WallChart;
import org.fettlebench.paper.internal.ChartRow.Cell;
import org.fettlebench.paper.internal.ChartRow.Weight;
import org.fettlebench.tables.Source;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadSeries;
import org.fettlebench.tooling.ClearanceChoice;
import org.fettlebench.tooling.ClearanceFit;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.HoleChooser;
import org.fettlebench.tooling.HoleChooser.PercentWanted;
import org.fettlebench.tooling.TappingChoice;

/** Asks the services for the figures of a wall chart and puts them into cells. */
final class ChartFigures {
  /** A held drill up to so much over the listed hole still passes as the one for it. */
  static final double NEAR_ENOUGH = 1.03;

  private final WallChart chart;
  private final HoleChooser chooser;
  private final Heads heads;
  private final List<DrillSize> made;
  private final PercentWanted percent;

  ChartFigures(WallChart chart, HoleChooser chooser, Heads heads, List<DrillSize> made) {
    this.chart = chart;
    this.chooser = chooser;
    this.heads = heads;
    this.made = made;
    this.percent = chooser.usualPercent(chart.material());
  }

  /** Returns the per cent of thread wanted, with its source. */
  PercentWanted percent() {
    return percent;
  }

  ChartSection section(ThreadSeries series) {
    Set<String> clearance = new LinkedHashSet<>();
    Set<String> hexagons = new LinkedHashSet<>();
    List<ChartRow> rows = new ArrayList<>();
    for (ScrewThread thread : series.threads()) {
      rows.add(row(thread, clearance, hexagons));
    }
    String title = "%s: %s, %s".formatted(series.id(), series.title(), series.form().title());
    List<String> notes = new ArrayList<>();
    notes.add(series.id() + " sizes: " + said(series.source()));
    clearance.forEach(source -> notes.add(series.id() + " clearance: " + source));
    hexagons.forEach(source -> notes.add(series.id() + " hexagons: " + source));
    return new ChartSection(title, rows, notes);
  }

  private ChartRow row(ScrewThread thread, Set<String> clearance, Set<String> hexagons) {
    LengthUnit first = chart.first();
    LengthUnit other = first == LengthUnit.INCH ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
    List<Cell> cells = new ArrayList<>();
    cells.add(new Cell(thread.designation(), Weight.HELD));
    cells.add(fine(thread.major(), first));
    cells.add(fine(thread.major(), other));
    cells.add(Cell.plain(LengthFormat.number(thread.pitch(), LengthUnit.MILLIMETRE, 3)));
    cells.add(tpi(thread));
    cells.add(fine(thread.minorInternal(), first));
    cells.addAll(tapping(thread, chart.drills(), true));
    cells.addAll(tapping(thread, made, false));
    cells.addAll(clearance(thread, clearance));
    cells.addAll(hexagon(thread, first, other, hexagons));
    return new ChartRow(cells);
  }

  private static Cell fine(Length length, LengthUnit unit) {
    return Cell.plain(LengthFormat.number(length, unit, unit == LengthUnit.MILLIMETRE ? 2 : 4));
  }

  private static Cell tpi(ScrewThread thread) {
    return thread
        .threadsPerInch()
        .map(Cell::plain)
        .orElseGet(
            () ->
                new Cell(
                    String.format(Locale.ROOT, "%.1f", 1 / thread.pitch().inches()), Weight.FAINT));
  }

  private List<Cell> tapping(ScrewThread thread, List<DrillSize> from, boolean held) {
    List<TappingChoice> choices = chooser.tapping(thread, percent, from);
    Optional<TappingChoice> best =
        choices.stream()
            .filter(choice -> choice.concern().isEmpty())
            .findFirst()
            .or(() -> choices.stream().findFirst());
    if (best.isEmpty()) {
      return List.of(Cell.none(), Cell.none());
    }
    TappingChoice choice = best.get();
    boolean doubtful = choice.concern().isPresent();
    Weight weight = held ? doubtful ? Weight.CARE : Weight.HELD : Weight.FAINT;
    return List.of(
        new Cell(choice.drill().name() + (doubtful ? " *" : ""), weight),
        new Cell(String.format(Locale.ROOT, "%.0f", choice.percentOfThread()), weight));
  }

  private List<Cell> clearance(ScrewThread thread, Set<String> sources) {
    List<ClearanceChoice> held = chooser.clearance(thread, chart.drills());
    List<ClearanceChoice> all = chooser.clearance(thread, made);
    List<Cell> cells = new ArrayList<>();
    for (ClearanceFit fit : ClearanceFit.values()) {
      Optional<ClearanceChoice> near = of(fit, held).filter(ChartFigures::near);
      Optional<ClearanceChoice> any = near.or(() -> of(fit, all));
      any.ifPresent(choice -> sources.add(said(choice.source())));
      cells.add(
          any.map(
                  choice ->
                      new Cell(
                          choice.drill().name(), near.isPresent() ? Weight.HELD : Weight.FAINT))
              .orElseGet(Cell::none));
    }
    return cells;
  }

  private static boolean near(ClearanceChoice choice) {
    return choice.drill().diameter().millimetres() <= NEAR_ENOUGH * choice.listed().millimetres();
  }

  private static Optional<ClearanceChoice> of(ClearanceFit fit, List<ClearanceChoice> choices) {
    return choices.stream().filter(choice -> choice.fit() == fit).findFirst();
  }

  private List<Cell> hexagon(
      ScrewThread thread, LengthUnit first, LengthUnit other, Set<String> sources) {
    Optional<Head> hexagon = heads.find("hexagon", thread);
    hexagon.ifPresent(head -> sources.add(said(head.source())));
    Optional<Length> flats = hexagon.flatMap(Head::acrossFlats);
    return List.of(flat(flats, first), flat(flats, other));
  }

  private static Cell flat(Optional<Length> flats, LengthUnit unit) {
    return flats.map(size -> Cell.plain(LengthFormat.number(size, unit))).orElseGet(Cell::none);
  }

  /** Returns a source with how far it may be trusted. */
  static String said(Source source) {
    return source.citation() + " (" + source.standing().words() + ")";
  }
}
