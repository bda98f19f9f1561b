package org.fettlebench.desktop.seats.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Change;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatWords;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.Point;

/** The figures and the name of the thing that is chosen on the drawing. */
final class ThingFields {
  /** A side that is made an arc bulges by this share of its length until it is typed or dragged. */
  private static final double FIRST_BULGE = 0.15;

  private final Desk desk;
  private final Bench bench;
  private final Form form;
  private final Handle handle;
  private final List<Runnable> shows = new ArrayList<>();

  ThingFields(Form form, Desk desk, Bench bench, Handle handle) {
    this.desk = desk;
    this.bench = bench;
    this.form = form;
    this.handle = handle;
    Label title = Layouts.word(form.body(), desk.look(), SeatWords.upper(handle.words()));
    title.setFont(desk.look().strong());
    form.across(title);
    if (handle.kind() != Handle.Kind.ARC) {
      place(true);
      place(false);
    }
    switch (handle.kind()) {
      case CORNER, ARC -> side();
      case WALL, WALL_FROM, WALL_TO -> wallFields(handle.index());
      case NEIGHBOUR -> neighbourFields(handle.index());
      default -> {
        // A centre or a corner of another line is its place and nothing else.
      }
    }
  }

  void show() {
    if (Handles.at(bench.sketch(), handle).isPresent()) {
      shows.forEach(Runnable::run);
    }
  }

  private void place(boolean alongX) {
    FigureField field =
        form.figure(
                alongX ? "x" : "y",
                length -> length.ifPresent(each -> bench.apply(moved(each.millimetres(), alongX))))
            .brief();
    shows.add(
        () ->
            field.show(
                Handles.at(bench.sketch(), handle)
                    .map(at -> Length.ofMillimetres(alongX ? at.xMm() : at.yMm()))));
  }

  private Change<Sketch> moved(double mm, boolean alongX) {
    return new Change<>(
        handle.words() + " typed",
        "place " + handle + alongX,
        sketch ->
            Handles.at(sketch, handle)
                .map(at -> alongX ? new Point(mm, at.yMm()) : new Point(at.xMm(), mm))
                .map(to -> Handles.moved(sketch, handle, to))
                .orElse(sketch));
  }

  /** The side from a corner to the next: straight or an arc, and the corner sharp or rounded. */
  private void side() {
    int index = handle.index();
    Combo way =
        form.wide()
            .choice(
                "Next side",
                List.of("straight", "an arc"),
                which -> outline("side changed", "side " + index, each -> bent(each, which == 1)));
    shows.add(() -> way.select(Arcs.bulgeMm(outline(), index).isPresent() ? 1 : 0));
    FigureField bulge =
        lengthField(
            "Bulge",
            () -> maybe(Arcs.bulgeMm(outline(), index)),
            mm -> outline("bulge typed", "bulge " + index, each -> Arcs.bulged(each, index, mm)));
    bulge
        .text()
        .setToolTipText("How far the arc stands out from the straight way; less than 0: in");
    lengthField(
        "Radius",
        () -> maybe(Arcs.radiusMm(outline(), index)),
        mm -> outline("radius typed", "radius " + index, each -> Arcs.radius(each, index, mm)));
    if (handle.kind() == Handle.Kind.CORNER) {
      form.wide();
      lengthField(
          "Rounded",
          () -> Optional.of(outline().corners().get(index).roundedMm()),
          mm -> outline("corner rounded", "round " + index, each -> Arcs.rounded(each, index, mm)));
    }
  }

  private Outline bent(Outline outline, boolean arc) {
    int index = handle.index();
    if (arc == Arcs.bulgeMm(outline, index).isPresent()) {
      return outline;
    }
    int next = (index + 1) % outline.corners().size();
    double chord = outline.corners().get(index).at().distanceMm(outline.corners().get(next).at());
    return Arcs.bulged(outline, index, arc ? FIRST_BULGE * chord : 0);
  }

  private Outline outline() {
    Shape shape = bench.sketch().shape();
    return shape.outline(shape.corners());
  }

