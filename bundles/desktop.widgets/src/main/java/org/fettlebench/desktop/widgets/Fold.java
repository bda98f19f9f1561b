package org.fettlebench.desktop.widgets;

import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Look;

/** Makes a heading open and fold what stands under it, by mouse and by keyboard. */
final class Fold {
  private final Button button;
  private final Consumer<Boolean> changed;
  private boolean open;

  Fold(Label heading, Look look, Composite body, boolean open, Consumer<Boolean> changed) {
    this.changed = changed;
    this.open = open;
    Composite row = Layouts.wide(Layouts.columns(heading.getParent(), 2));
    row.moveAbove(heading);
    heading.setParent(row);
    button = Layouts.button(row, look, "", this::toggle);
    button.setFont(look.small());
    heading.addListener(SWT.MouseUp, event -> toggle());
    heading.setCursor(heading.getDisplay().getSystemCursor(SWT.CURSOR_HAND));
    show();
  }

  private void toggle() {
    open = !open;
    show();
  }

  private void show() {
    button.setText(open ? "Less" : "More");
    changed.accept(open);
  }
}
