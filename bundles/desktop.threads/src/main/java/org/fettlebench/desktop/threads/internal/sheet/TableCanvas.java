package org.fettlebench.desktop.threads.internal.sheet;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Copying;
import org.fettlebench.desktop.widgets.Figures;

/**
 * Paints a table of figures, right under right, in one control: it is quick to change, and Ctrl+C
 * or its menu copies it.
 */
public final class TableCanvas extends Canvas {
  private static final int GAP = 12;
  private static final int LEADING = 4;

  /** Pixels that the names keep at the usual text size. */
  private static final int NAME = 78;

  private final Desk desk;
  private FigureTable table = FigureTable.EMPTY;

  /** Makes an empty table as wide as there is room. */
  public TableCanvas(Composite parent, Desk desk) {
    super(parent, SWT.DOUBLE_BUFFERED);
    this.desk = desk;
    setBackground(parent.getBackground());
    setLayoutData(new GridData(SWT.FILL, SWT.BEGINNING, true, false));
    addListener(SWT.Paint, event -> paint(event.gc));
    addListener(SWT.KeyDown, this::key);
    addListener(SWT.MouseDown, event -> setFocus());
    addListener(SWT.Traverse, event -> event.doit = Keys.leaves(event.detail));
    addListener(SWT.FocusIn, event -> redraw());
    addListener(SWT.FocusOut, event -> redraw());
    Menu menu = new Menu(this);
    MenuItem copy = new MenuItem(menu, SWT.PUSH);
    copy.setText("Copy table\tCtrl+C");
    copy.addListener(SWT.Selection, event -> copy());
    setMenu(menu);
    getAccessible().addAccessibleListener(described());
  }

  private AccessibleAdapter described() {
    return new AccessibleAdapter() {
      @Override
      public void getName(AccessibleEvent event) {
        event.result = table.asText();
      }
    };
  }

  /** Shows a table. */
  public void show(FigureTable newTable) {
    boolean grows = lines(newTable) != lines(table);
    table = newTable;
    redraw();
    if (grows) {
      requestLayout();
    }
  }

  /** Returns what is shown. */
  public FigureTable table() {
    return table;
  }

  /** Copies the table, with tabs between its cells. */
  public void copy() {
    if (!table.rows().isEmpty()) {
      Copying.text(getDisplay(), table.asText());
      desk.say(Figures.count(table.rows().size(), "row", "rows") + " copied, with the heads.");
    }
  }

  private void key(Event event) {
    if (event.keyCode == 'c' && (event.stateMask & SWT.MOD1) != 0) {
      copy();
    }
  }

  private static int lines(FigureTable table) {
    boolean headed = table.heads().stream().anyMatch(head -> !head.isBlank());
    return table.rows().size() + (headed ? 1 : 0);
  }

  private int lineHeight(GC gc) {
    gc.setFont(desk.look().text());
    return gc.getFontMetrics().getHeight() + LEADING;
  }

  private void paint(GC gc) {
    int height = lineHeight(gc);
    Rectangle area = getClientArea();
    int[] widths = narrowed(widths(gc), area.width);
    int y = 0;
    if (lines(table) > table.rows().size()) {
      gc.setForeground(desk.look().faint());
      cells(gc, table.heads(), widths, area.width, y);
      y += height;
    }
    for (FigureTable.Row row : table.rows()) {
      gc.setFont(row.strong() ? desk.look().strong() : desk.look().text());
      int right = area.width - total(widths);
      gc.setForeground(row.strong() ? desk.look().ink() : desk.look().faint());
      gc.drawText(
          Elided.to(gc, row.name(), row.cells().isEmpty() ? area.width : right - GAP), 0, y, true);
      gc.setForeground(desk.look().ink());
      cells(gc, row.cells(), widths, area.width, y);
      y += height;
    }
    if (isFocusControl()) {
      gc.setForeground(desk.look().accent());
      gc.drawRectangle(0, 0, area.width - 1, area.height - 1);
    }
  }

  private static void cells(GC gc, List<String> cells, int[] widths, int width, int y) {
    int right = width;
    for (int i = widths.length - 1; i >= 0; i--) {
      if (i < cells.size()) {
        String cell = Elided.to(gc, cells.get(i), widths[i]);
        gc.drawText(cell, right - gc.textExtent(cell).x, y, true);
      }
      right -= widths[i] + GAP;
    }
  }

  private int[] widths(GC gc) {
    int[] widths = new int[table.heads().size()];
    gc.setFont(desk.look().text());
    widen(gc, widths, table.heads());
    for (FigureTable.Row row : table.rows()) {
      gc.setFont(row.strong() ? desk.look().strong() : desk.look().text());
      widen(gc, widths, row.cells());
    }
    gc.setFont(desk.look().text());
    return widths;
  }

  /** Takes from the widest column what the names at the left need. */
  private int[] narrowed(int[] widths, int room) {
    int most = room - (int) (NAME * desk.look().scale());
    int widest = 0;
    for (int i = 1; i < widths.length; i++) {
      widest = widths[i] > widths[widest] ? i : widest;
    }
    if (widths.length > 0 && total(widths) > most) {
      widths[widest] = Math.max(NAME / 2, widths[widest] - (total(widths) - most));
    }
    return widths;
  }

  private static void widen(GC gc, int[] widths, List<String> cells) {
    for (int i = 0; i < Math.min(widths.length, cells.size()); i++) {
      widths[i] = Math.max(widths[i], gc.textExtent(cells.get(i)).x);
    }
  }

  private static int total(int[] widths) {
    int total = 0;
    for (int width : widths) {
      total += width + GAP;
    }
    return Math.max(0, total - GAP);
  }

  @Override
  public Point computeSize(int widthHint, int heightHint, boolean changed) {
    GC gc = new GC(this);
    int height = lines(table) * lineHeight(gc) + 2;
    gc.dispose();
    return new Point(widthHint == SWT.DEFAULT ? 200 : widthHint, height);
  }
}
