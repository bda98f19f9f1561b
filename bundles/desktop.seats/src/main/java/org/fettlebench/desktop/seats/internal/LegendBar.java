package org.fettlebench.desktop.seats.internal;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Layouts;

/** What the signs on the seat's drawing mean; its spokes may be switched off. */
final class LegendBar {
  private static final String SPOKES = "spokes";
  private static final String SIGNS =
      "Cross: wanted. Ring: best centre. Green: allowed. Chain: head\u2019s sweep.";

  private final Composite bar;
  private final Button spokes;
  private final Label signs;

  LegendBar(Composite parent, Desk desk, Runnable changed) {
    bar = Layouts.wide(Layouts.columns(parent, 2));
    spokes = new Button(bar, SWT.CHECK);
    spokes.setFont(desk.look().small());
    spokes.setForeground(desk.look().faint());
    spokes.setText("Spokes: how far out");
    spokes.setSelection(!desk.remembered(SeatPage.ID, SPOKES, "on").equals("off"));
    spokes.addListener(
        SWT.Selection,
        event -> {
          desk.remember(SeatPage.ID, SPOKES, spokes.getSelection() ? "on" : "off");
          changed.run();
        });
    spokes.setLayoutData(new GridData(SWT.LEFT, SWT.CENTER, false, false));
    signs = Layouts.remark(bar, desk.look(), SIGNS);
    signs.setToolTipText(SIGNS);
  }

  /** Shows the legend with the seat's own drawing only. */
  void show(boolean seat) {
    Layouts.present(bar, seat);
  }

  /** Returns whether the spokes are wanted. */
  boolean spokes() {
    return spokes.getSelection();
  }

  /** Returns the box that switches the spokes, for tests. */
  Button box() {
    return spokes;
  }
}
