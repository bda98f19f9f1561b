package org.fettlebench.desktop.widgets;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/** Says in full what the cell under the pointer has no room for. */
final class CutCells<T> {
  private static final int PADDING = 8;

  private final Table table;
  private final List<Column<T>> columns;
  private final Supplier<Optional<ListModel<T>>> model;

  CutCells(Table table, List<Column<T>> columns, Supplier<Optional<ListModel<T>>> model) {
    this.table = table;
    this.columns = columns;
    this.model = model;
  }

  void tell(Event event) {
    Point at = new Point(event.x, event.y);
    String words = Optional.ofNullable(table.getItem(at)).map(item -> cut(item, at)).orElse("");
    if (!words.equals(Optional.ofNullable(table.getToolTipText()).orElse(""))) {
      table.setToolTipText(words);
    }
  }

  private String cut(TableItem item, Point at) {
    int row = table.indexOf(item);
    for (int i = 0; i < columns.size(); i++) {
      if (item.getBounds(i).contains(at)) {
        String words =
            model
                .get()
                .filter(m -> row < m.size())
                .map(m -> m.get(row))
                .map(columns.get(i).text())
                .orElse("");
        return tooWide(words, item.getTextBounds(i).width) ? words : "";
      }
    }
    return "";
  }

  private boolean tooWide(String words, int width) {
    GC gc = new GC(table);
    gc.setFont(table.getFont());
    int needed = gc.textExtent(words).x;
    gc.dispose();
    return needed > width - PADDING;
  }
}
