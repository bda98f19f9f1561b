package org.fettlebench.desktop.seats.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.ScrollPane;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthReader;
import org.fettlebench.measure.MeasureException;

/**
 * Figures typed down a column, as a calliper gives them: Enter and the arrow keys go down and up,
 * Enter in an empty field goes on at the top of the next column, after the last one beyond the
 * grid. There is always one row more than is filled.
 */
final class FigureGrid extends Composite {
  /** More rows than anyone types; the drawing shows the others. */
  private static final int MOST_ROWS = 60;

  private static final int CHARACTERS = 8;

  private final Desk desk;
  private final Watcher watcher;
  private final List<List<Text>> rows = new ArrayList<>();
  private final List<Label> heads = new ArrayList<>();
  private List<String> names;
  private List<List<Optional<Length>>> shown = List.of();
  private boolean showing;

  /** Told of every figure typed. */
  interface Watcher {
    /** A figure was typed, or its field emptied. */
    void typed(int row, int column, Optional<Length> figure);

    /** The keyboard went to a row; 0 is the first. */
    void entered(int row);

    /** What was typed is no length: says why; an empty text when it is one again. */
    void refused(String why);

    /** Enter was pressed below the last figure of the last column. */
    void finished();
  }

  FigureGrid(Composite parent, Desk desk, List<String> names, Watcher watcher) {
    super(parent, SWT.NONE);
    this.desk = desk;
    this.names = List.copyOf(names);
    this.watcher = watcher;
    setBackground(parent.getBackground());
    build();
  }

  private void build() {
    boolean before = showing;
    showing = true;
    for (Control child : getChildren()) {
      child.dispose();
    }
    rows.clear();
    heads.clear();
    var grid = Layouts.grid(names.size() + 1, 0);
    grid.verticalSpacing = 2;
    setLayout(grid);
    number("");
    for (String name : names) {
      Label head = Layouts.remark(this, desk.look(), name + ", " + desk.unit().symbol());
      heads.add(head);
    }
    showing = before;
  }

  private void number(String words) {
    Label number = Layouts.remark(this, desk.look(), words);
    GridData data = new GridData(SWT.RIGHT, SWT.CENTER, false, false);
    data.widthHint = (int) (18 * desk.look().scale());
    number.setLayoutData(data);
    number.setAlignment(SWT.RIGHT);
  }

  /** Shows other columns. */
  void columns(List<String> newNames) {
    if (!newNames.equals(names)) {
      names = List.copyOf(newNames);
      shown = List.of();
      build();
    }
  }

  /** Shows figures; fields that mean them already are left as they were typed. */
  void show(List<List<Optional<Length>>> figures) {
    showing = true;
    List<List<Optional<Length>>> wanted = new ArrayList<>(figures);
    wanted.add(names.stream().map(name -> Optional.<Length>empty()).toList());
    int count = Math.min(MOST_ROWS, wanted.size());
    boolean fewer = resize(count);
    for (int i = 0; i < count; i++) {
      for (int j = 0; j < names.size(); j++) {
        Text field = rows.get(i).get(j);
        Optional<Length> figure = wanted.get(i).get(j);
        boolean known = i < shown.size() && shown.get(i).get(j).equals(figure);
        if (!known && !means(field, figure)) {
          field.setText(figure.map(each -> Figures.typed(each, desk.unit())).orElse(""));
          field.setForeground(desk.look().ink());
        }
      }
    }
    shown = wanted;
    showing = false;
    if (fewer) {
      requestLayout();
      ScrollPane.around(this).ifPresent(ScrollPane::fit);
    }
  }

  private boolean means(Text field, Optional<Length> figure) {
    try {
      String words = field.getText().strip();
      Optional<Length> typed =
          words.isEmpty() ? Optional.empty() : Optional.of(LengthReader.read(words, desk.unit()));
      return typed.equals(figure);
    } catch (MeasureException unfinished) {
      // Half a figure stays as long as the one that it stands for is not there.
      return figure.isEmpty() && field.isFocusControl();
    }
  }

