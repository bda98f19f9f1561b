package org.fettlebench.desktop.seats.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.seats.internal.Practice.Entry;
import org.fettlebench.desktop.seats.internal.Practice.Readings;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.ScrollPane;
import org.fettlebench.holes.correct.Reading;

/** What was read at a hole, reading under reading: from what, and how much. */
final class ReadingRows extends Composite {
  private final Desk desk;
  private final Bench bench;
  private final Changing changing;
  private final List<Combo> from = new ArrayList<>();
  private final List<FigureField> read = new ArrayList<>();

  /** Takes a change of the readings. */
  interface Changing {
    /** Applies it; changes of one key after each other are one step of Undo. */
    void change(String words, String key, UnaryOperator<Readings> change);
  }

  ReadingRows(Composite parent, Desk desk, Bench bench, Changing changing) {
    super(parent, SWT.NONE);
    this.desk = desk;
    this.bench = bench;
    this.changing = changing;
    setBackground(parent.getBackground());
  }

  void show() {
    Sketch sketch = bench.sketch();
    List<Entry> entries = sketch.hole().practice().readings().entries();
    if (entries.size() != from.size()) {
      build(entries.size());
    }
    String[] names =
        Recipes.references(sketch).stream().map(Reading.Reference::name).toArray(String[]::new);
    for (int i = 0; i < entries.size(); i++) {
      Combo combo = from.get(i);
      if (!Arrays.equals(names, combo.getItems())) {
        combo.setItems(names);
      }
      int at = Arrays.asList(names).indexOf(Gauging.reference(sketch, i).name());
      if (combo.getSelectionIndex() != at) {
        combo.select(at);
      }
      read.get(i).show(entries.get(i).read());
    }
  }

  private void build(int count) {
    for (Control child : getChildren()) {
      child.dispose();
    }
    from.clear();
    read.clear();
    Form form = new Form(this, desk, 2);
    for (int i = 0; i < count; i++) {
      int which = i;
      from.add(form.choice(i == 0 ? "From" : "and from", List.of(), index -> chosen(which, index)));
      read.add(
          form.figure(
                  "reads",
                  length ->
                      changing.change(
                          "reading typed",
                          "reading " + which,
                          all -> all.with(which, new Entry(name(which), length))))
              .brief());
    }
    form.name("");
    Layouts.button(this, desk.look(), "One more reading", this::more)
        .setLayoutData(
            new GridData(SWT.LEFT, SWT.CENTER, false, false, Form.large(desk) ? 1 : 3, 1));
    requestLayout();
    ScrollPane.around(this).ifPresent(ScrollPane::fit);
  }

  private String name(int which) {
    return Gauging.reference(bench.sketch(), which).name();
  }

  private void chosen(int which, int index) {
    String name = Recipes.references(bench.sketch()).get(index).name();
    changing.change(
        "reading's edge chosen",
        "from " + which,
        all -> all.with(which, new Entry(name, all.entries().get(which).read())));
  }

  private void more() {
    changing.change("one more reading", "more " + read.size(), Readings::more);
    read.get(read.size() - 1).text().setFocus();
  }

  void unitChanged() {
    read.forEach(FigureField::unitChanged);
  }

  /** Returns the field of a reading, for tests. */
  FigureField read(int which) {
    return read.get(which);
  }

  Combo from(int which) {
    return from.get(which);
  }
}
