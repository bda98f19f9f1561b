package org.fettlebench.desktop.castings.internal;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.castings.Placing;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Change;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.measure.Length;

/** One line of the table. */
final class FaceLine {
  /** Columns that take the keyboard: name, drawing, measured, cut, may be out. */
  static final int LAST = 4;

  private static final int FIGURE_CHARACTERS = 7;

  /** Told of a key in a field of the table. */
  @FunctionalInterface
  interface Keys {
    void key(Event event, int row, int column);
  }

  private final Desk desk;
  private final Bench bench;
  private final int row;
  private final Label number;
  private final Text name;
  private final Combo looks;
  private final Cell finished;
  private final Cell measured;
  private final Cell cut;
  private final Cell mayBeOut;
  private final Label comesOff;
  private final Label spare;
  private boolean showing;

  FaceLine(Composite body, Desk desk, Bench bench, int row, Keys keys) {
    this.desk = desk;
    this.bench = bench;
    this.row = row;
    number = figure(body, 2, desk.look().faint());
    number.setText(String.valueOf(row + 1));
    name = new Text(body, SWT.SINGLE | SWT.BORDER);
    name.setFont(desk.look().text());
    name.setBackground(desk.look().sheet());
    name.setForeground(desk.look().ink());
    Layouts.characters(name, 13);
    ((GridData) name.getLayoutData()).horizontalAlignment = SWT.FILL;
    ((GridData) name.getLayoutData()).grabExcessHorizontalSpace = true;
    name.addListener(SWT.Modify, event -> nameTyped());
    looks = new Combo(body, SWT.DROP_DOWN | SWT.READ_ONLY);
    looks.setFont(desk.look().text());
    looks.setItems(Looks.all());
    looks.addListener(SWT.Selection, event -> looksChosen());
    looks.addListener(SWT.KeyDown, this::letter);
    finished = cell(body, "on the drawing", FaceRow::finished);
    measured =
        cell(body, "measured", (face, entry) -> face.reading(0, face.measuredColumn(), entry));
    cut = cell(body, "least cut", FaceRow::cut);
    mayBeOut = cell(body, "may be out", FaceRow::mayBeOut);
    comesOff = figure(body, 13, desk.look().ink());
    spare = figure(body, 6, desk.look().ink());
    List<Control> fields = fields();
    for (int i = 0; i < fields.size(); i++) {
      int column = i;
      fields.get(i).addListener(SWT.KeyDown, event -> keys.key(event, row, column));
    }
    Stream.concat(fields.stream(), Stream.of(looks))
        .forEach(field -> field.addListener(SWT.FocusIn, event -> bench.choose(row)));
  }

  private Label figure(Composite body, int characters, org.eclipse.swt.graphics.Color ink) {
    Label label = new Label(body, SWT.RIGHT);
    // Wide enough for what governs, which is set heavier.
    label.setFont(desk.look().strong());
    label.setForeground(ink);
    label.setBackground(body.getBackground());
    Layouts.characters(label, characters);
    ((GridData) label.getLayoutData()).horizontalAlignment = SWT.FILL;
    return label;
  }

  private Cell cell(Composite body, String what, BiFunction<FaceRow, Entry, FaceRow> change) {
    return new Cell(
            body, desk, FIGURE_CHARACTERS, entry -> apply(what, face -> change.apply(face, entry)))
        .named("line " + (row + 1) + ", " + what);
  }

  private void apply(String what, java.util.function.UnaryOperator<FaceRow> change) {
    bench.apply(
        new Change<>(
            "line " + (row + 1) + ", " + what, "type " + row + what, all -> all.row(row, change)));
  }

  private void nameTyped() {
    if (!showing) {
      String words = name.getText();
      apply("name", face -> face.named(words));
    }
  }

