package org.fettlebench.desktop.kits.internal;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.kits.FaultyFileException.Fault;

/** A window that tells what is wrong with a kit file that was to be brought in. */
final class FaultsWindow {
  private FaultsWindow() {}

  /** Opens the window; it stays until it is closed and holds nothing up. */
  static Shell open(Desk desk, String file, List<Fault> faults) {
    Shell shell = new Shell(desk.shell(), SWT.SHELL_TRIM);
    shell.setText(FaultsList.heading(file, faults));
    shell.setBackground(desk.look().ground());
    shell.setLayout(new FillLayout());
    Composite page = Layouts.page(shell, desk.look());
    Layouts.answer(page, desk.look(), FaultsList.heading(file, faults));
    Layouts.text(
        page,
        desk.look(),
        "Nothing of it was kept. Put these right in the file, save it, and open it again.");
    FaultsList list = Layouts.fill(new FaultsList(page, desk));
    list.show(faults);
    Button close = Layouts.button(page, desk.look(), "&Close", shell::close);
    ((GridData) close.getLayoutData()).horizontalAlignment = SWT.RIGHT;
    shell.setDefaultButton(close);
    shell.addListener(SWT.Traverse, event -> closeOnEscape(event, shell));
    place(shell, desk);
    shell.open();
    list.setFocus();
    return shell;
  }

  private static void closeOnEscape(org.eclipse.swt.widgets.Event event, Shell shell) {
    if (event.detail == SWT.TRAVERSE_ESCAPE) {
      shell.close();
    }
  }

  private static void place(Shell shell, Desk desk) {
    Rectangle around = desk.shell().getBounds();
    int width = Math.min(around.width - 80, (int) (760 * desk.look().scale()));
    int height = Math.min(around.height - 80, (int) (520 * desk.look().scale()));
    shell.setBounds(
        around.x + (around.width - width) / 2,
        around.y + (around.height - height) / 2,
        width,
        height);
  }
}
