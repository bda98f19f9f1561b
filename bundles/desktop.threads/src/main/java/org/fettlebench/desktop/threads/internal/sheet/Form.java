package org.fettlebench.desktop.threads.internal.sheet;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.LengthField;

/** Names at the left, fields at the right, each telling when it is changed. */
public final class Form {
  private static final int NAME = 92;

  private final Desk desk;
  private final Runnable changed;
  private final Composite grid;

  /** Makes an empty form as wide as there is room. */
  public Form(Composite parent, Desk desk, Runnable changed) {
    this.desk = desk;
    this.changed = changed;
    grid = Layouts.wide(Layouts.columns(parent, 2));
  }

  private void name(String name) {
    Label label = Layouts.word(grid, desk.look(), name);
    label.setForeground(desk.look().faint());
    ((GridData) label.getLayoutData()).widthHint = (int) (NAME * desk.look().scale());
  }

  /** Adds a list to choose from. */
  public Combo choice(String name) {
    return combo(name, SWT.READ_ONLY);
  }

  /** Adds a list to choose from or to type into. */
  public Combo typed(String name) {
    return combo(name, SWT.NONE);
  }

  private Combo combo(String name, int style) {
    name(name);
    Combo combo = new Combo(grid, SWT.DROP_DOWN | style);
    combo.setFont(desk.look().text());
    combo.setForeground(desk.look().ink());
    GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
    // Long names must not make the form wider than the room it gets.
    data.widthHint = 60;
    combo.setLayoutData(data);
    combo.addListener(style == SWT.READ_ONLY ? SWT.Selection : SWT.Modify, e -> changed.run());
    return combo;
  }

  /** Adds a field for a length. */
  public LengthField length(String name, String hint) {
    name(name);
    LengthField field = new LengthField(grid, desk).hint(hint).onChange(length -> changed.run());
    field.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    return field;
  }

  /** Adds a field for a few words or a figure. */
  public Text text(String name, String hint) {
    name(name);
    Text text = new Text(grid, SWT.SINGLE | SWT.BORDER);
    text.setFont(desk.look().text());
    text.setBackground(desk.look().sheet());
    text.setForeground(desk.look().ink());
    text.setMessage(hint);
    text.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    text.addListener(SWT.Modify, event -> changed.run());
    return text;
  }

  /** Adds a switch. */
  public Button tick(String name) {
    name("");
    Button button = new Button(grid, SWT.CHECK);
    button.setText(name);
    button.setFont(desk.look().text());
    button.setForeground(desk.look().ink());
    button.setBackground(grid.getBackground());
    button.addListener(SWT.Selection, event -> changed.run());
    return button;
  }

  /** Puts names into a list, keeping what is chosen where it is still there, else the first. */
  public static void offer(Combo combo, List<String> names, String wanted) {
    String[] items = names.toArray(String[]::new);
    if (!java.util.Arrays.equals(items, combo.getItems())) {
      combo.setItems(items);
    }
    int at = Math.max(0, names.indexOf(wanted));
    if (!names.isEmpty() && combo.getSelectionIndex() != at) {
      combo.select(at);
    }
  }
}