  /** Changes the outline, or says why that cannot be. */
  private void outline(String words, String key, UnaryOperator<Outline> change) {
    try {
      Outline after = change.apply(outline());
      bench.apply(
          new Change<>(words, key, sketch -> sketch.with(sketch.shape().withOutline(after))));
    } catch (IllegalArgumentException impossible) {
      desk.say(SeatWords.upper(impossible.getMessage()) + ".");
    }
  }

  private static Optional<Double> maybe(OptionalDouble mm) {
    return mm.isPresent() ? Optional.of(mm.getAsDouble()) : Optional.empty();
  }

  private FigureField lengthField(
      String name, Supplier<Optional<Double>> now, DoubleConsumer typed) {
    FigureField field =
        form.figure(name, length -> length.map(Length::millimetres).ifPresent(typed::accept))
            .brief();
    shows.add(() -> field.show(now.get().map(Length::ofMillimetres)));
    return field;
  }

  private void wallFields(int index) {
    Supplier<Optional<Seat.Wall>> wall = () -> nth(bench.sketch().shape().walls(), index);
    name(
        () -> wall.get().map(Seat.Wall::name),
        name -> wall(index, "name", old -> wall(old, name, old.heightMm(), old.filletRadiusMm())));
    lengthField(
        "Height",
        () -> wall.get().map(Seat.Wall::heightMm),
        mm ->
            wall(
                index,
                "height",
                old -> mm > 0 ? wall(old, old.name(), mm, old.filletRadiusMm()) : old));
    lengthField(
        "Fillet r.",
        () -> wall.get().map(Seat.Wall::filletRadiusMm),
        mm ->
            wall(
                index, "fillet", old -> mm >= 0 ? wall(old, old.name(), old.heightMm(), mm) : old));
  }

  private static <T> Optional<T> nth(List<T> all, int index) {
    return all.stream().skip(index).findFirst();
  }

  private static Seat.Wall wall(Seat.Wall old, String name, double heightMm, double filletMm) {
    return new Seat.Wall(name, old.from(), old.to(), heightMm, filletMm);
  }

  private void wall(int index, String what, UnaryOperator<Seat.Wall> change) {
    thing(
        "wall's " + what + " typed",
        what + index,
        shape ->
            shape.withWalls(
                Shape.set(shape.walls(), index, change.apply(shape.walls().get(index)))));
  }

  private void neighbourFields(int index) {
    Supplier<Optional<Seat.Neighbour>> head = () -> nth(bench.sketch().shape().neighbours(), index);
    name(
        () -> head.get().map(Seat.Neighbour::name),
        name ->
            neighbour(
                index,
                "name",
                old -> new Seat.Neighbour(name, old.centre(), old.radiusMm(), old.heightMm())));
    form.wide();
    lengthField(
        "Sweep dia.",
        () -> head.get().map(each -> 2 * each.radiusMm()),
        mm ->
            neighbour(
                index,
                "sweep",
                old ->
                    mm > 0
                        ? new Seat.Neighbour(old.name(), old.centre(), mm / 2, old.heightMm())
                        : old));
  }

  private void neighbour(int index, String what, UnaryOperator<Seat.Neighbour> change) {
    thing(
        "head's " + what + " typed",
        what + index,
        shape ->
            shape.withNeighbours(
                Shape.set(shape.neighbours(), index, change.apply(shape.neighbours().get(index)))));
  }

  private void thing(String words, String key, Function<Shape, Shape> change) {
    bench.apply(new Change<>(words, key, sketch -> sketch.with(change.apply(sketch.shape()))));
  }

  /** A name may be anything but nothing. */
  private void name(Supplier<Optional<String>> now, Consumer<String> typed) {
    form.name("Name").wide();
    Text text = form.field(new Text(form.body(), SWT.SINGLE | SWT.BORDER));
    text.setFont(desk.look().text());
    text.setBackground(desk.look().sheet());
    text.setForeground(desk.look().ink());
    text.addListener(
        SWT.Modify,
        event -> {
          String words = text.getText().strip();
          if (!words.isEmpty() && !words.equals(now.get().orElse(""))) {
            typed.accept(words);
          }
        });
    shows.add(
        () ->
            now.get()
                .filter(name -> !text.isFocusControl() || !text.getText().strip().equals(name))
                .filter(name -> !(text.isFocusControl() && text.getText().isBlank()))
                .ifPresent(text::setText));
  }
}
