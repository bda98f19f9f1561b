package org.fettlebench.desktop.threads.internal.identify;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.threads.internal.compare.Crossing;
import org.fettlebench.desktop.threads.internal.compare.CrossingBook;
import org.fettlebench.desktop.threads.internal.compare.CrossingDrawing;
import org.fettlebench.desktop.threads.internal.compare.CrossingWords;
import org.fettlebench.desktop.threads.internal.sheet.AnswerBand;
import org.fettlebench.desktop.widgets.DrawingCanvas;
import org.fettlebench.desktop.widgets.Figures;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.ListPrinter;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadSide;
import org.fettlebench.threads.identify.Candidate;
import org.fettlebench.threads.identify.ThreadIdentifier;

/** Figures in, ranked names out, and the thread it is easily crossed with laid over it. */
public final class IdentifyView {
  private static final String REMEMBERED = "readings";

  private final Desk desk;
  private final String pageId;
  private final ThreadIdentifier identifier;
  private final CrossingBook book;
  private final BiConsumer<String, String> compare;
  private final Composite face;
  private final AnswerBand band;
  private final ReadingFields fields;
  private final CandidateBars bars;
  private final Label crossWords;
  private final DrawingCanvas canvas;
  private final Button over;
  private Optional<Identified> shown = Optional.empty();
  private Optional<Crossing> crossing = Optional.empty();

  /**
   * Makes the view.
   *
   * @param compare is told screw and nut to lay over each other
   * @param open is told a thread to look at
   */
  public IdentifyView(
      Composite parent,
      Desk desk,
      String pageId,
      ThreadIdentifier identifier,
      CrossingBook book,
      BiConsumer<String, String> compare,
      java.util.function.Consumer<String> open) {
    this.desk = desk;
    this.pageId = pageId;
    this.identifier = identifier;
    this.book = book;
    this.compare = compare;
    face = Layouts.columns(parent, 1);
    band = new AnswerBand(face, desk, "Which thread is it?", "", 2);
    Composite upper = Layouts.wide(Layouts.columns(face, 2));
    Composite left = Layouts.columns(upper, 1);
    left.setLayoutData(new GridData(SWT.BEGINNING, SWT.BEGINNING, false, false));
    fields = new ReadingFields(left, desk, this::typed);
    Composite buttons = Layouts.flow(left);
    Layouts.button(buttons, desk.look(), "&Clear", this::clear).setLayoutData(null);
    Layouts.button(
            buttons,
            desk.look(),
            "&Drills for it",
            () -> chosen().ifPresent(c -> open.accept(c.thread().designation())))
        .setLayoutData(null);
    bars = new CandidateBars(upper, desk, candidate -> lay(candidate));
    Composite row = Layouts.wide(Layouts.columns(face, 2));
    crossWords = Layouts.label(row, desk.look().strong(), " ");
    crossWords.setForeground(desk.look().ink());
    over = Layouts.button(row, desk.look(), "C&ompare in full", this::compareNow);
    canvas = Layouts.fill(new DrawingCanvas(face, desk));
    canvas.whenEmpty("The likeliest thread and the one it is easily crossed with are drawn here.");
    fields.put(ReadingFields.again(desk.remembered(pageId, REMEMBERED, "")));
    desk.onLookChange(this::typed);
  }

  /** Returns the control to lay out. */
  public Composite control() {
    return face;
  }

  /** Takes measurements written in one line; returns whether it reads as such. */
  public boolean take(String line) {
    Optional<Readings> read = MeasuredLine.read(line, desk.unit());
    read.ifPresent(fields::put);
    return read.isPresent();
  }

  private void clear() {
    fields.put(Readings.NONE);
    fields.focus();
  }

  private Optional<Candidate> chosen() {
    return bars.chosen();
  }

  private void typed() {
    if (face.isDisposed() || canvas == null) {
      return;
    }
    Readings readings = fields.readings();
    desk.remember(pageId, REMEMBERED, ReadingFields.kept(readings));
    if (readings.isEmpty()) {
      nothing("Type the diameter and the pitch or the threads per inch, as they were measured.");
      return;
    }
    try {
      Identified found = Identified.by(identifier, readings.measured(desk.unit()));
      shown = Optional.of(found);
      band.say(found.answer(), found.understood(readings, desk.unit()) + advice(found));
      bars.show(found.candidates());
      found.candidates().stream().findFirst().ifPresent(this::lay);
    } catch (MeasureException refused) {
      band.refuse(refused.getMessage());
    }
  }

  private static String advice(Identified found) {
    return found.agrees()
        ? ""
        : " Measure again, allow for wear, or it is no thread of the series that are enabled.";
  }

  private void nothing(String reason) {
    shown = Optional.empty();
    crossing = Optional.empty();
    band.say("Which thread is it?", reason);
    bars.show(List.of());
    crossWords.setText(" ");
    over.setEnabled(false);
    canvas.clear();
  }

  private void lay(Candidate candidate) {
    ScrewThread one = candidate.thread();
    Optional<ScrewThread> other = shown.flatMap(found -> found.crossedWith(one, book));
    boolean nut = shown.filter(f -> f.measured().side() == ThreadSide.INTERNAL).isPresent();
    crossing = other.map(two -> nut ? book.crossing(two, one) : book.crossing(one, two));
    over.setEnabled(crossing.isPresent());
    crossing.ifPresentOrElse(
        laid -> {
          int threads = laid.usualThreads();
          crossWords.setText(
              Layouts.escaped("Not to be crossed: " + CrossingWords.answer(laid, threads)));
          canvas.show(CrossingDrawing.of(laid, threads, desk.unit()));
        },
        canvas::clear);
    crossWords.requestLayout();
  }

  private void compareNow() {
    crossing.ifPresent(
        laid -> compare.accept(laid.screw().designation(), laid.nut().designation()));
  }

  /** Puts the keyboard where the work begins. */
  public void focus() {
    fields.focus();
  }

  /** Prints the ranked names. */
  public void print() {
    shown.ifPresent(
        found ->
            new ListPrinter(
                    found.answer(),
                    List.of("Thread", "Likelihood, %", "Agrees"),
                    found.candidates().stream()
                        .map(
                            c ->
                                List.of(
                                    c.thread().designation(),
                                    Figures.show(100 * c.share(), 1),
                                    c.agrees() ? "yes" : "no"))
                        .toList(),
                    List.of(false, true, false))
                .under(canvas.drawing())
                .print(desk));
  }
}
