package org.fettlebench.desktop.seats.internal;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Change;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.Point;

/** The hole: how large, where, how it is placed and what is to be expected of that. */
final class HoleSection {
  private static final double[] CHANCES = {0.9, 0.95, 0.99, 0.999};

  private final Desk desk;
  private final Bench bench;
  private final SeatBook book;
  private final FigureField diameter;
  private final FigureField x;
  private final FigureField y;
  private final FigureField metal;
  private final Combo method;
  private final Combo chance;
  private final Label means;
  private final Label proposal;

  HoleSection(Composite parent, Desk desk, Bench bench, SeatBook book) {
    this.desk = desk;
    this.bench = bench;
    this.book = book;
    Form form =
        new Form(Form.section(parent, desk, "3  The hole and how it is placed").body(), desk, 2);
    method = form.wide().choice("Placed by", List.of(), this::methodChosen);
    chance =
        form.choice(
            "Asked",
            List.of("90 in 100", "95 in 100", "99 in 100", "999 in 1000"),
            index -> hole("chance asked", hole -> hole.asking(CHANCES[index])));
    diameter = form.figure("Hole dia.", this::sized).brief();
    means = form.remark("");
    proposal = form.remark("");
    x = form.figure("Centre x", length -> moved(length, true)).hint("middle").brief();
    y = form.figure("Centre y", length -> moved(length, false)).hint("middle").brief();
    metal = form.wide().figure("Least metal", this::metalTyped).hint("not asked");
  }

  private void hole(String words, java.util.function.UnaryOperator<Sketch.Hole> change) {
    bench.apply(new Change<>(words, words, sketch -> sketch.with(change.apply(sketch.hole()))));
  }

  private void sized(Optional<Length> length) {
    OptionalDouble mm =
        length.filter(Length::isPositive).isPresent()
            ? OptionalDouble.of(length.get().millimetres())
            : OptionalDouble.empty();
    hole("hole diameter typed", hole -> hole.sized(mm));
  }

  private void methodChosen(int index) {
    String id = book.methods().get(index).id();
    hole("method chosen", hole -> hole.by(id));
  }

  private void moved(Optional<Length> length, boolean alongX) {
    Optional<Point> at = bench.sketch().centre();
    if (length.isPresent() && at.isPresent()) {
      double mm = length.get().millimetres();
      Point to = alongX ? new Point(mm, at.get().yMm()) : new Point(at.get().xMm(), mm);
      hole("centre typed", hole -> hole.at(to));
    }
  }

  private void metalTyped(Optional<Length> length) {
    double mm = length.map(Length::millimetres).filter(each -> each > 0).orElse(0.0);
    bench.apply(
        new Change<>(
            "least metal typed",
            "metal",
            sketch -> sketch.with(sketch.shape().withLeastMetal(mm))));
  }

  /** Shows the sketch of now. */
  void show() {
    Sketch sketch = bench.sketch();
    List<HoleMethod> methods = book.methods();
    if (method.getItemCount() != methods.size()) {
      method.setItems(methods.stream().map(HoleMethod::title).toArray(String[]::new));
    }
    Optional<HoleMethod> now = book.method(sketch);
    now.ifPresent(each -> select(method, methods.indexOf(each)));
    for (int i = 0; i < CHANCES.length; i++) {
      if (CHANCES[i] == sketch.hole().confidence()) {
        select(chance, i);
      }
    }
    diameter.show(length(book.diameterMm(sketch)));
    Layouts.say(proposal, proposal(sketch));
    x.show(sketch.centre().map(at -> Length.ofMillimetres(at.xMm())));
    y.show(sketch.centre().map(at -> Length.ofMillimetres(at.yMm())));
    double least = sketch.shape().leastMetalMm();
    metal.show(least > 0 ? Optional.of(Length.ofMillimetres(least)) : Optional.empty());
    Layouts.say(means, now.map(each -> means(each, sketch)).orElse(""));
  }

  private static void select(Combo combo, int index) {
    if (combo.getSelectionIndex() != index) {
      combo.select(index);
    }
  }

  private static Optional<Length> length(OptionalDouble mm) {
    return mm.isPresent() ? Optional.of(Length.ofMillimetres(mm.getAsDouble())) : Optional.empty();
  }

  private String proposal(Sketch sketch) {
    if (sketch.hole().diameterMm().isPresent()) {
      return "";
    }
    return book.proposed(sketch)
        .map(
            choice ->
                "Proposed: "
                    + choice.fit().name().toLowerCase(java.util.Locale.ROOT)
                    + " clearance by "
                    + choice.drill().name()
                    + (book.drillsHeld().contains(choice.drill()) ? ", held. " : ", not held. ")
                    + choice.source().citation()
                    + ", "
                    + choice.source().standing().words()
                    + ".")
        .orElse("");
  }

  private String means(HoleMethod each, Sketch sketch) {
    double radius = each.errorRadiusMm(sketch.hole().confidence());
    means.setToolTipText(each.source().citation() + ", " + each.source().standing().words());
    return "Radius "
        + LengthFormat.allowanceBoth(Length.ofMillimetres(radius), desk.unit())
        + "; "
        + each.standing()
        + ".";
  }

  void unitChanged() {
    diameter.unitChanged();
    x.unitChanged();
    y.unitChanged();
    metal.unitChanged();
    show();
  }

  Combo method() {
    return method;
  }

  FigureField diameter() {
    return diameter;
  }
}
