package org.fettlebench.desktop.threads.internal.identify;

import java.util.Arrays;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.threads.identify.UsualUncertainty;

/** Three figures, each with its uncertainty, and which of the two was measured. */
final class ReadingFields {
  private static final String PARTED = "\u0001";

  private final Desk desk;
  private final Runnable changed;
  private final Composite grid;
  private final Text[] texts = new Text[7];
  private final Button screw;
  private final Button nut;
  private boolean setting;

  ReadingFields(Composite parent, Desk desk, Runnable changed) {
    this.desk = desk;
    this.changed = changed;
    grid = Layouts.columns(parent, 4);
    ((GridLayout) grid.getLayout()).verticalSpacing = Layouts.GAP;
    word("");
    Composite sexes = Layouts.columns(grid, 2);
    ((GridData) span(sexes)).horizontalSpan = 3;
    screw = sex(sexes, "&screw");
    nut = sex(sexes, "n&ut or hole");
    screw.setSelection(true);
    pair("diameter", 0, "4.68 mm", "0.02 mm");
    pair("pitch or tpi", 2, "0.81 mm, 31 tpi", "1 %");
    pair("hexagon", 4, "if there is one", "0.1 mm");
    word("wear");
    texts[6] = text("none", 14);
  }

  private Object span(Composite control) {
    control.setLayoutData(new GridData(SWT.LEFT, SWT.CENTER, false, false));
    return control.getLayoutData();
  }

  private Button sex(Composite parent, String name) {
    Button button = new Button(parent, SWT.RADIO);
    button.setText(name);
    button.setFont(desk.look().text());
    button.setForeground(desk.look().ink());
    button.setBackground(parent.getBackground());
    button.addListener(SWT.Selection, event -> tell());
    return button;
  }

  private void pair(String name, int at, String hint, String usual) {
    word(name);
    texts[at] = text(hint, 14);
    word("\u00b1");
    texts[at + 1] = text(usual, 12);
    texts[at + 1].setToolTipText(
        "Standard uncertainty; "
            + usual
            + " if nothing is typed ("
            + UsualUncertainty.SOURCE.standing().words()
            + ")");
  }

  private void word(String name) {
    Label label = Layouts.word(grid, desk.look(), name);
    label.setForeground(desk.look().faint());
  }

  private Text text(String hint, int characters) {
    Text text = new Text(grid, SWT.SINGLE | SWT.BORDER);
    text.setFont(desk.look().text());
    text.setBackground(desk.look().sheet());
    text.setForeground(desk.look().ink());
    text.setMessage(hint);
    Layouts.characters(text, characters);
    text.addListener(SWT.Modify, event -> tell());
    return text;
  }

  private void tell() {
    if (!setting) {
      changed.run();
    }
  }

  Readings readings() {
    List<String> fields =
        new java.util.ArrayList<>(Arrays.stream(texts).map(Text::getText).toList());
    fields.add(nut.getSelection() ? "nut" : "screw");
    return Readings.of(fields);
  }

  void put(Readings readings) {
    setting = true;
    List<String> fields = readings.fields();
    for (int i = 0; i < texts.length; i++) {
      texts[i].setText(fields.get(i));
    }
    nut.setSelection(readings.nut());
    screw.setSelection(!readings.nut());
    setting = false;
    changed.run();
  }

  /** Returns the readings as one text to be remembered. */
  static String kept(Readings readings) {
    return String.join(PARTED, readings.fields());
  }

  static Readings again(String kept) {
    return Readings.of(List.of(kept.split(PARTED, -1)));
  }

  void focus() {
    texts[0].setFocus();
    texts[0].selectAll();
  }
}
