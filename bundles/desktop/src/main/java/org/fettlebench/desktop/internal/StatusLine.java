package org.fettlebench.desktop.internal;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Look;
import org.fettlebench.desktop.widgets.Layouts;

/** One line: what just happened, with Undo; what is running, with Stop. */
final class StatusLine extends Composite {
  private final Label happened;
  private final Button undo;
  private final Label running;
  private final Button stop;

  StatusLine(Composite parent, Look look, Runnable undone, Runnable stopped) {
    super(parent, SWT.NONE);
    setBackground(look.ground());
    var grid = Layouts.grid(4, 0);
    grid.marginWidth = Layouts.MARGIN;
    grid.marginHeight = 3;
    setLayout(grid);
    happened = oneLine(look);
    happened.setLayoutData(new GridData(SWT.BEGINNING, SWT.CENTER, false, false));
    undo = Layouts.button(this, look, "Undo", undone);
    undo.setToolTipText("Take back what was last done (Ctrl+Z)");
    running = oneLine(look);
    running.setAlignment(SWT.RIGHT);
    running.setForeground(look.faint());
    stop = Layouts.button(this, look, "Stop", stopped);
    stop.setToolTipText("Stop what is running (Ctrl+.)");
    undo.setVisible(false);
    stop.setVisible(false);
    addListener(SWT.Resize, event -> place());
  }

  private Label oneLine(Look look) {
    Label label = new Label(this, SWT.NONE);
    label.setFont(look.text());
    label.setForeground(look.ink());
    label.setBackground(getBackground());
    GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
    data.widthHint = 40;
    label.setLayoutData(data);
    return label;
  }

  /** Says what just happened, without an undo of its own. */
  void say(String sentence) {
    happened.setText(Layouts.escaped(sentence));
    happened.setToolTipText(sentence);
    undo.setVisible(false);
    place();
  }

  /** Lets the sentence have up to two thirds of the line, so that Undo stands right behind it. */
  private void place() {
    int natural = happened.computeSize(SWT.DEFAULT, SWT.DEFAULT).x;
    int most = getClientArea().width * 2 / 3;
    ((GridData) happened.getLayoutData()).widthHint = most > 0 ? Math.min(natural, most) : natural;
    layout();
  }

  /** Says what just happened and offers to take it back. */
  void sayWithUndo(String sentence) {
    say(sentence);
    undo.setVisible(true);
  }

  /** Shows the names of what is running. */
  void running(List<String> names) {
    String more = names.size() > 1 ? " and " + (names.size() - 1) + " more" : "";
    running.setText(names.isEmpty() ? "" : Layouts.escaped(names.get(0)) + more + " \u2026");
    stop.setVisible(!names.isEmpty());
  }

  /** Returns what was last said. */
  String said() {
    return happened.getText().replace("&&", "&");
  }

  boolean offersUndo() {
    return undo.getVisible();
  }

  /** Returns the names of what is running, as shown. */
  String running() {
    return running.getText();
  }
}
