package org.fettlebench.desktop.threads.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.fettlebench.club.StockLine;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.threads.internal.ThreadAnswer.Tapping;
import org.fettlebench.desktop.threads.internal.identify.MeasuredLine;
import org.fettlebench.desktop.threads.internal.sheet.AnswerBand;
import org.fettlebench.desktop.widgets.CautionStrip;
import org.fettlebench.desktop.widgets.Cautions;
import org.fettlebench.desktop.widgets.DrawingCanvas;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.ListPrinter;
import org.fettlebench.desktop.widgets.LongList;
import org.fettlebench.desktop.widgets.Split;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadCall;
import org.fettlebench.tooling.DrillSize;

/** A thread and its hole: a line to type into, the answer, the profile, drills, folds. */
final class ThreadsView {
  private static final int NEAR = 5;
  private static final int LOW = 380;

  private final Desk desk;
  private final ThreadsBook book;
  private final Predicate<String> measured;
  private final Composite face;
  private final ThreadField field;
  private final HoleWishes wishes;
  private final AnswerBand band;
  private DrawingCanvas profile;
  private DrillRule rule;
  private LongList<Tapping> list;
  private ThreadCards cards;
  private List<StockLine> stock = List.of();
  private Optional<ScrewThread> thread = Optional.empty();
  private Optional<DrillSize> chosen = Optional.empty();
  private Optional<ThreadAnswer> shown = Optional.empty();
  private boolean leftHand;
  private boolean showing;

  /**
   * Makes the view.
   *
   * @param turns what goes to the other faces
   */
  ThreadsView(Composite parent, Desk desk, Trade trade, Turns turns) {
    this.desk = desk;
    this.book = trade.book();
    this.measured = turns::identify;
    face = Layouts.columns(parent, 1);
    Composite row = Layouts.flow(face);
    field = new ThreadField(row, desk, book.threads(), this::typed);
    wishes = new HoleWishes(row, desk, book.materials(), this::answer);
    band =
        new AnswerBand(
            face,
            desk,
            "Type a thread to see its drill",
            "By any usual way of writing it: 2BA, M6 x 0.75; or what was measured: 4.68 x 0.81.",
            1);
    Split split = new Split(face, desk, SWT.HORIZONTAL, ThreadsPage.ID, "cards");
    left(new Split(split.form(), desk, SWT.VERTICAL, ThreadsPage.ID, "drills"));
    cards = new ThreadCards(split.form(), desk, trade, this::answer, turns::compare);
    split.share(62, 38);
    new CautionStrip(face, desk.look(), Cautions.DRILLING);
    desk.onLookChange(this::dress);
  }

  /** Ways to the other faces. */
  interface Turns {
    /** Lays a screw over a nut. */
    void compare(String screw, String nut);

    /** Names a thread from measurements in one line; returns whether the line reads as such. */
    boolean identify(String line);
  }

  Composite control() {
    return face;
  }

  private void left(Split split) {
    Composite upper = Layouts.columns(split.form(), 1);
    profile = Layouts.fill(new DrawingCanvas(upper, desk));
    profile.whenEmpty("The profile of the thread is drawn here, with the hole in it.");
    rule = new DrillRule(upper, desk.look(), this::choose);
    rule.setLayoutData(new GridData(SWT.FILL, SWT.END, true, false));
    list =
        new LongList<>(split.form(), desk, ThreadsPage.ID, "tapping", TappingColumns.of(desk))
            .keyedBy(Tapping::drill)
            .whenEmpty(
                "No drill that is held will do. \u201cDrills not held too\u201d shows all there are.")
            .onSelect(this::selected);
    split.share(68, 32);
    // Where there is little height the drawing needs it; the rule has the drills too.
    split
        .form()
        .addListener(
            SWT.Resize,
            event -> {
              boolean low = split.form().getSize().y < LOW * desk.look().scale();
              split.form().setMaximizedControl(low ? upper : null);
            });
  }

  private void dress() {
    if (!face.isDisposed()) {
      rule.dress();
      list.refresh();
      answer();
    }
  }

