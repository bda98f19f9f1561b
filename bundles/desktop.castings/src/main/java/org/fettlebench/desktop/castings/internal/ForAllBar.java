package org.fettlebench.desktop.castings.internal;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.castings.Axis;
import org.fettlebench.castings.Placing;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Change;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.desktop.widgets.Layouts;

/** What holds for the whole casting: its name, the usual cut and uncertainty, how it may move. */
final class ForAllBar {
  private final Desk desk;
  private final Bench bench;
  private final Text name;
  private final Cell cut;
  private final Label cutName;
  private final Cell mayBeOut;
  private final Map<Axis, Button> shifts = new EnumMap<>(Axis.class);
  private final Map<Axis, Button> turns = new EnumMap<>(Axis.class);
  private final Text largest;
  private final Button pressure;
  private boolean showing;

  ForAllBar(Composite parent, Desk desk, Bench bench) {
    this.desk = desk;
    this.bench = bench;
    Composite bar = Layouts.flow(parent);
    Composite first = group(bar, 6);
    word(first, "Casting");
    name = text(first, 15);
    name.addListener(SWT.Modify, event -> nameTyped());
    cutName = word(first, cutName());
    cut = new Cell(first, desk, 6, entry -> apply("least cut of all", s -> s.cut(entry)));
    word(first, "may be out");
    mayBeOut = new Cell(first, desk, 6, entry -> apply("may be out", s -> s.mayBeOut(entry)));
    Composite second = group(bar, 10);
    word(second, "Shift");
    for (Axis axis : Axis.values()) {
      shifts.put(axis, tick(second, axis.word(), () -> shifted(axis)));
      shifts.get(axis).setToolTipText("The part may be shifted along " + axis.word());
    }
    word(second, "Turn");
    for (Axis axis : Axis.values()) {
      turns.put(axis, tick(second, axis.word(), () -> turned(axis)));
      turns.get(axis).setToolTipText("The part may be turned a little about " + axis.word());
    }
    largest = text(second, 3);
    largest.setToolTipText("The largest turn, above 0 to 10 degrees");
    word(second, "\u00b0");
    largest.addListener(SWT.Modify, event -> degreesTyped());
    pressure = tick(bar, "Holds pressure", this::pressed);
    pressure.setLayoutData(null);
  }

  private static Composite group(Composite bar, int columns) {
    Composite group = Layouts.columns(bar, columns);
    group.setLayoutData(null);
    return group;
  }

  private Label word(Composite parent, String words) {
    Label label = Layouts.word(parent, desk.look(), words);
    label.setForeground(desk.look().faint());
    return label;
  }

  private Text text(Composite parent, int characters) {
    Text text = new Text(parent, SWT.SINGLE | SWT.BORDER);
    text.setFont(desk.look().text());
    text.setBackground(desk.look().sheet());
    text.setForeground(desk.look().ink());
    return Layouts.characters(text, characters);
  }

  private Button tick(Composite parent, String words, Runnable changed) {
    Button tick = new Button(parent, SWT.CHECK);
    tick.setFont(desk.look().text());
    tick.setForeground(desk.look().ink());
    tick.setText(words);
    tick.addListener(SWT.Selection, event -> changed.run());
    return tick;
  }

  private void apply(String what, UnaryOperator<Sketch> change) {
    bench.apply(new Change<>(what, "type " + what, change));
  }

  private void nameTyped() {
    if (!showing) {
      String words = name.getText();
      apply("name of the casting", sketch -> sketch.named(words));
    }
  }

  private void degreesTyped() {
    if (!showing) {
      String words = largest.getText();
      apply("largest turn", sketch -> sketch.moves(sketch.moves().upTo(words)));
    }
  }

  private void shifted(Axis axis) {
    Set<Axis> chosen = EnumSet.noneOf(Axis.class);
    shifts.forEach(
        (each, tick) -> Optional.of(each).filter(a -> tick.getSelection()).ifPresent(chosen::add));
    bench.apply(
        Change.of(
            "shift along " + axis.word(), sketch -> sketch.moves(sketch.moves().shifting(chosen))));
  }

  private void turned(Axis axis) {
    boolean may = turns.get(axis).getSelection();
    bench.apply(
        Change.of(
            "turn about " + axis.word(),
            sketch -> sketch.moves(sketch.moves().turning(axis, may))));
    if (may && bench.sketch().moves().largestTurn().isBlank()) {
      largest.setFocus();
    }
  }

  private void pressed() {
    boolean holds = pressure.getSelection();
    bench.apply(Change.of("holds pressure", sketch -> sketch.holdsPressure(holds)));
  }

  /** Shows the sketch of now. */
  void show() {
    Sketch sketch = bench.sketch();
    showing = true;
    put(name, sketch.name());
    put(largest, sketch.moves().largestTurn());
    showing = false;
    cut.show(sketch.cut());
    mayBeOut.show(sketch.mayBeOut());
    Set<Axis> shown = shifts(sketch);
    shifts.forEach((axis, tick) -> tick.setSelection(shown.contains(axis)));
    turns.forEach((axis, tick) -> tick.setSelection(sketch.moves().turns().contains(axis)));
    largest.setEnabled(!sketch.moves().turns().isEmpty());
    pressure.setSelection(sketch.holdsPressure());
  }

  private Set<Axis> shifts(Sketch sketch) {
    return sketch
        .moves()
        .shifts()
        .or(() -> bench.reply().placing().map(ForAllBar::shifts))
        .orElse(Set.of());
  }

  private static Set<Axis> shifts(Placing placing) {
    return placing.casting().freedom().shifts();
  }

  private static void put(Text text, String words) {
    if (!text.getText().equals(words)) {
      text.setText(words);
    }
  }

  private String cutName() {
    return Figures.head("Least cut", desk.unit().symbol());
  }

  void unitChanged() {
    cutName.setText(cutName());
    cut.showAnew(bench.sketch().cut());
    mayBeOut.showAnew(bench.sketch().mayBeOut());
  }

  Button turn(Axis axis) {
    return turns.get(axis);
  }

  Button shift(Axis axis) {
    return shifts.get(axis);
  }

  Cell cut() {
    return cut;
  }

  Cell mayBeOut() {
    return mayBeOut;
  }

  Text largest() {
    return largest;
  }

  Text name() {
    return name;
  }
}
