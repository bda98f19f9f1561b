package org.fettlebench.desktop.seats.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Change;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.Section;
import org.fettlebench.fits.Outline;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.Point;

/** The flat in figures: stations as the calliper gives them, or corners. */
final class FlatSection {
  private static final List<String> WAYS =
      List.of(
          "Widths at stations, both sides of a datum line",
          "Widths at stations, from a straight datum edge",
          "Corners");

  private final Desk desk;
  private final Bench bench;
  private final Section section;
  private final Combo way;
  private final FigureGrid grid;
  private final Label trouble;
  private final Button back;
  private String refused = "";
  private Runnable finished = () -> {};

  FlatSection(Composite parent, Desk desk, Bench bench) {
    this.desk = desk;
    this.bench = bench;
    section = Form.section(parent, desk, "1  The flat, as measured");
    Composite body = section.body();
    way = new Combo(body, SWT.DROP_DOWN | SWT.READ_ONLY);
    way.setFont(desk.look().text());
    way.setItems(WAYS.toArray(String[]::new));
    way.addListener(SWT.Selection, event -> wayChosen(way.getSelectionIndex()));
    Form.unwheeled(way);
    Layouts.wide(way);
    grid = new FigureGrid(body, desk, names(Sketch.EMPTY.shape()), watcher());
    Layouts.wide(grid);
    trouble = Layouts.remark(body, desk.look(), "");
    back = Layouts.button(body, desk.look(), "Back to the stations", () -> wayChosen(0));
  }

  private FigureGrid.Watcher watcher() {
    return new FigureGrid.Watcher() {
      @Override
      public void typed(int row, int column, Optional<Length> figure) {
        FlatSection.this.typed(row, column, figure);
      }

      @Override
      public void entered(int row) {
        Shape shape = bench.sketch().shape();
        if (!shape.stations().used() && row < shape.knots(shape.given()).size()) {
          bench.choose(Optional.of(Handle.of(Handle.Kind.CORNER, row)));
        }
      }

      @Override
      public void finished() {
        finished.run();
      }

      @Override
      public void refused(String why) {
        refused = why;
        tell();
      }
    };
  }

  private void typed(int row, int column, Optional<Length> figure) {
    boolean stations = bench.sketch().shape().stations().used();
    bench.apply(
        new Change<>(
            stations ? "station " + (row + 1) + " typed" : "corner " + (row + 1) + " typed",
            "type " + row + " " + column,
            sketch ->
                sketch.with(
                    stations
                        ? station(sketch.shape(), row, column, figure)
                        : corner(sketch.shape(), row, column, figure))));
  }

  private static Shape station(Shape shape, int row, int column, Optional<Length> figure) {
    int which = column == 1 && shape.stations().oneWidth() ? 2 : column;
    return shape.with(shape.stations().with(row, which, figure));
  }

  /** A corner that is begun takes its other figure from the one before. */
  private static Shape corner(Shape shape, int row, int column, Optional<Length> figure) {
    List<Point> corners = new ArrayList<>(shape.knots(shape.given()));
    if (figure.isEmpty()) {
      return shape;
    }
    double mm = figure.get().millimetres();
    Point before = row < corners.size() ? corners.get(row) : new Point(0, 0);
    Point after = column == 0 ? new Point(mm, before.yMm()) : new Point(before.xMm(), mm);
    if (arcs(shape)) {
      return Handles.bent(
          shape,
          outline ->
              row < corners.size()
                  ? Arcs.moved(outline, row, after)
                  : Outline.ofCorners(
                      Shape.plus(outline.corners(), row, Outline.Corner.sharp(after))));
    }
    if (row < corners.size()) {
      corners.set(row, after);
    } else {
      corners.add(after);
    }
    return shape.withGiven(corners);
  }

  private void wayChosen(int index) {
    bench.apply(
        Change.of(
            "outline by " + WAYS.get(index).toLowerCase(java.util.Locale.ROOT),
            sketch -> sketch.with(by(sketch.shape(), index))));
    if (index < 2) {
      grid.go(0, 0);
    }
  }

  private static Shape by(Shape shape, int index) {
    if (index == 2) {
      return shape.stations().used() && shape.drawable()
          ? shape.byCorners()
          : shape.with(shape.stations().withUsed(false));
    }
    return shape.with(shape.stations().withUsed(true).withOneWidth(index == 1));
  }

  private static List<String> names(Shape shape) {
    if (!shape.stations().used()) {
      return List.of("x", "y");
    }
    return shape.stations().oneWidth()
        ? List.of("Station", "Width")
        : List.of("Station", "Near", "Far");
  }

  /** Shows the sketch of now. */
  void show() {
    Shape shape = bench.sketch().shape();
    way.select(!shape.stations().used() ? 2 : shape.stations().oneWidth() ? 1 : 0);
    grid.columns(names(shape));
    grid.show(
        shape.stations().used() ? stations(shape.stations()) : corners(shape.knots(shape.given())));
    boolean kept = !shape.stations().used() && !shape.stations().rows().isEmpty();
    Layouts.present(back, kept);
    tell();
  }

  private static boolean arcs(Shape shape) {
    return !shape.stations().used() && shape.bent(shape.given());
  }

  private static List<List<Optional<Length>>> stations(Stations stations) {
    return stations.rows().stream()
        .map(
            row ->
                stations.oneWidth()
                    ? List.of(row.at(), row.far())
                    : List.of(row.at(), row.near(), row.far()))
        .toList();
  }

  private static List<List<Optional<Length>>> corners(List<Point> corners) {
    return corners.stream().map(at -> List.of(length(at.xMm()), length(at.yMm()))).toList();
  }

  private static Optional<Length> length(double mm) {
    return Optional.of(Length.ofMillimetres(mm));
  }

  private void tell() {
    Shape shape = bench.sketch().shape();
    String words = refused;
    if (words.isEmpty() && shape.stations().used()) {
      words = shape.stations().trouble();
    }
    if (words.isEmpty() && shape.stations().used()) {
      words =
          shape.stations().oneWidth()
              ? "Enter goes down; in an empty field, on. The datum edge is the near side."
              : "Enter goes down; in an empty field, on. Near is towards you.";
    }
    if (words.isEmpty() && arcs(shape)) {
      words =
          "Some sides are arcs or corners rounded: choose a corner on the drawing to see them"
              + " below.";
    }
    trouble.setForeground(refused.isEmpty() ? desk.look().faint() : desk.look().bad());
    Layouts.say(trouble, words);
  }

  void unitChanged() {
    grid.unitChanged();
  }

  /** Says where the keyboard goes after the last figure. */
  void then(Runnable next) {
    finished = next;
  }

  FigureGrid grid() {
    return grid;
  }
}
