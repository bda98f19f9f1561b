package org.fettlebench.desktop.internal;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Look;
import org.fettlebench.desktop.widgets.Layouts;

/** What went wrong and what to do about it, above the page, until a person has read it. */
final class ComplaintStrip extends Composite {
  private final Label words;
  private final Button close;

  ComplaintStrip(Composite parent, Look look) {
    super(parent, SWT.NONE);
    setBackground(look.sheet());
    var grid = Layouts.grid(3, 0);
    grid.marginRight = Layouts.GAP;
    setLayout(grid);
    Composite bar = new Composite(this, SWT.NO_FOCUS);
    bar.setBackground(look.bad());
    GridData upright = new GridData(SWT.FILL, SWT.FILL, false, true);
    upright.widthHint = 6;
    upright.heightHint = 10;
    bar.setLayoutData(upright);
    words = Layouts.text(this, look, "");
    ((GridData) words.getLayoutData()).verticalAlignment = SWT.CENTER;
    close = Layouts.button(this, look, "&Close", this::hide);
    close.setToolTipText("Take this message away (Esc)");
    GridData data = new GridData(SWT.FILL, SWT.BEGINNING, true, false);
    data.exclude = true;
    setLayoutData(data);
    setVisible(false);
  }

  /** Shows a sentence in place of an older one. */
  void show(String sentence) {
    words.setText(Layouts.escaped(sentence));
    place(true);
  }

  /** Takes the sentence away; returns whether there was one. */
  boolean hide() {
    boolean shown = isVisible();
    place(false);
    return shown;
  }

  /** Returns the sentence shown, empty when none is. */
  String shown() {
    return getVisible() ? words.getText().replace("&&", "&") : "";
  }

  private void place(boolean visible) {
    ((GridData) getLayoutData()).exclude = !visible;
    setVisible(visible);
    getParent().layout(true, true);
  }
}
