package org.fettlebench.desktop.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Look;

/** A short usual caution with a bar at its side; "In full" opens what stands behind it. */
public final class CautionStrip extends Composite {
  private final Cautions caution;
  private final Label words;
  private final Button more;
  private boolean open;

  /** Makes the strip, as wide as there is room. */
  public CautionStrip(Composite parent, Look look, Cautions caution) {
    super(parent, SWT.NONE);
    this.caution = caution;
    setBackground(parent.getBackground());
    setLayout(Layouts.grid(4, 0));
    Layouts.wide(this);
    Composite bar = new Composite(this, SWT.NO_FOCUS);
    bar.setBackground(look.care());
    GridData upright = new GridData(SWT.FILL, SWT.FILL, false, true);
    upright.widthHint = 4;
    upright.heightHint = 10;
    bar.setLayoutData(upright);
    Label word = Layouts.word(this, look, "Caution");
    word.setFont(look.strong());
    words = Layouts.text(this, look, caution.brief());
    more = Layouts.button(this, look, "In full", this::toggle);
    more.setFont(look.small());
    ((GridData) words.getLayoutData()).verticalAlignment = SWT.CENTER;
  }

  private void toggle() {
    open = !open;
    words.setText(Layouts.escaped(open ? caution.brief() + " " + caution.full() : caution.brief()));
    more.setText(open ? "Short" : "In full");
    requestLayout();
    ScrollPane.around(this).ifPresent(ScrollPane::fit);
  }
}
