package org.fettlebench.desktop.seats.internal;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Change;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.ScrollPane;
import org.fettlebench.desktop.widgets.Section;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatWords;
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
  private Optional<ThingFields> chosen = Optional.empty();

  ThingsSection(Composite parent, Desk desk, Bench bench) {
    this.desk = desk;
    this.bench = bench;
    section = Form.section(parent, desk, "Walls, other heads, the far face");
    Composite row = Layouts.flow(section.body());
    small(row, "Add wall", this::wall);
    small(row, "Add head beside", () -> add("head beside added", this::neighbourAdded));
    small(row, "Add far face", () -> add("far face added", ThingsSection::farAdded));
    fields = Layouts.wide(new Composite(section.body(), org.eclipse.swt.SWT.NONE));
    fields.setBackground(section.body().getBackground());
    assumed = Layouts.remark(section.body(), desk.look(), "");
    build(Optional.empty());
  }

  /** Adds a wall. */
  void wall() {
    add("wall added", this::wallAdded);
  }

  /** Returns what carries the fields of the chosen thing, for tests. */
  Composite fields() {
    return fields;
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
    List<Point> corners = shape.knots(shape.corners());
    int edge =
        bench
            .chosen()
            .filter(
                handle -> handle.kind() == Handle.Kind.CORNER || handle.kind() == Handle.Kind.ARC)
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
    Optional<Handle> now = bench.chosen();
    if (!now.equals(built)) {
      built = now;
      build(now);
    }
    chosen.ifPresent(ThingFields::show);
    Layouts.say(assumed, assumed());
  }

  private void build(Optional<Handle> handle) {
    for (var child : fields.getChildren()) {
      child.dispose();
    }
    Form form = new Form(fields, desk, 2);
    chosen = handle.map(each -> new ThingFields(form, desk, bench, each));
    if (handle.isEmpty()) {
      form.remark(
          "Choose a thing on the drawing to see its figures and its name here; of a corner, whether"
              + " the next side is an arc. A double click on an edge adds a corner, Delete takes"
              + " the chosen thing away.");
    }
    fields.requestLayout();
    ScrollPane.around(fields).ifPresent(ScrollPane::fit);
  }

  private String assumed() {
    return bench.sketch().shape().walls().stream().anyMatch(wall -> wall.heightMm() == ASSUMED_MM)
        ? "A wall whose height was not typed counts as 10 mm high (assumed)."
        : "";
  }

  void unitChanged() {
    built = Optional.empty();
    build(bench.chosen());
    built = bench.chosen();
    chosen.ifPresent(ThingFields::show);
  }
}
