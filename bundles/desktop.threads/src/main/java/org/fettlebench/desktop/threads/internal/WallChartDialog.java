package org.fettlebench.desktop.threads.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.paper.WallPaper;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadSeries;

/** Asks which series go on a wall chart, and on which paper. */
final class WallChartDialog {
  private static final String SERIES = "chart.series";
  private static final String PAPER = "chart.paper";

  private final Desk desk;
  private final List<ThreadSeries> series;
  private final Shell shell;
  private final Table table;
  private final List<Button> papers = new ArrayList<>();
  private Optional<Choice> choice = Optional.empty();

  /** What was chosen. */
  record Choice(List<String> series, WallPaper paper) {}

  WallChartDialog(Desk desk, List<ThreadSeries> series, Optional<ScrewThread> shown) {
    this.desk = desk;
    this.series = series;
    shell = new Shell(desk.shell(), SWT.DIALOG_TRIM | SWT.APPLICATION_MODAL | SWT.RESIZE);
    shell.setText("Wall chart");
    shell.setLayout(Layouts.grid(1, Layouts.MARGIN));
    shell.setBackground(desk.look().ground());
    Layouts.word(shell, desk.look(), "Series on the chart");
    table = new Table(shell, SWT.CHECK | SWT.BORDER);
    table.setFont(desk.look().text());
    table.setBackground(desk.look().sheet());
    table.setForeground(desk.look().ink());
    GridData room = new GridData(SWT.FILL, SWT.FILL, true, true);
    room.heightHint = (int) (260 * desk.look().scale());
    room.widthHint = (int) (320 * desk.look().scale());
    table.setLayoutData(room);
    String usual = shown.map(ScrewThread::series).orElse("");
    List<String> before = Arrays.asList(desk.remembered(ThreadsPage.ID, SERIES, usual).split(","));
    for (ThreadSeries each : series) {
      TableItem item = new TableItem(table, SWT.NONE);
      item.setText(each.title());
      item.setChecked(before.contains(each.id()));
    }
    papers();
    buttons();
    shell.pack();
  }

  private void papers() {
    Composite row = Layouts.columns(shell, WallPaper.values().length + 1);
    Layouts.word(row, desk.look(), "Paper");
    String before = desk.remembered(ThreadsPage.ID, PAPER, WallPaper.values()[0].name());
    for (WallPaper paper : WallPaper.values()) {
      Button button = new Button(row, SWT.RADIO);
      button.setText(paper.name());
      button.setFont(desk.look().text());
      button.setForeground(desk.look().ink());
      button.setBackground(row.getBackground());
      button.setSelection(paper.name().equals(before));
      papers.add(button);
    }
  }

  private void buttons() {
    Composite row = Layouts.columns(shell, 2);
    row.setLayoutData(new GridData(SWT.END, SWT.CENTER, true, false));
    Button write = Layouts.button(row, desk.look(), "&Write PDF \u2026", this::take);
    Layouts.button(row, desk.look(), "Cancel", shell::close);
    shell.setDefaultButton(write);
  }

  private void take() {
    List<String> ids = new ArrayList<>();
    for (int i = 0; i < series.size(); i++) {
      if (table.getItem(i).getChecked()) {
        ids.add(series.get(i).id());
      }
    }
    if (ids.isEmpty()) {
      desk.complain("Tick at least one series for the wall chart.");
      return;
    }
    int paper = 0;
    for (int i = 0; i < papers.size(); i++) {
      paper = papers.get(i).getSelection() ? i : paper;
    }
    choice = Optional.of(new Choice(ids, WallPaper.values()[paper]));
    desk.remember(ThreadsPage.ID, SERIES, String.join(",", ids));
    desk.remember(ThreadsPage.ID, PAPER, WallPaper.values()[paper].name());
    shell.close();
  }

  /** Waits for the person; nothing when it was called off. */
  Optional<Choice> open() {
    shell.open();
    Display display = shell.getDisplay();
    while (!shell.isDisposed()) {
      if (!display.readAndDispatch()) {
        display.sleep();
      }
    }
    return choice;
  }
}
