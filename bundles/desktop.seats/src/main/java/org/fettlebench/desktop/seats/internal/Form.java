package org.fettlebench.desktop.seats.internal;

import java.util.List;
import java.util.function.IntConsumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Layouts;

/** Lines of a form: a name at the left, a field beside it. */
final class Form {
  private static final int NAME_PIXELS = 92;

  private final Desk desk;
  private final Composite body;

  /** Makes a form in a composite, which gets two columns. */
  Form(Composite body, Desk desk) {
    this.desk = desk;
    this.body = body;
    GridLayout grid = Layouts.grid(2, 0);
    grid.verticalSpacing = 4;
    body.setLayout(grid);
  }

  Composite body() {
    return body;
  }

  /** Puts the name of the field that is made next. */
  Form name(String words) {
    Label name = Layouts.word(body, desk.look(), words);
    name.setForeground(desk.look().faint());
    GridData data = new GridData(SWT.FILL, SWT.CENTER, false, false);
    data.widthHint = (int) (NAME_PIXELS * desk.look().scale());
    name.setLayoutData(data);
    return this;
  }

  FigureField figure(
      String name,
      java.util.function.Consumer<java.util.Optional<org.fettlebench.measure.Length>> typed) {
    name(name);
    return new FigureField(body, desk, typed);
  }

  /** Makes a list to choose from. */
  Combo choice(String name, List<String> items, IntConsumer chosen) {
    name(name);
    Combo combo = new Combo(body, SWT.DROP_DOWN | SWT.READ_ONLY);
    combo.setFont(desk.look().text());
    combo.setItems(items.toArray(String[]::new));
    combo.addListener(SWT.Selection, event -> chosen.accept(combo.getSelectionIndex()));
    GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
    data.widthHint = 40;
    combo.setLayoutData(data);
    return combo;
  }

  /** Makes a remark across both columns. */
  Label remark(String words) {
    Label remark = Layouts.remark(body, desk.look(), words);
    ((GridData) remark.getLayoutData()).horizontalSpan = 2;
    return remark;
  }

  /** Makes a box to tick across both columns. */
  Button tick(String words, Runnable changed) {
    Button tick = new Button(body, SWT.CHECK);
    tick.setFont(desk.look().text());
    tick.setForeground(desk.look().ink());
    tick.setText(words);
    tick.addListener(SWT.Selection, event -> changed.run());
    across(tick);
    return tick;
  }

  static <C extends Control> C across(C control) {
    GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
    data.horizontalSpan = 2;
    control.setLayoutData(data);
    return control;
  }

  static void present(Control control, boolean there) {
    if (control.getLayoutData() instanceof GridData data && data.exclude == there) {
      data.exclude = !there;
      control.setVisible(there);
      control.requestLayout();
    }
  }

  /** Sets a remark's words; it takes no room while there are none. */
  static void say(Label label, String words) {
    String escaped = Layouts.escaped(words);
    if (!label.getText().equals(escaped)) {
      label.setText(escaped);
      label.requestLayout();
    }
    present(label, !words.isBlank());
  }
}
