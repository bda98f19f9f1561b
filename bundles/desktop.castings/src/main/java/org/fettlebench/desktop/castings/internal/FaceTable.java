package org.fettlebench.desktop.castings.internal;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.ScrollPane;
import org.fettlebench.desktop.widgets.Section;

/**
 * Faces, bores and bosses, a line each: what a person types at the left, what comes off at the
 * right. Enter and the arrow keys go down and up; there is always one line more than is filled.
 */
final class FaceTable {
  private static final String TITLE = "Faces, bores and bosses";

  /** What stands above the columns; the unit stands in the title. */
  private static final List<String> HEADS =
      List.of(
          "", "Face", "Looks", "Drawing", "Measured", "Cut", "May be out", "Comes off", "Spare");

  private static final int FIRST_FIGURE = 3;

  private final Desk desk;
  private final Bench bench;
  private final ScrollPane pane;
  private final Section section;
  private final List<FaceLine> lines = new ArrayList<>();

  FaceTable(Composite parent, Desk desk, Bench bench) {
    this.desk = desk;
    this.bench = bench;
    pane = ScrollPane.bothWays(parent, desk.look());
    section = new Section(pane.body(), desk.look(), title());
    GridLayout grid = Layouts.grid(HEADS.size(), 0);
    grid.verticalSpacing = 2;
    grid.horizontalSpacing = 4;
    section.body().setLayout(grid);
    for (int i = 0; i < HEADS.size(); i++) {
      Label head = Layouts.remark(section.body(), desk.look(), HEADS.get(i));
      boolean right = i >= FIRST_FIGURE;
      head.setAlignment(right ? SWT.RIGHT : SWT.LEFT);
      head.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, false, false));
    }
  }

  private String title() {
    return Figures.head(TITLE, desk.unit().symbol());
  }

  /** Shows the sketch of now and what comes of it. */
  void show() {
    int wanted = bench.sketch().rows().size() + 1;
    boolean changed = lines.size() != wanted;
    while (lines.size() < wanted) {
      lines.add(new FaceLine(section.body(), desk, bench, lines.size(), this::key));
    }
    while (lines.size() > wanted) {
      lines.remove(lines.size() - 1).dispose();
    }
    List<String> names = bench.sketch().names();
    for (int i = 0; i < lines.size(); i++) {
      lines.get(i).show(i < names.size() ? names.get(i) : "");
    }
    if (changed) {
      section.body().requestLayout();
      pane.fit();
    }
  }

  private void key(Event event, int row, int column) {
    boolean down =
        event.keyCode == SWT.CR
            || event.keyCode == SWT.KEYPAD_CR
            || event.keyCode == SWT.ARROW_DOWN;
    if (down || event.keyCode == SWT.ARROW_UP) {
      event.doit = false;
      go(down ? row + 1 : row - 1, column);
    }
  }

  /** Puts the keyboard into a field; Enter below the last line begins the next column. */
  void go(int row, int column) {
    if (row >= lines.size()) {
      go(0, Math.min(column + 1, FaceLine.LAST));
    } else if (row >= 0) {
      lines.get(row).focus(column);
    }
  }

  FaceLine line(int row) {
    return lines.get(row);
  }

  int count() {
    return lines.size();
  }

  void unitChanged() {
    section.title(title());
    lines.forEach(FaceLine::unitChanged);
    pane.fit();
  }
}
