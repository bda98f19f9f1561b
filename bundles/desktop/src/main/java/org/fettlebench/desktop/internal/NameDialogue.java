package org.fettlebench.desktop.internal;

import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.desktop.Look;
import org.fettlebench.desktop.widgets.Layouts;

/** Asks for one line of text. */
final class NameDialogue {
  private NameDialogue() {}

  static void open(
      Shell parent, Look look, String question, String before, Consumer<String> answered) {
    Shell shell = new Shell(parent, SWT.DIALOG_TRIM | SWT.PRIMARY_MODAL);
    shell.setText(question);
    shell.setBackground(look.ground());
    shell.setLayout(Layouts.grid(1, Layouts.MARGIN));
    Layouts.word(shell, look, question);
    Text text = new Text(shell, SWT.SINGLE | SWT.BORDER);
    text.setFont(look.text());
    text.setText(before);
    text.selectAll();
    Layouts.characters(text, 40);
    Composite buttons = Layouts.columns(shell, 2);
    buttons.setLayoutData(new GridData(SWT.END, SWT.CENTER, true, false));
    Layouts.button(buttons, look, "&Cancel", shell::close);
    Button keep =
        Layouts.button(
            buttons,
            look,
            "&Keep",
            () -> {
              String answer = text.getText().strip();
              shell.close();
              answered.accept(answer);
            });
    shell.setDefaultButton(keep);
    shell.pack();
    Point size = shell.getSize();
    shell.setLocation(
        parent.getBounds().x + (parent.getBounds().width - size.x) / 2,
        parent.getBounds().y + (parent.getBounds().height - size.y) / 3);
    shell.open();
  }
}
