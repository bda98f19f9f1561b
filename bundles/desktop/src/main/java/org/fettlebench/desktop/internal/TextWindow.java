package org.fettlebench.desktop.internal;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.desktop.Look;
import org.fettlebench.desktop.widgets.Layouts;

/** A small window with a text to read, beside which work goes on; Esc closes it. */
final class TextWindow {
  private TextWindow() {}

  static Shell open(Shell parent, Look look, String title, String text) {
    Shell shell = new Shell(parent, SWT.DIALOG_TRIM | SWT.RESIZE);
    shell.setText(title);
    shell.setBackground(look.ground());
    shell.setLayout(Layouts.grid(1, Layouts.MARGIN));
    Layouts.label(shell, look.heading(), title).setForeground(look.ink());
    Text words = new Text(shell, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL);
    words.setText(text);
    words.setFont(look.text());
    words.setForeground(look.ink());
    words.setBackground(look.sheet());
    Layouts.fill(words);
    Composite line = Layouts.wide(Layouts.columns(shell, 1));
    Button close = Layouts.button(line, look, "&Close", shell::close);
    close.setLayoutData(new GridData(SWT.END, SWT.CENTER, true, false));
    shell.setDefaultButton(close);
    Rectangle place = parent.getBounds();
    int width = Math.min(place.width - 40, (int) (620 * look.scale()));
    int height = Math.min(place.height - 40, (int) (520 * look.scale()));
    shell.setBounds(
        place.x + (place.width - width) / 2, place.y + (place.height - height) / 2, width, height);
    shell.open();
    close.setFocus();
    return shell;
  }
}
