package org.fettlebench.desktop.stock.internal;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.desktop.Look;
import org.fettlebench.desktop.widgets.Layouts;

/** Makes fields with their names beside them, all alike. */
final class Fields {
  private final Composite parent;
  private final Look look;
  private final Runnable enter;
  private final Runnable escape;

  /**
   * Makes fields in a row that wraps.
   *
   * @param enter what Enter in any field does
   * @param escape what Esc in any field does
   */
  Fields(Composite parent, Look look, Runnable enter, Runnable escape) {
    this.parent = parent;
    this.look = look;
    this.enter = enter;
    this.escape = escape;
  }

  /** Returns a cell that keeps a field together with its name. */
  private Composite cell(String name) {
    Composite cell = Layouts.columns(parent, 2);
    cell.setLayoutData(null);
    Label label = Layouts.word(cell, look, name);
    label.setForeground(look.faint());
    return cell;
  }

  Text text(String name, int characters, String hint) {
    Text text = dress(new Text(cell(name), SWT.SINGLE | SWT.BORDER));
    text.setMessage(hint);
    return width(text, characters);
  }

  Combo combo(String name, int characters) {
    return width(dress(new Combo(cell(name), SWT.DROP_DOWN)), characters);
  }

  Button check(String name) {
    Button check = new Button(parent, SWT.CHECK);
    check.setText(name);
    check.setFont(look.text());
    check.setForeground(look.ink());
    check.setBackground(parent.getBackground());
    check.addListener(SWT.Traverse, this::traverse);
    return check;
  }

  Button button(String text, Runnable pressed) {
    Button button = Layouts.button(parent, look, text, pressed);
    button.setLayoutData(null);
    return button;
  }

  private <C extends Control> C dress(C control) {
    control.setFont(look.text());
    control.setBackground(look.sheet());
    control.setForeground(look.ink());
    control.addListener(SWT.DefaultSelection, event -> enter.run());
    control.addListener(SWT.Traverse, this::traverse);
    return control;
  }

  private static <C extends Control> C width(C control, int characters) {
    Layouts.characters(control, characters);
    return control;
  }

  private void traverse(org.eclipse.swt.widgets.Event event) {
    if (event.detail == SWT.TRAVERSE_ESCAPE) {
      event.doit = false;
      escape.run();
    }
  }
}
