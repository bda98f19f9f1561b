package org.fettlebench.desktop.seats.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Section;
import org.fettlebench.holes.correct.HoleMeasuring;
import org.fettlebench.holes.correct.MeasuredHole;
import org.fettlebench.holes.correct.MeasuringQuestion;
import org.fettlebench.holes.correct.Reading;
import org.fettlebench.kits.SeatFile;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.Point;

/** A hole that is drilled: where it is, dragged, typed or worked out from two readings. */
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
  private final List<Combo> from = new ArrayList<>();
  private final List<FigureField> read = new ArrayList<>();
  private final List<Optional<Length>> readings =
      new ArrayList<>(List.of(Optional.empty(), Optional.empty()));
  private Optional<Length> pinSize = Optional.empty();
  private Optional<Length> doubt = Optional.of(Length.ofMillimetres(0.05));
  private final Label told;

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
    Section section = new Section(parent, desk.look(), "A hole that is drilled already");
    Form form = new Form(section.body(), desk);
    there = form.tick("There is one: measure it", this::ticked);
    fields = Form.across(new Composite(form.body(), SWT.NONE));
    fields.setBackground(form.body().getBackground());
    Form inner = new Form(fields, desk);
    diameter = inner.figure("Diameter", length -> found(1, length));
    way =
        inner.choice(
            "Read by", Recipes.WAYS.stream().map(Recipes.Way::words).toList(), index -> measure());
    way.select(0);
    pin = inner.figure("Pin", length -> set(() -> pinSize = length)).hint("its size");
    for (int i = 0; i < 2; i++) {
      int which = i;
      from.add(inner.choice(i == 0 ? "From" : "and from", List.of(), index -> measure()));
      read.add(inner.figure("Reading", length -> set(() -> readings.set(which, length))));
    }
    plusMinus = inner.figure("Read within \u00b1", length -> set(() -> doubt = length));
    told = inner.remark("");
    x = inner.figure("Hole x", length -> found(2, length));
    y = inner.figure("Hole y", length -> found(3, length));
    within = inner.figure("Known within", length -> found(4, length));
    plusMinus.show(doubt);
  }

  private void set(Runnable change) {
    change.run();
    measure();
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
                new Change(
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

  /** Works the centre out as soon as both readings are there. */
  private void measure() {
    Form.present(pin, Recipes.WAYS.get(way.getSelectionIndex()).pin());
    boolean all = readings.stream().allMatch(Optional::isPresent) && doubt.isPresent();
    if (!all || measuring.get().isEmpty() || bench.sketch().hole().found().isEmpty()) {
      return;
    }
    try {
      MeasuredHole hole = measuring.get().get().measure(question());
      Point at = hole.centre();
      bench.apply(
          new Change(
              "hole worked out from its readings",
              "measure",
              sketch ->
                  sketch.with(
                      sketch
                          .hole()
                          .found(
                              sketch
                                  .hole()
                                  .found()
                                  .map(
                                      old ->
                                          new SeatFile.Drilled(
                                              at, old.diameterMm(), hole.withinMm()))))));
      Form.say(told, told(hole));
    } catch (IllegalArgumentException refused) {
      Form.say(told, refused.getMessage());
    }
  }

  private String told(MeasuredHole hole) {
    return "The hole is at "
        + SeatWords.place(hole.centre(), desk.unit())
        + ", known within "
        + SeatWords.both(hole.withinMm(), desk.unit())
        + ". "
        + String.join(" ", hole.cautions());
  }

  private MeasuringQuestion question() {
    Sketch sketch = bench.sketch();
    List<Reading.Reference> references = Recipes.references(sketch);
    Recipes.Way how = Recipes.WAYS.get(way.getSelectionIndex());
    List<Reading> all = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      all.add(
          new Reading(
              references.get(Math.max(0, from.get(i).getSelectionIndex())),
              how.to(),
              readings.get(i).orElseThrow().millimetres(),
              doubt.orElseThrow().millimetres()));
    }
    OptionalDouble pinMm =
        how.pin() && pinSize.isPresent()
            ? OptionalDouble.of(pinSize.get().millimetres())
            : OptionalDouble.empty();
    return new MeasuringQuestion(
        all,
        sketch.hole().found().orElseThrow().diameterMm(),
        pinMm,
        sketch.centre().orElseThrow());
  }

  /** Shows the sketch of now. */
  void show() {
    Optional<SeatFile.Drilled> hole = bench.sketch().hole().found();
    there.setSelection(hole.isPresent());
    Form.present(fields, hole.isPresent());
    hole.ifPresent(
        each -> {
          x.show(length(each.centre().xMm()));
          y.show(length(each.centre().yMm()));
          diameter.show(length(each.diameterMm()));
          within.show(length(each.withinMm()));
          offer();
        });
  }

  private void offer() {
    String[] names =
        Recipes.references(bench.sketch()).stream()
            .map(Reading.Reference::name)
            .toArray(String[]::new);
    for (int i = 0; i < 2; i++) {
      Combo combo = from.get(i);
      if (!java.util.Arrays.equals(names, combo.getItems())) {
        int kept = combo.getSelectionIndex();
        combo.setItems(names);
        combo.select(Math.min(kept < 0 ? i : kept, names.length - 1));
      }
    }
  }

  private static Optional<Length> length(double mm) {
    return Optional.of(Length.ofMillimetres(mm));
  }

  void unitChanged() {
    List.of(x, y, diameter, within, pin, plusMinus).forEach(FigureField::unitChanged);
    read.forEach(FigureField::unitChanged);
  }

  FigureField x() {
    return x;
  }

  Button there() {
    return there;
  }
}
