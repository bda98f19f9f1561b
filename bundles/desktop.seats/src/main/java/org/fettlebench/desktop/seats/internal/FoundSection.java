package org.fettlebench.desktop.seats.internal;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.seats.internal.Practice.Readings;
import org.fettlebench.desktop.widgets.Change;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.holes.correct.HoleMeasuring;
import org.fettlebench.kits.SeatFile;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.Point;

/** A hole that is drilled: where it is, dragged, typed or worked out from what was read at it. */
final class FoundSection {
  private final Desk desk;
  private final Bench bench;
  private final SeatBook book;
  private final Supplier<Optional<HoleMeasuring>> measuring;
  private final Button there;
  private final Composite fields;
  private final FigureField x;
  private final FigureField y;
  private final FigureField diameter;
  private final FigureField within;
  private final Combo way;
  private final FigureField pin;
  private final FigureField plusMinus;
  private final ReadingRows rows;
  private final Label told;
  private final MarginFields margins;

  FoundSection(
      Composite parent,
      Desk desk,
      Bench bench,
      SeatBook book,
      Supplier<Optional<HoleMeasuring>> measuring) {
    this.desk = desk;
    this.bench = bench;
    this.book = book;
    this.measuring = measuring;
    Form form = new Form(Form.section(parent, desk, "A hole that is drilled already").body(), desk);
    there = form.tick("There is one: measure it", this::ticked);
    fields = form.across(new Composite(form.body(), SWT.NONE));
    fields.setBackground(form.body().getBackground());
    Form inner = new Form(fields, desk, 2);
    diameter = inner.wide().figure("Diameter", length -> found(1, length));
    way =
        inner
            .wide()
            .choice(
                "Read by",
                Recipes.WAYS.stream().map(Recipes.Way::words).toList(),
                index -> readings("way of reading chosen", "way", all -> all.by(index)));
    pin =
        inner
            .figure("Pin", length -> readings("pin typed", "pin", all -> all.over(length)))
            .hint("its size")
            .brief();
    plusMinus =
        inner
            .figure(
                "within \u00b1",
                length -> readings("doubt typed", "doubt", all -> all.within(length)))
            .brief();
    rows = inner.across(new ReadingRows(fields, desk, bench, this::readings));
    told = inner.remark("");
    x = inner.figure("Hole x", length -> found(2, length)).brief();
    y = inner.figure("Hole y", length -> found(3, length)).brief();
    within = inner.wide().figure("Known \u00b1", length -> found(4, length));
    margins = inner.across(new MarginFields(fields, desk, bench));
  }

  /** Changes what was read; the hole is then where it puts it. */
  private void readings(String words, String key, UnaryOperator<Readings> change) {
    bench.apply(
        new Change<>(
            words,
            key,
            sketch -> {
              Practice practice = sketch.hole().practice();
              Sketch read =
                  sketch.with(sketch.hole().with(practice.with(change.apply(practice.readings()))));
              return measuring.get().map(service -> Gauging.placed(read, service)).orElse(read);
            }));
  }

  private void ticked() {
    boolean now = there.getSelection();
    Optional<Point> centre = bench.sketch().centre();
    if (now && centre.isEmpty()) {
      there.setSelection(false);
      desk.say("First give the outline of the flat.");
      return;
    }
    bench.apply(
        Change.of(
            now ? "measured hole added" : "measured hole taken away",
            sketch ->
                sketch.with(
                    sketch
                        .hole()
                        .found(
                            now
                                ? Optional.of(
                                    Mending.guess(centre.get(), book.diameterMm(sketch).orElse(4)))
                                : Optional.empty()))));
    if (now) {
      bench.choose(Optional.of(Handle.FOUND));
    }
  }

  /** Changes one figure of the hole: 1 diameter, 2 x, 3 y, 4 within. */
  private void found(int which, Optional<Length> length) {
    length.ifPresent(
        each ->
            bench.apply(
                new Change<>(
                    "measured hole typed",
                    "found " + which,
                    sketch ->
                        sketch.with(
                            sketch
                                .hole()
                                .found(
                                    sketch
                                        .hole()
                                        .found()
                                        .map(hole -> with(hole, which, each.millimetres())))))));
  }

  private static SeatFile.Drilled with(SeatFile.Drilled hole, int which, double mm) {
    Point at = hole.centre();
    return switch (which) {
      case 1 -> new SeatFile.Drilled(at, mm > 0 ? mm : hole.diameterMm(), hole.withinMm());
      case 2 -> new SeatFile.Drilled(new Point(mm, at.yMm()), hole.diameterMm(), hole.withinMm());
      case 3 -> new SeatFile.Drilled(new Point(at.xMm(), mm), hole.diameterMm(), hole.withinMm());
      default -> new SeatFile.Drilled(at, hole.diameterMm(), Math.max(0, mm));
    };
  }

  /** Shows the sketch of now. */
  void show() {
    Sketch sketch = bench.sketch();
    Optional<SeatFile.Drilled> hole = sketch.hole().found();
    there.setSelection(hole.isPresent());
    Layouts.present(fields, hole.isPresent());
    hole.ifPresent(
        each -> {
          x.show(length(each.centre().xMm()));
          y.show(length(each.centre().yMm()));
          diameter.show(length(each.diameterMm()));
          within.show(length(each.withinMm()));
          readings(sketch);
          margins.show();
        });
  }

  private void readings(Sketch sketch) {
    Readings now = sketch.hole().practice().readings();
    if (way.getSelectionIndex() != now.way()) {
      way.select(now.way());
    }
    pin.setEnabled(Recipes.WAYS.get(now.way()).pin());
    pin.show(now.pin());
    plusMinus.show(now.doubt());
    rows.show();
    Layouts.say(told, measuring.get().map(service -> told(sketch, service)).orElse(""));
  }

  /** Says where the readings put the hole, as long as it is there. */
  private String told(Sketch sketch, HoleMeasuring service) {
    Gauging.Gauged gauged = Gauging.measure(sketch, service);
    Point now = sketch.hole().found().orElseThrow().centre();
    return gauged
        .hole()
        .map(
            hole ->
                hole.centre().distanceMm(now) < 1e-6
                    ? Gauging.told(hole, desk.unit())
                    : "The hole was moved since it was read.")
        .orElse(gauged.trouble());
  }

  private static Optional<Length> length(double mm) {
    return Optional.of(Length.ofMillimetres(mm));
  }

  void unitChanged() {
    List.of(x, y, diameter, within, pin, plusMinus).forEach(FigureField::unitChanged);
    rows.unitChanged();
    margins.unitChanged();
  }

  FigureField x() {
    return x;
  }

  FigureField pin() {
    return pin;
  }

  Button there() {
    return there;
  }

  ReadingRows rows() {
    return rows;
  }

  MarginFields margins() {
    return margins;
  }

  /** Returns what is said of the readings, for tests. */
  String told() {
    return told.getText();
  }
}
