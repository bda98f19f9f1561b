package org.fettlebench.desktop.kits.internal;

import java.util.List;
import java.util.OptionalDouble;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Column;
import org.fettlebench.desktop.widgets.FilterField;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.LongList;
import org.fettlebench.kits.KitReport;
import org.fettlebench.kits.KitReport.Shortage;

/** What is missing for the whole kit, to take to the shop or to ask round for. */
final class ShortList extends Composite {
  private final LongList<Shortage> list;

  ShortList(Composite parent, Desk desk) {
    super(parent, SWT.NONE);
    setBackground(parent.getBackground());
    setLayout(Layouts.grid(1, 0));
    Composite above = Layouts.wide(Layouts.columns(this, 2));
    FilterField filter =
        Layouts.wide(new FilterField(above, desk, "Narrow: drill, 4 BA, gland \u2026"));
    list = Layouts.fill(new LongList<>(this, desk, KitPage.ID, "short", columns()));
    Layouts.button(above, desk.look(), "Cop&y the list", this::copy)
        .setToolTipText("All rows shown, with their heads, for a letter or a table");
    list.keyedBy(Shortage::what);
    list.whenEmpty("Nothing is missing: everything the kit needs is in its bag or in stock.");
    filter.narrows(list);
  }

  private static List<Column<Shortage>> columns() {
    return List.of(
        Column.<Shortage>words("What", 43, Shortage::what),
        Column.<Shortage>words("For", 14, shortage -> shortage.role().words()),
        number("Needed", Shortage::needed),
        number("There", Shortage::present),
        Column.<Shortage>words("Why", 38, Shortage::why),
        Column.<Shortage>words(
            "Joints that need it", 36, shortage -> String.join(", ", shortage.joints())));
  }

  private static Column<Shortage> number(
      String head, java.util.function.ToIntFunction<Shortage> number) {
    return Column.<Shortage>figures(
            head, "", 0, shortage -> OptionalDouble.of(number.applyAsInt(shortage)))
        .wide(8);
  }

  private void copy() {
    list.table().deselectAll();
    list.copy();
  }

  void show(KitReport report) {
    list.items(report.shortages());
  }

  LongList<Shortage> list() {
    return list;
  }

  /** Puts the keyboard on the list. */
  void begin() {
    list.setFocus();
  }
}
