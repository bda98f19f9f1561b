package org.fettlebench.desktop.seats.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.ScrollPane;
import org.fettlebench.desktop.widgets.Section;
import org.fettlebench.fits.Seat;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.Point;

/** What stands on the flat or beside it: walls, other heads; the chosen thing in figures. */
final class ThingsSection {
  /** Heights and sweeps that nobody has typed yet are said to be assumed. */
  static final double ASSUMED_MM = 10;

  private final Desk desk;
  private final Bench bench;
  private final Section section;
  private final Composite fields;
  private final Label assumed;
  private Optional<Handle> built = Optional.empty();
  private final List<Runnable> shows = new ArrayList<>();

  ThingsSection(Composite parent, Desk desk, Bench bench) {
    this.desk = desk;
    this.bench = bench;
    section = new Section(parent, desk.look(), "Walls, other heads, the far face");
    Composite row = Layouts.flow(section.body());
    small(row, "Add wall", () -> add("wall added", this::wallAdded));
    small(row, "Add head beside", () -> add("head beside added", this::neighbourAdded));
    small(row, "Add far face", () -> add("far face added", ThingsSection::farAdded));
    fields = Layouts.wide(new Composite(section.body(), org.eclipse.swt.SWT.NONE));
    fields.setBackground(section.body().getBackground());
    assumed = Layouts.remark(section.body(), desk.look(), "");
    new Form(fields, desk);
  }

  private void small(Composite row, String words, Runnable pressed) {
    Layouts.button(row, desk.look(), words, pressed).setLayoutData(null);
  }

  private void add(String words, java.util.function.UnaryOperator<Sketch> deed) {
    if (!bench.sketch().shape().drawable()) {
      desk.say("First give the outline of the flat.");
      return;
    }
    if (bench.apply(Change.of(words, deed))) {
      Shape shape = bench.sketch().shape();
      bench.choose(
          Optional.of(
              words.startsWith("wall")
                  ? Handle.of(Handle.Kind.WALL, shape.walls().size() - 1)
                  : words.startsWith("head")
                      ? Handle.of(Handle.Kind.NEIGHBOUR, shape.neighbours().size() - 1)
                      : Handle.of(Handle.Kind.UNDERSIDE, 0)));
      desk.say(SeatWords.upper(words) + ".", bench.undoOfLast());
    }
  }

  /** A wall stands along the edge after the chosen corner, else along the longest. */
  private Sketch wallAdded(Sketch sketch) {
    Shape shape = sketch.shape();
    List<Point> corners = shape.corners();
    int edge =
        bench
            .chosen()
            .filter(handle -> handle.kind() == Handle.Kind.CORNER)
            .map(Handle::index)
            .orElseGet(() -> Edges.longest(corners));
    Seat.Wall wall =
        new Seat.Wall(
            "wall " + (shape.walls().size() + 1),
            corners.get(edge),
            corners.get((edge + 1) % corners.size()),
            ASSUMED_MM,
            0);
    return sketch.with(shape.withWalls(Shape.plus(shape.walls(), shape.walls().size(), wall)));
  }

  /** Another head of the same size stands to the right of the flat until it is dragged. */
  private Sketch neighbourAdded(Sketch sketch) {
    Shape shape = sketch.shape();
    double[] box = shape.box();
    double radius =
        bench
            .reply()
            .answer()
            .map(answer -> answer.question().head().sweepDiameterMm() / 2)
            .orElse(ASSUMED_MM / 2);
    Seat.Neighbour head =
        new Seat.Neighbour(
            "head " + (shape.neighbours().size() + 1),
            new Point(box[2] + radius, (box[1] + box[3]) / 2),
            radius);
    return sketch.with(
        shape.withNeighbours(Shape.plus(shape.neighbours(), shape.neighbours().size(), head)));
  }

  private static Sketch farAdded(Sketch sketch) {
    Shape shape = sketch.shape();
    return shape.underside().isPresent()
        ? sketch
        : sketch.with(shape.withUnderside(Optional.of(shape.corners())));
  }

  /** Shows the chosen thing. */
  void show() {
    Optional<Handle> chosen = bench.chosen();
    if (!chosen.equals(built)) {
      built = chosen;
      build(chosen);
    }
    shows.forEach(Runnable::run);
    Form.say(assumed, assumed());
  }