  private void typed(String words) {
    Optional<ThreadCall> read = words.isBlank() ? Optional.empty() : book.threads().read(words);
    leftHand = read.map(ThreadCall::leftHand).orElse(leftHand);
    Optional<ScrewThread> found = read.map(ThreadCall::thread);
    if (found.isPresent()) {
      if (!found.equals(thread)) {
        thread = found;
        chosen = Optional.empty();
      }
      field.found(found.get());
      desk.remember(ThreadsPage.ID, "thread", read.get().designation());
      answer();
    } else if (!words.isBlank()) {
      offer(words);
    }
  }

  private void offer(String words) {
    List<AnswerBand.Offer> offers = new ArrayList<>();
    String line = words.strip();
    if (MeasuredLine.isOne(line, desk.unit())) {
      band.offer(
          "Measured: " + line + "?",
          "Which thread is it?",
          List.of(new AnswerBand.Offer("Identify " + line, () -> measured.test(line))));
      return;
    }
    Optional<String> other = book.threads().refusal(words);
    if (other.isPresent()) {
      band.offer("\u201c" + line + "\u201d is no thread that is known", other.get() + ".", offers);
      return;
    }
    for (ScrewThread each : book.threads().near(words, NEAR)) {
      offers.add(new AnswerBand.Offer(each.designation(), () -> field.type(each.designation())));
    }
    band.offer(
        "\u201c" + line + "\u201d is no thread that is known",
        offers.isEmpty()
            ? "Choose a series and a size beside the field."
            : "Was one of these meant?",
        offers);
  }

  private void choose(DrillSize drill) {
    chosen = Optional.of(drill);
    answer();
  }

  private void selected(List<Tapping> rows) {
    if (!showing && !face.isDisposed()) {
      rows.stream().findFirst().ifPresent(row -> choose(row.drill()));
    }
  }

  /** Shows what is held now. */
  void stock(List<StockLine> lines) {
    if (!face.isDisposed()) {
      stock = lines;
      field.refresh();
      answer();
    }
  }

  private void answer() {
    if (thread.isEmpty() || cards == null) {
      return;
    }
    try {
      show(book.answer(question(thread.get()), stock));
    } catch (IllegalArgumentException refused) {
      band.refuse(refused.getMessage());
    }
  }

  private ThreadQuestion question(ScrewThread asked) {
    return new ThreadQuestion(
        asked, wishes.percent(), wishes.material(), wishes.catalogue(), chosen, cards.blind());
  }

  private void show(ThreadAnswer answer) {
    showing = true;
    shown = Optional.of(answer);
    band.say(TappingWords.answer(answer, desk.unit()), because(answer));

    Optional<DrillSize> drill = answer.chosen().map(Tapping::drill);
    profile.show(ProfileDrawing.of(answer.thread(), drill, desk.unit()));
    rule.show(Optional.of(answer));

    list.items(answer.choices());
    drill.ifPresent(list::select);

    cards.show(answer, book.held(stock));
    showing = false;
  }

  private String because(ThreadAnswer answer) {
    return (leftHand ? "Left-hand: the tap must be so too, the sizes are the same. " : "")
        + TappingWords.because(answer);
  }

  void type(String designation) {
    field.type(designation);
  }

  /** Returns the thread on show. */
  Optional<ScrewThread> thread() {
    return thread;
  }

  /** Shows a drill on the thread that stands on the page, or says what there is to say of it. */
  void lookAt(DrillSize drill) {
    choose(drill);
    String names = String.join(" = ", drill.names());
    desk.say(
        names
            + " is "
            + LengthFormat.showBoth(drill.diameter(), desk.unit())
            + "; "
            + book.where(drill, stock).orElse("not held")
            + ".");
  }

  /** Takes up series and drills that came or went. */
  void refresh() {
    field.refresh();
    answer();
  }

  /** Returns the drills held now. */
  List<DrillSize> held() {
    return book.held(stock);
  }

  /** Returns the material that the hole is wanted in. */
  String material() {
    return wishes.material();
  }

  void focus() {
    field.focus();
  }

  /** Prints the sheet of the thread on show. */
  void print() {
    shown.ifPresent(
        answer ->
            new ListPrinter(
                    TappingWords.answer(answer, desk.unit()),
                    List.of(answer.thread().designation(), "", "", "", ""),
                    ThreadSheet.rows(answer, cards.parts(), desk.unit()),
                    List.of(false, true, true, true, true))
                .under(profile.drawing())
                .print(desk));
  }
}
