package org.fettlebench.desktop.stock.internal;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Composite;
import org.fettlebench.desktop.widgets.Layouts;

/** Things beside each other that go on in the next row when there is no more room. */
final class WrapRow {
  private WrapRow() {}

  /** Returns a row in a grid; its children need no layout data. */
  static Composite in(Composite parent) {
    Composite row = new Composite(parent, SWT.NONE);
    RowLayout layout = new RowLayout(SWT.HORIZONTAL);
    layout.wrap = true;
    layout.center = true;
    layout.marginLeft = layout.marginRight = layout.marginTop = layout.marginBottom = 0;
    layout.spacing = Layouts.GAP;
    row.setLayout(layout);
    row.setBackground(parent.getBackground());
    GridData wide = new GridData(SWT.FILL, SWT.CENTER, true, false);
    // A small hint makes it wrap to the room it gets instead of asking for one long row.
    wide.widthHint = 200;
    row.setLayoutData(wide);
    return row;
  }
}
