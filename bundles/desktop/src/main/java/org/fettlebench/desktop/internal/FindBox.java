package org.fettlebench.desktop.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.desktop.Look;
import org.fettlebench.desktop.Page;
import org.fettlebench.desktop.widgets.Layouts;

/**
 * One field that finds anything: asks every page as one types and goes to the thing chosen. Arrow
 * keys choose, Enter goes, Esc closes.
 */
final class FindBox {
  private static final int PAUSE_MS = 120;
  private static final int SHOWN = 14;

  private final Text text;
  private final Composite panel;
  private final Table table;
  private final Look look;
  private final Function<String, List<Answer>> find;
  private final Consumer<Page.Found> go;
  private final Runnable ask = this::ask;
  private List<Answer> answers = List.of();

  /**
   * A thing found.
   *
   * @param found what the page returned
   * @param page title of that page
   */
  record Answer(Page.Found found, String page) {}

  FindBox(
      Composite parent, Look look, Function<String, List<Answer>> find, Consumer<Page.Found> go) {
    this.look = look;
    this.find = find;
    this.go = go;
    text = new Text(parent, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
    text.setMessage("Find anything: 5/32, 2 BA tap, pump body \u2026   Ctrl+F");
    text.setFont(look.text());
    text.setBackground(look.sheet());
    text.setForeground(look.ink());
    Shell shell = parent.getShell();
    panel = new Composite(shell, SWT.BORDER);
    panel.setLayout(Layouts.grid(1, 0));
    panel.setBackground(look.sheet());
    GridData floating = new GridData();
    floating.exclude = true;
    panel.setLayoutData(floating);
    panel.setVisible(false);
    table = Layouts.fill(new Table(panel, SWT.SINGLE | SWT.FULL_SELECTION | SWT.NO_FOCUS));
    dressTable();
    text.addListener(SWT.Modify, event -> text.getDisplay().timerExec(PAUSE_MS, ask));
    text.addListener(SWT.KeyDown, this::key);
    text.addListener(SWT.FocusOut, event -> text.getDisplay().asyncExec(this::closeIfLeft));
    table.addListener(SWT.MouseUp, event -> goToChosen());
    shell.addListener(SWT.Resize, event -> close());
  }

  private void dressTable() {
    table.setBackground(look.sheet());
    table.setForeground(look.ink());
    table.setFont(look.text());
    for (int i = 0; i < 3; i++) {
      new TableColumn(table, SWT.LEFT);
    }
  }

  Text field() {
    return text;
  }

  /** Puts the keyboard into the field, everything in it selected. */
  void focus() {
    text.setFocus();
    text.selectAll();
  }

  /** Returns the answers now shown, best first. */
  List<Answer> answers() {
    return panel.isVisible() ? answers : List.of();
  }

  private void ask() {
    if (text.isDisposed()) {
      return;
    }
    String typed = text.getText().strip();
    answers = typed.isEmpty() ? List.of() : shortened(find.apply(typed));
    if (typed.isEmpty()) {
      close();
    } else {
      fill(typed);
      open();
    }
  }

  /** Takes the best of every page first, then the second best of every page, and so on. */
  private static List<Answer> shortened(List<Answer> all) {
    List<Answer> best = new ArrayList<>();
    for (int rank = 0; best.size() < Math.min(SHOWN, all.size()); rank++) {
      for (String page : all.stream().map(Answer::page).distinct().toList()) {
        List<Answer> ofPage = all.stream().filter(a -> a.page().equals(page)).toList();
        if (rank < ofPage.size() && best.size() < SHOWN) {
          best.add(ofPage.get(rank));
        }
      }
    }
    List<String> order = all.stream().map(Answer::page).distinct().toList();
    best.sort(java.util.Comparator.comparingInt(answer -> order.indexOf(answer.page())));
    return best;
  }

  private void fill(String typed) {
    table.removeAll();
    for (Answer answer : answers) {
      TableItem item = new TableItem(table, SWT.NONE);
      item.setText(new String[] {answer.found().title(), answer.found().detail(), answer.page()});
      item.setForeground(1, look.faint());
      item.setForeground(2, look.faint());
      item.setFont(0, look.strong());
    }
    if (answers.isEmpty()) {
      new TableItem(table, SWT.NONE).setText("No page knows \u201c" + typed + "\u201d.");
    } else {
      table.setSelection(0);
    }
  }

  private void open() {
    Shell shell = panel.getShell();
    // The field's own co-ordinates begin behind its picture, so its place is asked of its parent.
    Point under = new Point(text.getLocation().x, text.getLocation().y + text.getSize().y + 2);
    Point place = shell.toControl(text.getParent().toDisplay(under));
    int width = Math.min(shell.getClientArea().width - place.x - 8, text.getSize().x);
    int rows = Math.max(1, table.getItemCount());
    int height = Math.min(rows * table.getItemHeight() + 12, shell.getClientArea().height - 120);
    int[] shares = {42, 38, 20};
    for (int i = 0; i < shares.length; i++) {
      table.getColumn(i).setWidth((width - 6) * shares[i] / 100);
    }
    panel.setBounds(place.x, place.y, width, height);
    panel.layout();
    panel.moveAbove(null);
    panel.setVisible(true);
  }

  void close() {
    panel.setVisible(false);
  }

  private void closeIfLeft() {
    if (!text.isDisposed() && !text.isFocusControl() && !table.isFocusControl()) {
      close();
    }
  }

  private void key(Event event) {
    switch (event.keyCode) {
      case SWT.ARROW_DOWN -> choose(event, 1);
      case SWT.ARROW_UP -> choose(event, -1);
      case SWT.CR, SWT.KEYPAD_CR -> goAtOnce();
      case SWT.ESC -> leave();
      default -> event.doit = true;
    }
  }

  private void choose(Event event, int step) {
    event.doit = false;
    int next = Math.floorMod(table.getSelectionIndex() + step, Math.max(1, answers.size()));
    if (!answers.isEmpty()) {
      table.setSelection(next);
      table.showSelection();
    }
  }

  /** A quick typist's Enter comes before the pause is over. */
  private void goAtOnce() {
    if (!panel.isVisible()) {
      ask();
    }
    goToChosen();
  }

  private void goToChosen() {
    int chosen = table.getSelectionIndex();
    if (chosen >= 0 && chosen < answers.size()) {
      Page.Found found = answers.get(chosen).found();
      text.setText("");
      close();
      go.accept(found);
    }
  }

  private void leave() {
    text.setText("");
    close();
  }
}
