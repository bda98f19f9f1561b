package org.fettlebench.desktop.internal;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.fettlebench.desktop.Look;
import org.fettlebench.desktop.widgets.Layouts;

/** The parts of the window in their places. */
final class WindowParts {
  private final MainWindow window;
  private final TopBar top;
  private final FindBox find;
  private final PageList list;
  private final ComplaintStrip complaints;
  private final PageArea area;
  private final StatusLine status;

  WindowParts(MainWindow window, Troubles troubles) {
    this.window = window;
    Shell shell = window.shell();
    Look look = window.look();
    shell.setBackground(look.ground());
    shell.setLayout(bare(1));
    top = new TopBar(shell, look);
    Layouts.wide(top);
    find = new FindBox(top, look, window::answers, window::go);
    top.place(find);
    top.placeSwitch(window.unit(), window::unit);
    top.club(window.club());
    Layouts.rule(shell, look);
    Composite middle = new Composite(shell, SWT.NONE);
    middle.setLayout(bare(3));
    middle.setBackground(look.ground());
    Layouts.fill(middle);
    list = new PageList(middle, look, window::bring);
    list.setLayoutData(new GridData(SWT.FILL, SWT.FILL, false, true));
    uprightRule(middle, look);
    Composite right = new Composite(middle, SWT.NONE);
    right.setLayout(bare(1));
    right.setBackground(look.ground());
    Layouts.fill(right);
    complaints = new ComplaintStrip(right, look);
    Composite pages = new Composite(right, SWT.NONE);
    pages.setBackground(look.ground());
    Layouts.fill(pages);
    area = new PageArea(pages, troubles, slot -> new PageDesk(window, slot));
    area.refuge(list);
    Layouts.rule(shell, look);
    status = new StatusLine(shell, look, window::undo, window::stop);
    Layouts.wide(status);
  }

  private static org.eclipse.swt.layout.GridLayout bare(int columns) {
    var grid = Layouts.grid(columns, 0);
    grid.horizontalSpacing = 0;
    grid.verticalSpacing = 0;
    return grid;
  }

  private static void uprightRule(Composite parent, Look look) {
    Control rule = Layouts.rule(parent, look);
    GridData data = new GridData(SWT.CENTER, SWT.FILL, false, true);
    data.widthHint = 1;
    rule.setLayoutData(data);
  }

  /** Brings the list of pages up to date. */
  void showPages() {
    list.show(area.slots(), area.front());
    list.getParent().layout();
  }

  void showUnit() {
    top.show(window.unit());
  }

  void showClub() {
    top.club(window.club());
  }

  FindBox find() {
    return find;
  }

  PageList list() {
    return list;
  }

  ComplaintStrip complaints() {
    return complaints;
  }

  PageArea area() {
    return area;
  }

  StatusLine status() {
    return status;
  }
}
