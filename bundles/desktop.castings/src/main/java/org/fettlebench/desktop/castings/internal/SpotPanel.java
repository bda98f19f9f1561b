package org.fettlebench.desktop.castings.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.castings.Axis;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Change;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.ScrollPane;
import org.fettlebench.desktop.widgets.Section;

/** What was measured of the line in hand, place by place, and the centre of a round one. */
final class SpotPanel {
  private static final int MOST_PLACES = 60;
  private static final int CHARACTERS = 7;

  private final Desk desk;
  private final Bench bench;
  private final ScrollPane pane;
  private final Section section;
  private final Label remark;
  private Composite grid;
  private final List<Cell> centre = new ArrayList<>();
  private final List<List<Cell>> places = new ArrayList<>();
  private int shownRow = -1;
  private boolean shownRound;
  private Axis shownAxis = Axis.X;

  SpotPanel(Composite parent, Desk desk, Bench bench) {
    this.desk = desk;
    this.bench = bench;
    pane = new ScrollPane(parent, desk.look());
    section = new Section(pane.body(), desk.look(), "Measured");
    remark = Layouts.remark(section.body(), desk.look(), "");
    grid = new Composite(section.body(), SWT.NONE);
  }

  /** Shows the line in hand. */
  void show() {
    int row = bench.row();
    FaceRow face = bench.sketch().row(row);
    if (row != shownRow || face.looks().round() != shownRound || face.looks().axis() != shownAxis) {
      build(row, face.looks());
    }
    List<String> names = bench.sketch().names();
    section.title("Measured: " + (row < names.size() ? names.get(row) : face.looks().called()));
    for (int column = 0; column < centre.size(); column++) {
      centre.get(column).show(face.centre().figure(column));
    }
    boolean changed = resize(row, face);
    for (int i = 0; i < places.size(); i++) {
      Reading reading = i < face.readings().size() ? face.readings().get(i) : Reading.BLANK;
      for (int column = 0; column < places.get(i).size(); column++) {
        places.get(i).get(column).show(reading.figure(column));
      }
    }
    if (changed) {
      section.requestLayout();
      pane.fit();
    }
  }

  private void build(int row, Looks looks) {
    shownRow = row;
    shownRound = looks.round();
    shownAxis = looks.axis();
    grid.dispose();
    centre.clear();
    places.clear();
    grid = new Composite(section.body(), SWT.NONE);
    grid.setBackground(section.body().getBackground());
    GridLayout layout = Layouts.grid(looks.figures().size() + 1, 0);
    layout.verticalSpacing = 2;
    layout.horizontalSpacing = 3;
    grid.setLayout(layout);
    grid.setLayoutData(new GridData(SWT.LEFT, SWT.BEGINNING, false, false));
    if (looks.round()) {
      centre(row, looks);
    }
    word("Place");
    looks.figures().forEach(name -> head(Figures.head(name, desk.unit().symbol())));
    Layouts.say(remark, remark(looks));
  }

  private static String remark(Looks looks) {
    return looks.round()
        ? "Centre and diameter of the rough one, at one place along "
            + looks.axis().word()
            + " or at both ends. Diameter 0 when it is not cored."
        : "From the rough datum. "
            + looks.axis().word()
            + " alone will do for a single size; when the part may be turned, give x, y and z of"
            + " spots near the corners.";
  }

  private void centre(int row, Looks looks) {
    word("");
    for (Axis axis : Axis.values()) {
      head(Figures.head(axis.word(), desk.unit().symbol()));
    }
    head("");
    word("Drawing");
    for (Axis axis : Axis.values()) {
      int column = axis.ordinal();
      Cell cell =
          new Cell(
                  grid,
                  desk,
                  CHARACTERS,
                  entry -> apply(row, "centre " + axis.word(), f -> f.centre(column, entry)))
              .named("centre on the drawing, " + axis.word());
      cell.hint(axis == looks.axis() ? "any" : "");
      centre.add(cell);
    }
    word("");
  }

  private void word(String words) {
    Label label = Layouts.remark(grid, desk.look(), words);
    label.setLayoutData(new GridData(SWT.LEFT, SWT.CENTER, false, false));
  }

  private void head(String words) {
    Label label = Layouts.remark(grid, desk.look(), words);
    label.setAlignment(SWT.RIGHT);
    label.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, false, false));
  }

  private boolean resize(int row, FaceRow face) {
    int wanted = Math.min(MOST_PLACES, face.readings().size() + 1);
    boolean changed = places.size() != wanted;
    while (places.size() < wanted) {
      add(row, face.looks());
    }
    while (places.size() > wanted) {
      List<Cell> last = places.remove(places.size() - 1);
      Control[] all = grid.getChildren();
      all[all.length - last.size() - 1].dispose();
      last.forEach(cell -> cell.text().dispose());
    }
    return changed;
  }

  private void add(int row, Looks looks) {
    int place = places.size();
    word(String.valueOf(place + 1));
    List<Cell> cells = new ArrayList<>();
    for (int i = 0; i < looks.figures().size(); i++) {
      int column = i;
      String what = "place " + (place + 1) + " " + looks.figures().get(i);
      Cell cell =
          new Cell(
                  grid,
                  desk,
                  CHARACTERS,
                  entry -> apply(row, what, f -> f.reading(place, column, entry)))
              .named(what);
      cell.text().addListener(SWT.KeyDown, event -> key(event, place, column));
      cells.add(cell);
    }
    places.add(cells);
  }

  private void apply(int row, String what, UnaryOperator<FaceRow> change) {
    bench.apply(
        new Change<>(
            "line " + (row + 1) + ", " + what,
            "type " + row + what,
            sketch -> sketch.row(row, change)));
  }

  private void key(Event event, int place, int column) {
    boolean down =
        event.keyCode == SWT.CR
            || event.keyCode == SWT.KEYPAD_CR
            || event.keyCode == SWT.ARROW_DOWN;
    if (down || event.keyCode == SWT.ARROW_UP) {
      event.doit = false;
      int next = down ? place + 1 : place - 1;
      if (next >= 0 && next < places.size()) {
        places.get(next).get(column).text().setFocus();
        places.get(next).get(column).text().selectAll();
      }
    }
  }

  /** Returns a field of a place. */
  Cell at(int place, int column) {
    return places.get(place).get(column);
  }

  /** Returns the field of the centre along an axis. */
  Cell centre(int column) {
    return centre.get(column);
  }

  void unitChanged() {
    shownRow = -1;
  }
}
