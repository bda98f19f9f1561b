package org.fettlebench.desktop.seats.internal;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.seats.internal.Practice.Over;
import org.fettlebench.desktop.widgets.Change;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.holes.otherface.Turn;
import org.fettlebench.measure.Length;

/** Which drawing of the work is shown; for the far face also how thick the part is and its turn. */
final class ViewBar {
  private final Desk desk;
  private final Bench bench;
  private final Composite row;
  private final Composite second;
  private final Map<ViewChoice, Button> views = new EnumMap<>(ViewChoice.class);
  private final FigureField depth;
  private final Combo turn;

  ViewBar(Composite parent, Desk desk, Bench bench, Consumer<ViewChoice> chosen) {
    this.desk = desk;
    this.bench = bench;
    row = Layouts.wide(Layouts.columns(parent, ViewChoice.values().length));
    for (ViewChoice each : ViewChoice.values()) {
      views.put(each, button(each, chosen));
    }
    second = Layouts.wide(Layouts.columns(parent, 4));
    Layouts.word(second, desk.look(), "Thickness");
    depth = new FigureField(second, desk, this::depthTyped).hint("type it").brief();
    Layouts.word(second, desk.look(), "The part is");
    turn = new Combo(second, SWT.DROP_DOWN | SWT.READ_ONLY);
    turn.setFont(desk.look().text());
    turn.setItems(Arrays.stream(Turn.values()).map(Turn::words).toArray(String[]::new));
    turn.addListener(SWT.Selection, event -> turned(Turn.values()[turn.getSelectionIndex()]));
    GridData wide = new GridData(SWT.FILL, SWT.CENTER, true, false);
    wide.widthHint = 40;
    turn.setLayoutData(wide);
    Form.unwheeled(turn);
  }

  private Button button(ViewChoice each, Consumer<ViewChoice> chosen) {
    Button button = new Button(row, SWT.RADIO);
    button.setFont(desk.look().text());
    button.setForeground(desk.look().ink());
    button.setText(each.words());
    button.addListener(
        SWT.Selection,
        event -> {
          if (button.getSelection()) {
            chosen.accept(each);
          }
        });
    button.setLayoutData(new GridData(SWT.LEFT, SWT.CENTER, false, false));
    return button;
  }

  private void depthTyped(Optional<Length> length) {
    OptionalDouble mm =
        length.filter(Length::isPositive).isPresent()
            ? OptionalDouble.of(length.get().millimetres())
            : OptionalDouble.empty();
    over("thickness typed", "thickness", over().deep(mm));
  }

  private void turned(Turn wanted) {
    over("turn chosen", "turn", over().turned(wanted));
  }

  private Over over() {
    return bench.sketch().hole().practice().over();
  }

  private void over(String words, String key, Over after) {
    bench.apply(
        new Change<>(
            words,
            key,
            sketch -> sketch.with(sketch.hole().with(sketch.hole().practice().with(after)))));
  }

  /** Shows which views there are and which is shown. */
  void show(ViewChoice now, Predicate<ViewChoice> possible) {
    boolean several = false;
    for (ViewChoice each : ViewChoice.values()) {
      boolean can = possible.test(each);
      several |= can && each != ViewChoice.SEAT;
      Layouts.present(views.get(each), can);
      views.get(each).setSelection(each == now);
    }
    Layouts.present(row, several);
    Layouts.present(second, several && now == ViewChoice.OTHER_FACE);
    Over over = over();
    depth.show(
        over.depthMm().isPresent()
            ? Optional.of(Length.ofMillimetres(over.depthMm().getAsDouble()))
            : Optional.empty());
    turn.select(over.turn().ordinal());
  }

  void unitChanged() {
    depth.unitChanged();
  }

  /** Returns the field of the thickness, for tests. */
  FigureField depth() {
    return depth;
  }

  Button button(ViewChoice view) {
    return views.get(view);
  }
}