  private boolean resize(int count) {
    boolean changed = rows.size() != count;
    while (rows.size() < count) {
      int row = rows.size();
      number(String.valueOf(row + 1));
      List<Text> fields = new ArrayList<>();
      for (int column = 0; column < names.size(); column++) {
        fields.add(field(row, column));
      }
      rows.add(fields);
    }
    while (rows.size() > count) {
      List<Text> last = rows.remove(rows.size() - 1);
      Control[] all = getChildren();
      all[all.length - last.size() - 1].dispose();
      last.forEach(Control::dispose);
    }
    return changed;
  }

  private Text field(int row, int column) {
    Text field = new Text(this, SWT.SINGLE | SWT.BORDER | SWT.RIGHT);
    field.setFont(desk.look().text());
    field.setBackground(desk.look().sheet());
    field.setForeground(desk.look().ink());
    Layouts.characters(field, CHARACTERS);
    field.addListener(SWT.Modify, event -> read(field, row, column));
    field.addListener(SWT.FocusIn, event -> entered(row));
    field.addListener(SWT.KeyDown, event -> key(event, row, column));
    field.getAccessible().addAccessibleListener(named(row, column));
    return field;
  }

  private org.eclipse.swt.accessibility.AccessibleAdapter named(int row, int column) {
    return new org.eclipse.swt.accessibility.AccessibleAdapter() {
      @Override
      public void getName(org.eclipse.swt.accessibility.AccessibleEvent event) {
        event.result = names.get(column) + " " + (row + 1);
      }
    };
  }

  /** Rows that come and go hand the keyboard on by themselves: nobody has entered one then. */
  private void entered(int row) {
    if (!showing) {
      watcher.entered(row);
    }
  }

  private void read(Text field, int row, int column) {
    if (showing) {
      return;
    }
    String words = field.getText().strip();
    try {
      Optional<Length> figure =
          words.isEmpty() ? Optional.empty() : Optional.of(LengthReader.read(words, desk.unit()));
      field.setForeground(desk.look().ink());
      field.setToolTipText(null);
      watcher.refused("");
      watcher.typed(row, column, figure);
    } catch (MeasureException refused) {
      field.setForeground(desk.look().bad());
      field.setToolTipText(refused.getMessage());
      watcher.refused(names.get(column) + " " + (row + 1) + ": " + refused.getMessage());
    }
  }

  private void key(Event event, int row, int column) {
    boolean enter = event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR;
    if (enter && rows.get(row).get(column).getText().isBlank() && row > 0) {
      if (column + 1 < names.size()) {
        go(0, column + 1);
      } else {
        watcher.finished();
      }
      event.doit = false;
    } else if (enter || event.keyCode == SWT.ARROW_DOWN) {
      go(row + 1, column);
      event.doit = false;
    } else if (event.keyCode == SWT.ARROW_UP) {
      go(row - 1, column);
      event.doit = false;
    }
  }

  /** Puts the keyboard into a field. */
  void go(int row, int column) {
    if (row >= 0 && row < rows.size() && column < names.size()) {
      Text field = rows.get(row).get(column);
      field.setFocus();
      field.selectAll();
    } else if (row >= rows.size() && column + 1 < names.size()) {
      go(0, column + 1);
    }
  }

  /** Returns a field, for tests. */
  Text at(int row, int column) {
    return rows.get(row).get(column);
  }

  int rows() {
    return rows.size();
  }

  /** Writes all figures anew in the unit of now. */
  void unitChanged() {
    List<List<Optional<Length>>> figures =
        shown.isEmpty() ? List.of() : shown.subList(0, shown.size() - 1);
    List<List<Optional<Length>>> kept = List.copyOf(figures);
    shown = List.of();
    build();
    show(kept);
    requestLayout();
  }
}
