package org.fettlebench.desktop.threads.internal.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Spinner;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.threads.internal.sheet.AnswerBand;
import org.fettlebench.desktop.threads.internal.sheet.FigureTable;
import org.fettlebench.desktop.threads.internal.sheet.TableCanvas;
import org.fettlebench.desktop.threads.internal.sheet.ThreadEntry;
import org.fettlebench.desktop.widgets.DrawingCanvas;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.ListPrinter;
import org.fettlebench.desktop.widgets.Split;
import org.fettlebench.threads.ScrewThread;

/** Two threads laid over each other: which goes into which, and where it binds. */
public final class CompareView {
  private static final int MOST_THREADS = 20;

  private final Desk desk;
  private final String pageId;
  private final CrossingBook book;
  private final Composite face;
  private final ThreadEntry screw;
  private final ThreadEntry nut;
  private final Spinner threads;
  private final AnswerBand band;
  private final DrawingCanvas canvas;
  private final TableCanvas table;
  private final CrossList near;
  private Optional<Crossing> shown = Optional.empty();
  private boolean setting;

  /** Makes the view with the two threads that were compared last. */
  public CompareView(Composite parent, Desk desk, String pageId, CrossingBook book) {
    this.desk = desk;
    this.pageId = pageId;
    this.book = book;
    face = Layouts.columns(parent, 1);
    Composite row = Layouts.flow(face);
    screw = new ThreadEntry(row, desk, "Screw", "2 BA", book.threads(), this::typed);
    nut = new ThreadEntry(row, desk, "in nut", "#10-32 UNF", book.threads(), this::typed);
    threads = spinner(row);
    Layouts.button(row, desk.look(), "Change &over", this::changeOver).setLayoutData(null);
    band = new AnswerBand(face, desk, "Type two threads to lay them over each other", "", 2);
    Split split = new Split(face, desk, SWT.HORIZONTAL, pageId, "compare");
    canvas = new DrawingCanvas(split.form(), desk);
    canvas.whenEmpty("The two threads are drawn here, one over the other.");
    Composite side = Layouts.columns(split.form(), 1);
    table = new TableCanvas(side, desk);
    near = new CrossList(side, desk, this::takeNut);
    split.share(66, 34);
    put(desk.remembered(pageId, "screw", "2 BA"), desk.remembered(pageId, "nut", "#10-32 UNF"));
    desk.onLookChange(() -> show(false));
  }

  private Spinner spinner(Composite row) {
    Composite cell = Layouts.columns(row, 3);
    cell.setLayoutData(null);
    Layouts.word(cell, desk.look(), "over").setForeground(desk.look().faint());
    Spinner made = new Spinner(cell, SWT.BORDER);
    made.setFont(desk.look().text());
    made.setBackground(desk.look().sheet());
    made.setForeground(desk.look().ink());
    made.setValues(3, 1, MOST_THREADS, 0, 1, 5);
    made.setLayoutData(new GridData(SWT.LEFT, SWT.CENTER, false, false));
    made.addListener(SWT.Modify, event -> show(false));
    Layouts.word(cell, desk.look(), "threads").setForeground(desk.look().faint());
    return made;
  }

  /** Returns the control to lay out. */
  public Composite control() {
    return face;
  }

  /** Shows two threads. */
  public void put(String screwThread, String nutThread) {
    setting = true;
    screw.type(screwThread);
    nut.type(nutThread);
    setting = false;
    typed();
  }

  private void takeNut(ScrewThread thread) {
    nut.type(thread.designation());
  }

  private void changeOver() {
    put(nut.typed(), screw.typed());
  }

  private void typed() {
    if (setting) {
      return;
    }
    if (offered(screw) || offered(nut)) {
      return;
    }
    if (screw.thread().isPresent() && nut.thread().isPresent()) {
      desk.remember(pageId, "screw", screw.thread().get().designation());
      desk.remember(pageId, "nut", nut.thread().get().designation());
      shown = Optional.of(book.crossing(screw.thread().get(), nut.thread().get()));
      near.show(book.pairsOf(screw.thread().get()), nut.thread().get(), desk.unit());
      show(true);
    }
  }

  /** Offers what may have been meant; returns whether the line holds no thread. */
  private boolean offered(ThreadEntry line) {
    if (line.thread().isPresent() || line.typed().isBlank()) {
      return false;
    }
    List<AnswerBand.Offer> offers = new ArrayList<>();
    for (ScrewThread each : line.near()) {
      offers.add(new AnswerBand.Offer(each.designation(), () -> line.type(each.designation())));
    }
    band.offer(
        "\u201c" + line.typed().strip() + "\u201d is no thread that is known",
        offers.isEmpty() ? "Write it as 2 BA, M6 x 0.75 or 1/4 x 40 ME." : "Was one meant?",
        offers);
    return true;
  }

  private void show(boolean anew) {
    if (shown.isEmpty() || face.isDisposed()) {
      return;
    }
    Crossing crossing = shown.get();
    if (anew && threads.getSelection() != crossing.usualThreads()) {
      // The spinner tells of its change, which shows the crossing.
      threads.setSelection(crossing.usualThreads());
      return;
    }
    int count = threads.getSelection();
    band.say(
        CrossingWords.answer(crossing, count),
        String.join(" ", CrossingWords.because(crossing, count, desk.unit())));
    canvas.show(CrossingDrawing.withDetail(crossing, count, desk.unit()));
    table.show(CrossingTable.of(crossing, count, desk.unit()));
  }

  /** Puts the keyboard where the work begins. */
  public void focus() {
    screw.focus();
  }

  /** Prints the figures of both. */
  public void print() {
    shown.ifPresent(
        crossing -> {
          FigureTable figures = CrossingTable.of(crossing, threads.getSelection(), desk.unit());
          List<String> heads = new ArrayList<>(List.of(""));
          heads.addAll(figures.heads());
          List<List<String>> rows = new ArrayList<>();
          figures.rows().forEach(r -> rows.add(cells(r, heads.size())));
          List<Boolean> right = new ArrayList<>(List.of(false));
          figures.heads().forEach(head -> right.add(true));
          new ListPrinter(band.answer(), heads, rows, right).under(canvas.drawing()).print(desk);
        });
  }

  private static List<String> cells(FigureTable.Row row, int columns) {
    List<String> cells = new ArrayList<>(List.of(row.name()));
    cells.addAll(row.cells());
    while (cells.size() < columns) {
      cells.add("");
    }
    return cells;
  }
}
