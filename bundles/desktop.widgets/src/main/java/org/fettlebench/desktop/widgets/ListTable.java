package org.fettlebench.desktop.widgets;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.fettlebench.desktop.Desk;

/** The SWT side of a long list: heads, widths, cells, keys. */
final class ListTable<T> {
  private final Table table;
  private final Desk desk;
  private final String where;
  private final List<Column<T>> columns;
  private final ListWorker<T> worker;
  private final Map<VerdictMark, Image> pictures = new EnumMap<>(VerdictMark.class);
  private Optional<ListModel<T>> model = Optional.empty();
  private Consumer<String> typed = text -> {};
  private Runnable copied = () -> {};
  private final Map<TableColumn, Set<Integer>> placed = new HashMap<>();

  ListTable(Table table, Desk desk, String where, List<Column<T>> columns, ListWorker<T> worker) {
    this.table = table;
    this.desk = desk;
    this.where = where;
    this.columns = columns;
    this.worker = worker;
    table.setHeaderVisible(true);
    table.setLinesVisible(false);
    columns.forEach(this::addColumn);
    table.addListener(SWT.SetData, this::fill);
    table.addListener(SWT.KeyDown, this::key);
    table.addListener(SWT.Resize, event -> place());
    table.addListener(SWT.MouseMove, new CutCells<>(table, columns, this::model)::tell);
    table.addDisposeListener(event -> disposePictures());
    dress();
  }

  void whenTyped(Consumer<String> listener) {
    typed = listener;
  }

  void whenCopied(Runnable listener) {
    copied = listener;
  }

  /** Returns the model whose rows the table holds now. */
  Optional<ListModel<T>> model() {
    return model;
  }

  private void addColumn(Column<T> column) {
    TableColumn head = new TableColumn(table, column.figures() ? SWT.RIGHT : SWT.LEFT);
    head.setMoveable(false);
    head.addListener(SWT.Selection, event -> sort(column.id(), descendsNext(head)));
    head.addListener(SWT.Resize, event -> rememberWidth(column, head));
  }

  private boolean descendsNext(TableColumn head) {
    return table.getSortColumn() == head && table.getSortDirection() == SWT.UP;
  }

  void sort(String columnId, boolean descending) {
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).id().equals(columnId)) {
        var order = columns.get(i).order();
        table.setSortColumn(table.getColumn(i));
        table.setSortDirection(descending ? SWT.DOWN : SWT.UP);
        worker.change(
            worker.model().total(), rows -> rows.sorted(descending ? order.reversed() : order));
      }
    }
  }

  /** Puts on fonts, colours, heads and widths as the desk has them now. */
  void dress() {
    table.setFont(desk.look().text());
    table.setBackground(desk.look().sheet());
    table.setForeground(desk.look().ink());
    table.setHeaderBackground(desk.look().ground());
    table.setHeaderForeground(desk.look().ink());
    forgetPictures();
    for (int i = 0; i < columns.size(); i++) {
      table.getColumn(i).setText(columns.get(i).head().get());
    }
    place();
    table.clearAll();
  }

  /** Gives each column the width that a person chose, else its usual one and what is to spare. */
  private void place() {
    List<ColumnWidths.Wish> wishes = columns.stream().map(this::wish).toList();
    int[] widths = ColumnWidths.share(wishes, table.getClientArea().width);
    for (int i = 0; i < widths.length; i++) {
      placed.computeIfAbsent(table.getColumn(i), column -> new HashSet<>()).add(widths[i]);
      if (table.getColumn(i).getWidth() != widths[i]) {
        table.getColumn(i).setWidth(widths[i]);
      }
    }
  }

  private ColumnWidths.Wish wish(Column<T> column) {
    double one = characterWidth();
    String chosen = desk.remembered(where, column.id(), "");
    double least = chosen.isEmpty() ? column.characters() : Double.parseDouble(chosen);
    double most = chosen.isEmpty() ? Math.max(least, column.roomy()) : least;
    return new ColumnWidths.Wish((int) Math.round(least * one), (int) Math.round(most * one));
  }

  private double characterWidth() {
    GC gc = new GC(table);
    gc.setFont(desk.look().text());
    double width = gc.getFontMetrics().getAverageCharacterWidth();
    gc.dispose();
    return width;
  }

  /** Widths are kept in characters, so that they hold at every text size. */
  private void rememberWidth(Column<T> column, TableColumn head) {
    // Widths given here are told too, some only after the next was given; the last column is
    // drawn out to the edge by some window systems.
    boolean last = table.indexOf(head) == columns.size() - 1;
    if (!last
        && head.getWidth() > 0
        && !placed.getOrDefault(head, Set.of()).contains(head.getWidth())) {
      double characters = Math.round(head.getWidth() / characterWidth() * 10) / 10.0;
      desk.remember(where, column.id(), String.valueOf(characters));
    }
  }

  void show(int count, int[] selected) {
    int top = table.getTopIndex();
    model = Optional.of(worker.model());
    table.setRedraw(false);
    // Shrinking a filled virtual table takes seconds at 100,000 rows; emptying it does not.
    table.removeAll();
    table.setItemCount(count);
    if (selected.length > 0) {
      table.setSelection(selected);
    } else if (top < count) {
      table.setTopIndex(top);
    }
    table.setRedraw(true);
  }

  private void fill(Event event) {
    // While it is being emptied the table may ask for a row that it has not any more.
    if (!(event.index >= 0 && event.index < model.orElseThrow().size())) {
      return;
    }
    TableItem item = (TableItem) event.item;
    T row = model.orElseThrow().get(event.index);
    for (int i = 0; i < columns.size(); i++) {
      item.setText(i, columns.get(i).text().apply(row));
      int cell = i;
      columns.get(i).mark().apply(row).ifPresent(mark -> item.setImage(cell, picture(mark)));
    }
  }

  private Image picture(VerdictMark mark) {
    int size = (int) Math.round(13 * desk.look().scale());
    return pictures.computeIfAbsent(
        mark,
        m -> VerdictShapes.picture(table.getDisplay(), m, m.colour(desk.look()).getRGB(), size));
  }

  private void forgetPictures() {
    table.clearAll();
    disposePictures();
  }

  private void disposePictures() {
    pictures.values().forEach(Image::dispose);
    pictures.clear();
  }

  private void key(Event event) {
    boolean command = (event.stateMask & SWT.MOD1) != 0;
    if (command && event.keyCode == 'c') {
      copied.run();
    } else if (command && event.keyCode == 'a') {
      table.selectAll();
      table.notifyListeners(SWT.Selection, new Event());
    } else if ((event.stateMask & SWT.MODIFIER_MASK) == 0
        && event.keyCode == SWT.ARROW_UP
        && onFirstRow()) {
      typed.accept("");
    } else if (isLetter(event)) {
      typed.accept(String.valueOf(event.character));
      event.doit = false;
    }
  }

  private boolean onFirstRow() {
    return table.getSelectionIndex() <= 0;
  }

  private static boolean isLetter(Event event) {
    boolean plain = (event.stateMask & (SWT.MOD1 | SWT.ALT)) == 0;
    return plain && event.character > ' ' && event.character != SWT.DEL;
  }
}
