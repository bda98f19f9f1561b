package org.fettlebench.desktop.threads.internal;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.club.StockLine;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.threads.internal.ThreadAnswer.Tapping;
import org.fettlebench.desktop.widgets.CautionStrip;
import org.fettlebench.desktop.widgets.Cautions;
import org.fettlebench.desktop.widgets.DrawingCanvas;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.LongList;
import org.fettlebench.desktop.widgets.Split;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.DrillSize;

/** The page: a line to type into, the answer, the profile with the hole in it, drills, cards. */
final class ThreadsView {
  private static final int NEAR = 5;

  private final Desk desk;
  private final ThreadsBook book;
  private final Composite page;
  private final ThreadField field;
  private final HoleWishes wishes;
  private final Label answerLine;
  private final Label because;
  private final Composite near;
  private DrawingCanvas profile;
  private DrillRule rule;
  private LongList<Tapping> list;
  private ThreadCards cards;
  private List<StockLine> stock = List.of();
  private Optional<ScrewThread> thread = Optional.empty();
  private Optional<DrillSize> chosen = Optional.empty();
  private boolean showing;

  ThreadsView(Composite parent, Desk desk, ThreadsBook book) {
    this.desk = desk;
    this.book = book;
    page = Layouts.page(parent, desk.look());
    Composite row = Layouts.flow(page);
    field = new ThreadField(row, desk, book.threads(), this::typed);
    wishes = new HoleWishes(row, desk, book.materials(), this::answer);
    answerLine = Layouts.answer(page, desk.look(), "Type a thread to see its drill");
    because = Layouts.text(page, desk.look(), "By any usual way of writing it: 2BA, M6 x 0.75.");
    near = Layouts.flow(page);
    Split split = new Split(page, desk, SWT.HORIZONTAL, ThreadsPage.ID, "cards");
    left(new Split(split.form(), desk, SWT.VERTICAL, ThreadsPage.ID, "drills"));
    cards = new ThreadCards(split.form(), desk, this::answer);
    split.share(64, 36);
    new CautionStrip(page, desk.look(), Cautions.DRILLING);
    desk.onLookChange(this::dress);
  }

  Control control() {
    return page;
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
    split.share(74, 26);
  }

  private void dress() {
    if (!page.isDisposed()) {
      rule.dress();
      list.refresh();
      answer();
    }
  }

  private void typed(String words) {
    Optional<ScrewThread> found = words.isBlank() ? Optional.empty() : book.threads().find(words);
    if (found.isPresent()) {
      if (!found.equals(thread)) {
        thread = found;
        chosen = Optional.empty();
      }
      field.found(found.get());
      desk.remember(ThreadsPage.ID, "thread", found.get().designation());
      offer(List.of());
      answer();
    } else if (!words.isBlank()) {
      List<ScrewThread> close = book.threads().near(words, NEAR);
      answerLine.setText(
          Layouts.escaped("\u201c" + words.strip() + "\u201d is no thread that is known"));
      because.setText(
          close.isEmpty()
              ? "Choose a series and a size beside the field."
              : "Was one of these meant?");
      offer(close);
    }
  }

  private void offer(List<ScrewThread> close) {
    for (Control child : near.getChildren()) {
      child.dispose();
    }
    for (ScrewThread each : close) {
      Button button =
          Layouts.button(
              near, desk.look(), each.designation(), () -> field.type(each.designation()));
      button.setLayoutData(null);
    }
    ((GridData) near.getLayoutData()).exclude = close.isEmpty();
    near.setVisible(!close.isEmpty());
    page.layout(true, true);
  }

  private void choose(DrillSize drill) {
    chosen = Optional.of(drill);
    answer();
  }

  private void selected(List<Tapping> rows) {
    if (!showing && !page.isDisposed()) {
      rows.stream().findFirst().ifPresent(row -> choose(row.drill()));
    }
  }

  /** Shows what is held now. */
  void stock(List<StockLine> lines) {
    if (!page.isDisposed()) {
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
      because.setText(Layouts.escaped(refused.getMessage()));
      because.setForeground(desk.look().bad());
    }
  }

  private ThreadQuestion question(ScrewThread asked) {
    return new ThreadQuestion(
        asked, wishes.percent(), wishes.material(), wishes.catalogue(), chosen, cards.blind());
  }

  private void show(ThreadAnswer answer) {
    showing = true;
    answerLine.setText(Layouts.escaped(TappingWords.answer(answer, desk.unit())));
    because.setText(Layouts.escaped(TappingWords.because(answer)));
    because.setForeground(desk.look().ink());
    Optional<DrillSize> drill = answer.chosen().map(Tapping::drill);
    profile.show(ProfileDrawing.of(answer.thread(), drill, desk.unit()));
    rule.show(Optional.of(answer));
    list.items(answer.choices());
    drill.ifPresent(list::select);
    cards.show(answer);
    page.layout(true, true);
    showing = false;
  }

  void type(String designation) {
    field.type(designation);
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

  void focus() {
    field.focus();
  }

  void print() {
    list.print("Tapping drills" + thread.map(t -> " for " + t.designation()).orElse(""));
  }
}
