package org.fettlebench.desktop.kits.internal;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;

/** Lets the first and the last shown column of a table share the width that the middle leaves. */
final class FillWidth {
  private static final double FIRST_SHARE = 0.52;
  private static final int LEAST = 160;

  private FillWidth() {}

  /** Fills the table's width whenever it changes; columns are counted from 0. */
  static void of(Table table, int first, int middle, int last) {
    table.addListener(
        SWT.Resize,
        event -> {
          int free = table.getClientArea().width - table.getColumn(middle).getWidth();
          if (free >= LEAST) {
            set(table.getColumn(first), (int) (free * FIRST_SHARE));
            set(table.getColumn(last), free - (int) (free * FIRST_SHARE));
          }
        });
  }

  private static void set(TableColumn column, int width) {
    if (column.getWidth() != width) {
      column.setWidth(width);
    }
  }
}
