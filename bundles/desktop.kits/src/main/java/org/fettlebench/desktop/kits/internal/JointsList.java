package org.fettlebench.desktop.kits.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Column;
import org.fettlebench.desktop.widgets.FilterField;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.LongList;
import org.fettlebench.kits.KitReport;

/** The kit's joints, worst first, with what each lacks. */
final class JointsList extends Composite {
  private static final String VERDICT = "Verdict";

  /** What the order box offers: words, and the column they sort by. */
  private static final String[][] ORDERS = {
    {"Worst first", VERDICT},
    {"By part", "Part"},
    {"By joint", "Joint"},
    {"By fastener", "Fastener"},
    {"By supply", "Supply"},
  };

  private final Desk desk;
  private final LongList<JointRow> list;
  private final FilterField filter;
  private final Combo order;

  JointsList(Composite parent, Desk desk, Consumer<JointRow> chosen) {
    super(parent, SWT.NONE);
    this.desk = desk;
    setLayout(Layouts.grid(1, 0));
    setBackground(parent.getBackground());
    Composite above = Layouts.wide(Layouts.columns(this, 2));
    filter = Layouts.wide(new FilterField(above, desk, "Narrow: 2 BA, valve chest, fouls \u2026"));
    filter.setToolTipText("Ctrl+L, or type in the list");
    order = new Combo(above, SWT.READ_ONLY | SWT.DROP_DOWN);
    list = Layouts.fill(new LongList<>(this, desk, KitPage.ID, "joints", columns()));
    list.keyedBy(JointRow::name);
    list.onSelect(rows -> rows.stream().limit(1).forEach(chosen));
    filter.narrows(list);
    TwoLines.paint(list, desk, 0, JointsList::joint);
    TwoLines.paint(list, desk, 2, JointsList::verdict);
    FillWidth.of(list.table(), 0, 1, 2);
    list.table().addListener(SWT.MouseMove, this::hint);
    orders();
  }

  private List<Column<JointRow>> columns() {
    List<Column<JointRow>> columns = new ArrayList<>();
    columns.add(Column.<JointRow>words("Joint", 30, JointRow::name));
    columns.add(Column.<JointRow>lengths("Allowance", desk, JointRow::allowance).wide(15));
    columns.add(
        Column.<JointRow>words(VERDICT, 24, JointRow::word).orderedBy(JointRow.WORST_FIRST));
    // Columns without width are told in the second lines; they are sorted, searched and copied.
    columns.add(
        Column.<JointRow>words("Part", 0, JointRow::part)
            .orderedBy(Comparator.comparing(JointRow::part).thenComparing(JointRow.WORST_FIRST)));
    columns.add(
        Column.<JointRow>figures("Off", "", 0, row -> OptionalDouble.of(row.count())).wide(0));
    columns.add(Column.<JointRow>words("Fastener", 0, JointRow::fastener));
    columns.add(Column.<JointRow>words("Supply", 0, JointRow::supply));
    columns.add(Column.<JointRow>words("Lacks", 0, JointRow::lacks));
    return columns;
  }

  private static TwoLines.Cell joint(JointRow row) {
    return new TwoLines.Cell(
        Optional.empty(),
        row.name(),
        row.part(),
        Optional.empty(),
        List.of(row.count() + " off " + row.fastener()));
  }

  private static TwoLines.Cell verdict(JointRow row) {
    return new TwoLines.Cell(
        Optional.of(row.mark()),
        row.word(),
        "",
        Optional.of(row.supplyMark()),
        List.of(row.supplyInFull(), row.supplyInShort()));
  }

  private void orders() {
    order.setFont(desk.look().text());
    order.setToolTipText("Order of the list; a click on a column's head sorts by it");
    for (String[] each : ORDERS) {
      order.add(each[0]);
    }
    order.addListener(
        SWT.Selection, event -> list.sortBy(ORDERS[order.getSelectionIndex()][1], false));
    order.addListener(SWT.Selection, event -> sorted());
    for (TableColumn head : list.table().getColumns()) {
      head.addListener(SWT.Selection, event -> sorted());
    }
    String[] kept = desk.remembered(KitPage.ID, "order", VERDICT + "/up").split("/");
    list.sortBy(kept[0], kept[kept.length - 1].equals("down"));
    sorted();
  }

  /** Remembers how the list is sorted, and lets the order box say it where it can. */
  private void sorted() {
    Table table = list.table();
    if (table.getSortColumn() == null) {
      list.sortBy(VERDICT, false);
    }
    String column = list.columns().get(table.indexOf(table.getSortColumn())).id();
    boolean down = table.getSortDirection() == SWT.DOWN;
    desk.remember(KitPage.ID, "order", column + (down ? "/down" : "/up"));
    order.deselectAll();
    for (int i = 0; i < ORDERS.length && !down; i++) {
      if (ORDERS[i][1].equals(column)) {
        order.select(i);
      }
    }
  }

  /** Says in full what the row under the pointer may have had no room for. */
  private void hint(Event event) {
    Table table = list.table();
    TableItem item = table.getItem(new Point(event.x, event.y));
    String words = item == null ? "" : words(list.model().get(table.indexOf(item)));
    if (!words.equals(table.getToolTipText())) {
      table.setToolTipText(words);
    }
  }

  private static String words(JointRow row) {
    return row.name()
        + ", "
        + row.part()
        + "\n"
        + row.count()
        + " off "
        + row.fastener()
        + "\n"
        + row.supplyInFull();
  }

  /** Shows the joints of a kit, keeping order, filter and selection. */
  void show(KitReport report) {
    list.items(rows(report));
  }

  static List<JointRow> rows(KitReport report) {
    List<JointRow> rows = new ArrayList<>();
    report.joints().forEach(joint -> rows.add(new JointRow(rows.size(), joint)));
    return rows;
  }

  /** Chooses a joint by its name, else the first one shown. */
  void choose(String name) {
    if (!list.select(name) && list.model().size() > 0) {
      list.selectRow(0);
    }
  }

  /** Shows all joints again. */
  void unfilter() {
    filter.type("");
  }

  LongList<JointRow> list() {
    return list;
  }

  FilterField filter() {
    return filter;
  }

  /** Puts the keyboard on the chosen joint, else where one may be looked for. */
  void begin() {
    if (list.model().size() > 0) {
      list.setFocus();
    } else {
      filter.setFocus();
    }
  }
}
