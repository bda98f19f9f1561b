package org.fettlebench.desktop.threads.internal;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadSeries;
import org.fettlebench.threads.Threads;

/** One line to type a thread into, with all series and their sizes to choose from beside it. */
final class ThreadField {
  private final Threads threads;
  private final Text text;
  private final Combo series;
  private final Combo sizes;
  private List<ThreadSeries> known = List.of();
  private List<ScrewThread> offered = List.of();

  ThreadField(Composite row, Desk desk, Threads threads, Consumer<String> typed) {
    this.threads = threads;
    Composite first = cell(row, desk, "Thread");
    text = new Text(first, SWT.SINGLE | SWT.BORDER);
    text.setFont(desk.look().heading());
    text.setBackground(desk.look().sheet());
    text.setForeground(desk.look().ink());
    text.setMessage("2 BA, M6, 1/4 x 40 ME");
    Layouts.characters(text, 14);
    text.addListener(SWT.Modify, event -> typed.accept(text.getText()));
    Composite second = cell(row, desk, "or");
    series = combo(second, desk, 24);
    sizes = combo(second, desk, 14);
    series.addListener(SWT.Selection, event -> offerSizes());
    sizes.addListener(SWT.Selection, event -> take());
    refresh();
  }

  private static Composite cell(Composite row, Desk desk, String name) {
    Composite cell = Layouts.columns(row, 3);
    cell.setLayoutData(null);
    Label label = Layouts.word(cell, desk.look(), name);
    label.setForeground(desk.look().faint());
    return cell;
  }

  private static Combo combo(Composite cell, Desk desk, int characters) {
    Combo combo = new Combo(cell, SWT.DROP_DOWN | SWT.READ_ONLY);
    combo.setFont(desk.look().text());
    combo.setForeground(desk.look().ink());
    Layouts.characters(combo, characters);
    return combo;
  }

  /** Offers the series that are there now. */
  void refresh() {
    List<ThreadSeries> now = threads.series();
    if (!now.equals(known)) {
      known = now;
      String before = series.getText();
      series.setItems(known.stream().map(ThreadSeries::title).toArray(String[]::new));
      series.setText(before);
    }
  }

  private Optional<ThreadSeries> chosen() {
    int at = series.getSelectionIndex();
    return at < 0 || at >= known.size() ? Optional.empty() : Optional.of(known.get(at));
  }

  private void offerSizes() {
    List<ScrewThread> now = chosen().map(ThreadSeries::threads).orElse(List.of());
    // A list on the screen is slow to fill, so it is left alone while it stays the same.
    if (!now.equals(offered)) {
      offered = now;
      sizes.setItems(now.stream().map(ScrewThread::designation).toArray(String[]::new));
    }
  }

  private void take() {
    if (sizes.getSelectionIndex() >= 0) {
      text.setText(sizes.getText());
    }
  }

  /** Shows in the lists what was typed. */
  void found(ScrewThread thread) {
    for (int i = 0; i < known.size(); i++) {
      if (known.get(i).id().equals(thread.series()) && series.getSelectionIndex() != i) {
        series.select(i);
      }
    }
    offerSizes();
    sizes.setText(thread.designation());
  }

  void type(String designation) {
    text.setText(designation);
    text.setSelection(designation.length());
  }

  String typed() {
    return text.getText();
  }

  void focus() {
    text.setFocus();
    text.selectAll();
  }
}