  private void build(Optional<Handle> chosen) {
    for (var child : fields.getChildren()) {
      child.dispose();
    }
    shows.clear();
    Form form = new Form(fields, desk);
    chosen.ifPresent(handle -> fill(form, handle));
    if (chosen.isEmpty()) {
      form.remark(
          "Choose a thing on the drawing to see its figures here. A double click on an edge adds"
              + " a corner there, Delete takes the chosen thing away.");
    }
    fields.requestLayout();
    ScrollPane.around(fields).ifPresent(ScrollPane::fit);
  }

  private void fill(Form form, Handle handle) {
    Label name = Layouts.word(form.body(), desk.look(), SeatWords.upper(handle.words()));
    name.setFont(desk.look().strong());
    Form.across(name);
    place(form, handle, true);
    place(form, handle, false);
    switch (handle.kind()) {
      case WALL, WALL_FROM, WALL_TO -> wallFields(form, handle.index());
      case NEIGHBOUR -> neighbourFields(form, handle.index());
      default -> {
        // A corner or a centre is its place and nothing else.
      }
    }
  }

  private void place(Form form, Handle handle, boolean alongX) {
    FigureField field =
        form.figure(
            alongX ? "x" : "y",
            length ->
                length.ifPresent(each -> bench.apply(moved(handle, each.millimetres(), alongX))));
    shows.add(
        () ->
            field.show(
                Handles.at(bench.sketch(), handle)
                    .map(at -> Length.ofMillimetres(alongX ? at.xMm() : at.yMm()))));
  }

  private static Change moved(Handle handle, double mm, boolean alongX) {
    return new Change(
        handle.words() + " typed",
        "place " + handle + alongX,
        sketch ->
            Handles.at(sketch, handle)
                .map(at -> alongX ? new Point(mm, at.yMm()) : new Point(at.xMm(), mm))
                .map(to -> Handles.moved(sketch, handle, to))
                .orElse(sketch));
  }

  private void wallFields(Form form, int index) {
    figure(form, "Height", () -> wall(index).map(Seat.Wall::heightMm), mm -> wall(index, mm, true));
    figure(
        form,
        "Fillet radius",
        () -> wall(index).map(Seat.Wall::filletRadiusMm),
        mm -> wall(index, mm, false));
  }

  private void neighbourFields(Form form, int index) {
    figure(
        form,
        "Sweep dia.",
        () -> neighbour(index).map(head -> 2 * head.radiusMm()),
        mm -> sweep(index, mm));
  }

  private void figure(
      Form form,
      String name,
      java.util.function.Supplier<Optional<Double>> now,
      java.util.function.DoubleConsumer typed) {
    FigureField field =
        form.figure(
            name,
            length ->
                length.map(Length::millimetres).filter(mm -> mm >= 0).ifPresent(typed::accept));
    shows.add(() -> field.show(now.get().map(Length::ofMillimetres)));
  }

  private Optional<Seat.Wall> wall(int index) {
    return bench.sketch().shape().walls().stream().skip(index).findFirst();
  }

  private Optional<Seat.Neighbour> neighbour(int index) {
    return bench.sketch().shape().neighbours().stream().skip(index).findFirst();
  }

  private void wall(int index, double mm, boolean height) {
    bench.apply(
        new Change(
            height ? "wall height typed" : "fillet typed",
            "wall " + index + height,
            sketch -> {
              Shape shape = sketch.shape();
              Seat.Wall old = shape.walls().get(index);
              Seat.Wall changed =
                  new Seat.Wall(
                      old.name(),
                      old.from(),
                      old.to(),
                      height && mm > 0 ? mm : old.heightMm(),
                      height ? old.filletRadiusMm() : mm);
              return sketch.with(shape.withWalls(Shape.set(shape.walls(), index, changed)));
            }));
  }

  private void sweep(int index, double mm) {
    bench.apply(
        new Change(
            "sweep typed",
            "sweep " + index,
            sketch -> {
              Shape shape = sketch.shape();
              Seat.Neighbour old = shape.neighbours().get(index);
              Seat.Neighbour changed =
                  new Seat.Neighbour(old.name(), old.centre(), mm > 0 ? mm / 2 : old.radiusMm());
              return sketch.with(
                  shape.withNeighbours(Shape.set(shape.neighbours(), index, changed)));
            }));
  }

  private String assumed() {
    return bench.sketch().shape().walls().stream()
            .anyMatch(wall -> wall.heightMm() == ASSUMED_MM && wall.name().startsWith("wall "))
        ? "A wall whose height was not typed is taken as higher than the head (10 mm, assumed)."
        : "";
  }

  void unitChanged() {
    built = Optional.empty();
    build(bench.chosen());
    built = bench.chosen();
    shows.forEach(Runnable::run);
  }
}
