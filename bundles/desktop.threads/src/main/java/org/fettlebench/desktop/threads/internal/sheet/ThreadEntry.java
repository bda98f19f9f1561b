package org.fettlebench.desktop.threads.internal.sheet;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.Threads;

/** A line to type one thread into. */
public final class ThreadEntry {
  private static final int NEAR = 5;

  private final Threads threads;
  private final Text text;
  private Optional<ScrewThread> thread = Optional.empty();

  /** Makes the line in a row that flows. */
  public ThreadEntry(
      Composite row, Desk desk, String name, String hint, Threads threads, Runnable changed) {
    this.threads = threads;
    Composite cell = Layouts.columns(row, 2);
    cell.setLayoutData(null);
    Label label = Layouts.word(cell, desk.look(), name);
    label.setForeground(desk.look().faint());
    text = new Text(cell, SWT.SINGLE | SWT.BORDER);
    text.setFont(desk.look().heading());
    text.setBackground(desk.look().sheet());
    text.setForeground(desk.look().ink());
    text.setMessage(hint);
    Layouts.characters(text, 14);
    text.addListener(
        SWT.Modify,
        event -> {
          thread = typed().isBlank() ? Optional.empty() : threads.find(typed());
          changed.run();
        });
  }

  /** Returns the thread that is typed, if it is one. */
  public Optional<ScrewThread> thread() {
    return thread;
  }

  /** Returns what is typed. */
  public String typed() {
    return text.getText();
  }

  /** Returns threads that may have been meant. */
  public List<ScrewThread> near() {
    return typed().isBlank() ? List.of() : threads.near(typed(), NEAR);
  }

  /** Puts a thread into the line, as if typed. */
  public void type(String designation) {
    text.setText(designation);
    text.setSelection(designation.length());
  }

  /** Puts the keyboard here. */
  public void focus() {
    text.setFocus();
    text.selectAll();
  }
}
