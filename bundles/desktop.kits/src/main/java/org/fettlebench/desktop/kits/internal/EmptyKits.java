package org.fettlebench.desktop.kits.internal;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.Look;
import org.fettlebench.desktop.widgets.Layouts;

/** What the page says while there is no kit: what to do first. */
final class EmptyKits extends Composite {
  private final Composite demo;

  EmptyKits(Composite parent, Desk desk, Runnable opened, Runnable lookRound) {
    super(parent, SWT.NONE);
    Look look = desk.look();
    setBackground(parent.getBackground());
    setLayout(Layouts.grid(1, 0));
    Layouts.answer(this, look, "Can this kit be built?");
    Layouts.text(
        this,
        look,
        "No kit is on the shelf yet. A kit is a text file that lists its joints: for each the"
            + " fastener, the holes, and, where a head must sit on a small flat, the flat as you"
            + " measured it. The page on file formats shows one to copy.");
    Layouts.button(this, look, "&Open kit file \u2026", opened);
    gap();
    demo = Layouts.wide(Layouts.columns(this, 1));
    Layouts.text(
        demo,
        look,
        "Or try the suite on an invented club first: a small bench pump of 28 joints, some of"
            + " which foul, and a stock with gaps. It is put beside whatever stock there is.");
    Layouts.button(demo, look, "&Look round the demo club", lookRound);
  }

  private void gap() {
    Composite gap = new Composite(this, SWT.NO_FOCUS);
    gap.setBackground(getBackground());
    GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
    data.heightHint = Layouts.MARGIN;
    gap.setLayoutData(data);
  }

  /** Offers the demo only where there is one. */
  void offerDemo(boolean there) {
    ((GridData) demo.getLayoutData()).exclude = !there;
    demo.setVisible(there);
    layout();
  }
}