  /** A letter goes to the next way that begins with it, as elsewhere; not all platforms do so. */
  private void letter(Event event) {
    String letter = String.valueOf(event.character).toLowerCase(Locale.ROOT);
    if ((event.stateMask & SWT.MODIFIER_MASK & ~SWT.SHIFT) != 0 || !letter.matches("[a-z]")) {
      return;
    }
    int now = looks.getSelectionIndex();
    for (int i = 1; i <= looks.getItemCount(); i++) {
      int next = (now + i) % looks.getItemCount();
      if (looks.getItem(next).startsWith(letter)) {
        looks.select(next);
        looksChosen();
        break;
      }
    }
    event.doit = false;
  }

  private void looksChosen() {
    Looks chosen = Looks.values()[looks.getSelectionIndex()];
    apply("which way it looks", face -> face.looking(chosen));
  }

  private List<Control> fields() {
    return List.of(name, finished.text(), measured.text(), cut.text(), mayBeOut.text());
  }

  /**
   * Shows the line of the sketch of now.
   *
   * @param called what it is called when it has no name of its own
   */
  void show(String called) {
    Sketch sketch = bench.sketch();
    FaceRow face = sketch.row(row);
    showing = true;
    if (!name.getText().equals(face.name())) {
      name.setText(face.name());
    }
    name.setMessage(row < sketch.rows().size() ? called : "next face");
    if (looks.getSelectionIndex() != face.looks().ordinal()) {
      looks.select(face.looks().ordinal());
    }
    showing = false;
    finished.show(face.finished());
    finished.hint(face.looks().round() ? "\u2300" : face.looks().axis().word());
    measured.hint(face.looks().round() ? "\u2300" : face.looks().axis().word());
    if (face.readings().size() > 1) {
      measured.fixed(face.readings().size() + " spots");
    } else {
      measured.show(face.measured());
    }
    cut.show(face.cut());
    mayBeOut.show(face.mayBeOut());
    boolean begun = row < sketch.rows().size();
    cut.hint(begun ? sketch.cut().shown(desk.unit()) : "");
    mayBeOut.hint(begun ? sketch.mayBeOut().shown(desk.unit()) : "");
    number.setForeground(row == bench.row() ? desk.look().accent() : desk.look().faint());
    number.setFont(row == bench.row() ? desk.look().strong() : desk.look().text());
    showAnswer(bench.reply().coming(row));
  }

  private void showAnswer(Optional<Placing.Coming> coming) {
    boolean governs = coming.filter(Placing.Coming::governs).isPresent();
    say(comesOff, coming.map(this::off).orElse(""), governs);
    say(spare, coming.map(one -> figure(one.spareMm())).orElse(""), governs);
    boolean lacks = coming.filter(one -> !Placing.cleansUp(one.spareMm())).isPresent();
    spare.setForeground(lacks ? desk.look().bad() : desk.look().ink());
    spare.setToolTipText(governs ? "This one governs." : null);
  }

  private void say(Label label, String words, boolean strong) {
    label.setFont(strong ? desk.look().strong() : desk.look().text());
    if (!label.getText().equals(words)) {
      label.setText(words);
    }
  }

  private String off(Placing.Coming one) {
    String least = figure(one.leastMm());
    String most = figure(one.mostMm());
    return least.equals(most) ? least : least + " to " + most;
  }

  private String figure(double millimetres) {
    return Figures.figure(Length.ofMillimetres(millimetres), desk.unit());
  }

  void focus(int column) {
    Control field = fields().get(column);
    field.setFocus();
    if (field instanceof Text text) {
      text.selectAll();
    }
  }

  /** Returns a field: name, drawing, measured, cut, may be out. */
  Text field(int column) {
    return (Text) fields().get(column);
  }

  Combo looks() {
    return looks;
  }

  /** Returns what the line says of the answer. */
  String answer() {
    return comesOff.getText() + "|" + spare.getText();
  }

  void unitChanged() {
    FaceRow face = bench.sketch().row(row);
    finished.showAnew(face.finished());
    measured.showAnew(face.measured());
    cut.showAnew(face.cut());
    mayBeOut.showAnew(face.mayBeOut());
  }

  void dispose() {
    number.dispose();
    looks.dispose();
    comesOff.dispose();
    spare.dispose();
    fields().forEach(Control::dispose);
  }
}
