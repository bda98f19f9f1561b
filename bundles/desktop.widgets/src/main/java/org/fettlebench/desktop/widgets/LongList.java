package org.fettlebench.desktop.widgets;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.fettlebench.desktop.Desk;

/**
 * A list that stays quick at 100,000 rows: filtered by typing, sorted by its heads, copied with
 * them, and never losing what was selected. It is the control to lay out; give it rows with {@link
 * #items}.
 *
 * @param <T> what a row stands for
 */
public final class LongList<T> extends Composite {
  private final Desk desk;
  private final List<Column<T>> columns;
  private final StackLayout stack = new StackLayout();
  private final Table table;
  private final Label empty;
  private final ListWorker<T> worker;
  private final ListTable<T> rows;
  private Function<? super T, ?> key = Function.identity();
  private Consumer<List<T>> selected = items -> {};
  private Consumer<T> opened = item -> {};
  private BiConsumer<Integer, Integer> counted = (shown, total) -> {};
  private BooleanSupplier whileEmpty = () -> false;
  private String whenEmpty = "";
  private String filter = "";
  private boolean leaving;

  /**
   * Makes an empty list.
   *
   * @param pageId page whose remembered texts keep the column widths
   * @param listId name of the list on the page, that never changes
   * @param columns from left to right; the first is what a row is called
   */
  public LongList(
      Composite parent, Desk desk, String pageId, String listId, List<Column<T>> columns) {
    super(parent, SWT.NONE);
    this.desk = desk;
    this.columns = List.copyOf(columns);
    setLayout(stack);
    setBackground(desk.look().sheet());
    table = new Table(this, SWT.VIRTUAL | SWT.FULL_SELECTION | SWT.MULTI | SWT.BORDER);
    empty = Layouts.label(Layouts.padded(this, desk.look().sheet()), desk.look().text(), "");
    empty.setForeground(desk.look().faint());
    worker = new ListWorker<>(this, ListModel.of(List.of(), this::words), this::adopt);
    rows = new ListTable<>(table, desk, pageId + "." + listId, this.columns, worker);
    table.addListener(SWT.Selection, event -> tellSelection());
    // A table that is taken apart tells of one last change of its selection.
    addListener(SWT.Dispose, event -> selected = items -> {});
    table.addDisposeListener(event -> leaving = true);
    table.addListener(SWT.DefaultSelection, event -> selection().stream().limit(1).forEach(opened));
    rows.whenCopied(this::copy);
    stack.topControl = empty.getParent();
    desk.onLookChange(() -> whileStanding(rows::dress));
  }

  private void tellSelection() {
    selected.accept(selection());
  }

  private void whileStanding(Runnable change) {
    if (!isDisposed()) {
      change.run();
    }
  }

  /** Says what stands in place of an empty list: what to do first. */
  public LongList<T> whenEmpty(String sentence) {
    whenEmpty = sentence;
    sayWhyEmpty();
    return this;
  }

  /** Tells by what an item is known again after a refresh; by default by equality. */
  public LongList<T> keyedBy(Function<? super T, ?> newKey) {
    key = newKey;
    return this;
  }

  /** Is told each time the selection changes, also by a refresh. */
  public LongList<T> onSelect(Consumer<List<T>> listener) {
    selected = listener;
    return this;
  }

  /** Is told when a row is opened by Enter or a double click. */
  public LongList<T> onOpen(Consumer<T> listener) {
    opened = listener;
    return this;
  }

  /** Is told how many rows are shown, and of how many, whenever that may have changed. */
  public LongList<T> onCount(BiConsumer<Integer, Integer> listener) {
    counted = counted.andThen(listener);
    return this;
  }

  /** Sets what takes the keyboard while the list is empty. */
  LongList<T> whileEmpty(BooleanSupplier focus) {
    whileEmpty = focus;
    return this;
  }

  /** Is told when a letter is typed into the list, or Up pressed on its first row. */
  LongList<T> onTyped(Consumer<String> listener) {
    rows.whenTyped(listener);
    return this;
  }

  /** Sorts by a column, as a click on its head would. */
  public LongList<T> sortBy(String columnId, boolean descending) {
    rows.sort(columnId, descending);
    return this;
  }

