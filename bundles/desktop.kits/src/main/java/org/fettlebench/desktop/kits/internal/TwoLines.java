package org.fettlebench.desktop.kits.internal;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.Look;
import org.fettlebench.desktop.widgets.ListModel;
import org.fettlebench.desktop.widgets.LongList;
import org.fettlebench.desktop.widgets.VerdictMark;
import org.fettlebench.desktop.widgets.VerdictShapes;

/**
 * Paints cells of a long list in two lines, so that a row says in little width what else would need
 * many columns. The cell's own text stays what is sorted, searched and copied.
 */
final class TwoLines<T> {
  private static final int INSET = 4;

  private final LongList<T> list;
  private final Desk desk;
  private final int column;
  private final Function<T, Cell> cell;

  /**
   * What a cell shows.
   *
   * @param mark shape before the first line
   * @param first what it is
   * @param aside lesser words behind it
   * @param secondMark shape before the second line
   * @param second smaller words below: the fullest first, then shorter ones for less room
   */
  record Cell(
      Optional<VerdictMark> mark,
      String first,
      String aside,
      Optional<VerdictMark> secondMark,
      List<String> second) {}

  private TwoLines(LongList<T> list, Desk desk, int column, Function<T, Cell> cell) {
    this.list = list;
    this.desk = desk;
    this.column = column;
    this.cell = cell;
  }

  /** Paints a column of the list so, counted from 0. */
  static <T> void paint(LongList<T> list, Desk desk, int column, Function<T, Cell> cell) {
    TwoLines<T> made = new TwoLines<>(list, desk, column, cell);
    Table table = list.table();
    table.addListener(SWT.MeasureItem, made::measure);
    table.addListener(SWT.EraseItem, made::erase);
    table.addListener(SWT.PaintItem, made::paint);
  }

  private void measure(Event event) {
    event.gc.setFont(desk.look().strong());
    int first = event.gc.getFontMetrics().getHeight();
    event.gc.setFont(desk.look().small());
    event.height = Math.max(event.height, first + event.gc.getFontMetrics().getHeight() + INSET);
  }

  private void erase(Event event) {
    if (event.index == column) {
      event.detail &= ~SWT.FOREGROUND;
    }
  }

  private void paint(Event event) {
    ListModel<T> model = list.model();
    int row = list.table().indexOf((org.eclipse.swt.widgets.TableItem) event.item);
    if (event.index == column && row >= 0 && row < model.size()) {
      boolean selected = (event.detail & SWT.SELECTED) != 0;
      paint(event, cell.apply(model.get(row)), selected);
    }
  }

  private void paint(Event event, Cell shown, boolean selected) {
    GC gc = event.gc;
    Look look = desk.look();
    Color chosen = gc.getDevice().getSystemColor(SWT.COLOR_LIST_SELECTION_TEXT);
    Color ink = selected ? chosen : look.ink();
    Color faint = selected ? chosen : look.faint();
    int right = event.x + list.table().getColumn(column).getWidth() - 2 * INSET;
    gc.setFont(look.strong());
    int firstHeight = gc.getFontMetrics().getHeight();
    gc.setFont(look.small());
    int both =
        firstHeight + (shown.second().get(0).isEmpty() ? 0 : gc.getFontMetrics().getHeight());
    int top = event.y + (event.height - both) / 2;
    int left = event.x + INSET;
    int x = left + mark(gc, shown.mark(), left, top, firstHeight, selected);
    gc.setFont(look.strong());
    x += words(gc, ink, shown.first(), x, top, right);
    gc.setFont(look.small());
    words(gc, faint, shown.aside(), x + INSET, top + 1, right);
    int below = top + firstHeight;
    int x2 = left + mark(gc, shown.secondMark(), left, below, both - firstHeight, selected);
    gc.setFont(look.small());
    words(gc, faint, roomy(gc, shown.second(), right - x2), x2, below, right);
  }

  private int mark(
      GC gc, Optional<VerdictMark> shape, int x, int top, int height, boolean selected) {
    if (shape.isEmpty()) {
      return 0;
    }
    int size = Math.min(height - 2, (int) Math.round(12 * desk.look().scale()));
    Color chosen = gc.getDevice().getSystemColor(SWT.COLOR_LIST_SELECTION_TEXT);
    Color under = gc.getDevice().getSystemColor(SWT.COLOR_LIST_SELECTION);
    gc.setForeground(selected ? chosen : shape.get().colour(desk.look()));
    gc.setBackground(selected ? under : desk.look().sheet());
    VerdictShapes.paint(gc, shape.get(), x, top + (height - size) / 2, size);
    return size + INSET + 2;
  }

  /** Draws words, cut short where there is no room, and returns their width. */
  private static int words(GC gc, Color colour, String words, int x, int y, int right) {
    String shown = fitted(gc, words, right - x);
    gc.setForeground(colour);
    gc.drawText(shown, x, y, SWT.DRAW_TRANSPARENT);
    return gc.textExtent(shown).x;
  }

  /** Returns the first words that find room, else the last. */
  private static String roomy(GC gc, List<String> words, int width) {
    return words.stream()
        .filter(each -> gc.textExtent(each).x <= width)
        .findFirst()
        .orElse(words.get(words.size() - 1));
  }

  private static String fitted(GC gc, String words, int width) {
    if (gc.textExtent(words).x <= width) {
      return words;
    }
    for (int end = words.length() - 1; end > 0; end--) {
      String shorter = words.substring(0, end).stripTrailing() + "\u2026";
      if (gc.textExtent(shorter).x <= width) {
        return shorter;
      }
    }
    return "";
  }
}