  /** Puts the rows in the list, keeping filter, order and selection. */
  public void items(List<T> items) {
    List<T> copy = List.copyOf(items);
    worker.change(copy.size(), model -> model.items(copy));
  }

  /** Shows only the rows with all words of {@code typed} somewhere in them. */
  public void filter(String typed) {
    filter = typed.strip();
    worker.change(worker.model().total(), model -> model.filtered(typed));
  }

  /** Writes all shown rows anew, after something in the items changed. */
  public void refresh() {
    worker.change(
        worker.model().total(), model -> ListModel.of(model.all(), this::words).like(model));
  }

  private String words(T item) {
    return columns.stream().map(c -> c.text().apply(item)).collect(Collectors.joining("\n"));
  }

  private void adopt(ListModel<T> model) {
    Set<Object> before = selection().stream().map(key).collect(Collectors.toSet());
    int[] again = before.isEmpty() ? new int[0] : rowsOf(model, before);
    rows.show(model.size(), again);
    stack.topControl = model.size() > 0 ? table : empty.getParent();
    sayWhyEmpty();
    layout();
    counted.accept(model.size(), model.total());
    if (again.length != before.size()) {
      tellSelection();
    }
  }

  private int[] rowsOf(ListModel<T> model, Set<Object> keys) {
    return java.util.stream.IntStream.range(0, model.size())
        .filter(row -> keys.contains(key.apply(model.get(row))))
        .toArray();
  }

  private void sayWhyEmpty() {
    boolean filtered = worker.model().total() > 0;
    empty.setText(filtered ? "Nothing fits \u201c" + filter + "\u201d. Esc shows all." : whenEmpty);
    empty.getParent().layout();
  }

  /** Returns the selected items from the top down. */
  public List<T> selection() {
    List<T> items = new ArrayList<>();
    for (int row : table.getSelectionIndices()) {
      rows.model().ifPresent(model -> items.add(model.get(row)));
    }
    return items;
  }

  /** Selects and uncovers the item with a key, if it is shown, and tells the listener. */
  public boolean select(Object wantedKey) {
    var row = worker.model().rowOf(item -> key.apply(item).equals(wantedKey));
    row.ifPresent(this::selectRow);
    return row.isPresent();
  }

  /** Selects and uncovers a shown row, counted from 0, and tells the listener. */
  public void selectRow(int row) {
    table.setSelection(row);
    tellSelection();
  }

  /** Copies the selected rows, or all shown when none is, with the heads, tab between cells. */
  public void copy() {
    List<T> chosen = selection().isEmpty() ? worker.model().shown() : selection();
    Copying.text(getDisplay(), asText(chosen));
    desk.say(Figures.count(chosen.size(), "row", "rows") + " copied, with the heads.");
  }

  private String asText(List<T> items) {
    String heads = columns.stream().map(c -> c.head().get()).collect(Collectors.joining("\t"));
    return items.stream()
        .map(item -> words(item).replace('\n', '\t'))
        .collect(Collectors.joining("\n", heads + "\n", "\n"));
  }

  /** Prints the shown rows with their heads, after asking for a printer. */
  public void print(String title) {
    List<List<String>> cells =
        worker.model().shown().stream()
            .map(item -> columns.stream().map(c -> c.text().apply(item)).toList())
            .toList();
    List<String> heads = columns.stream().map(c -> c.head().get()).toList();
    new ListPrinter(title, heads, cells, columns.stream().map(Column::figures).toList())
        .print(desk);
  }

  /** Returns the model now shown. */
  public ListModel<T> model() {
    return worker.model();
  }

  /** Returns the columns from left to right. */
  public List<Column<T>> columns() {
    return columns;
  }

  /** Returns the table itself, for what only it can do. */
  public Table table() {
    return table;
  }

  /** Puts the keyboard on the first selected row; on the filter field while there is no row. */
  @Override
  public boolean setFocus() {
    // A window that goes down offers the keyboard to lists whose table is gone already.
    if (leaving) {
      return false;
    }
    if (table.getItemCount() == 0) {
      return whileEmpty.getAsBoolean();
    }
    if (table.getSelectionIndex() < 0) {
      selectRow(0);
    }
    return table.setFocus();
  }
}
