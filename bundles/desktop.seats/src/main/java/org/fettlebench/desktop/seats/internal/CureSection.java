package org.fettlebench.desktop.seats.internal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.ScrollPane;
import org.fettlebench.desktop.widgets.Section;
import org.fettlebench.desktop.widgets.VerdictBadge;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatCure;
import org.fettlebench.fits.SeatWords;
import org.fettlebench.fits.Verdict;

/** What would cure the seat; a button draws it, another does it, Undo takes it back. */
final class CureSection {
  private static final int REST_MS = 250;

  private final Desk desk;
  private final Bench bench;
  private final SeatBook book;
  private final Section section;
  private Optional<SeatAnswer> curedFor = Optional.empty();
  private List<SeatCure> cures = List.of();
  private final Map<SeatCure, Button> looks = new LinkedHashMap<>();
  private int asked;

  CureSection(Composite parent, Desk desk, Bench bench, SeatBook book) {
    this.desk = desk;
    this.bench = bench;
    this.book = book;
    section = Form.section(parent, desk, "Cures");
    Layouts.present(section, false);
  }

  /** Looks for cures once the person rests; while dragging the old ones are gone. */
  void show() {
    Optional<SeatAnswer> answer = bench.reply().answer();
    looks.forEach(
        (cure, button) -> button.setSelection(bench.looking().filter(cure::equals).isPresent()));
    if (answer.equals(curedFor)) {
      return;
    }
    curedFor = answer;
    int mine = ++asked;
    if (!cures.isEmpty() || section.body().getChildren().length == 0) {
      cures = List.of();
      fill("");
    }
    Layouts.present(section, answer.filter(each -> each.verdict() != Verdict.CLEARS).isPresent());
    section.getDisplay().timerExec(REST_MS, () -> look(mine));
  }

  private void look(int mine) {
    Optional<SeatAnswer> answer = bench.reply().answer();
    boolean wanted = answer.filter(each -> each.verdict() != Verdict.CLEARS).isPresent();
    if (mine != asked || section.isDisposed() || !wanted) {
      return;
    }
    Sketch sketch = bench.sketch();
    desk.work(
        "Looking for cures",
        () -> book.cures(sketch, answer.get()),
        found -> {
          if (mine == asked && !section.isDisposed()) {
            cures = found;
            fill("Nothing at hand cures this; drag the centre, or measure again.");
          }
        });
  }

  private void fill(String none) {
    section.clear();
    looks.clear();
    Composite body = section.body();
    for (SeatCure cure : cures) {
      Composite words = Layouts.wide(Layouts.columns(body, 1));
      ((GridLayout) words.getLayout()).verticalSpacing = 1;
      Layouts.text(words, desk.look(), SeatWords.cure(cure, desk.unit()));
      Composite row = Layouts.wide(Layouts.columns(words, 3));
      VerdictBadge badge = new VerdictBadge(row, desk.look()).small();
      badge.show(SeatMarks.of(cure.after().verdict()), cure.after().verdict().word());
      Layouts.wide(badge);
      looks.put(cure, look(row, cure));
      Layouts.button(row, desk.look(), "Do it", () -> apply(cure));
    }
    if (cures.isEmpty() && !none.isEmpty()) {
      section.remark(none);
    }
    section.requestLayout();
    ScrollPane.around(section).ifPresent(ScrollPane::fit);
  }

  private Button look(Composite row, SeatCure cure) {
    Button look = new Button(row, SWT.TOGGLE);
    look.setFont(desk.look().text());
    look.setText("Show");
    look.setToolTipText("Draws the seat as it would be; nothing is changed yet");
    look.addListener(SWT.Selection, event -> looked(cure, look.getSelection()));
    return look;
  }

  /** Draws a cure without doing it, and back. */
  private void looked(SeatCure cure, boolean on) {
    bench.look(on ? Optional.of(cure) : Optional.empty());
    if (on) {
      desk.say("Drawn as if done; nothing is changed yet.", () -> bench.look(Optional.empty()));
    }
  }

  private void apply(SeatCure cure) {
    bench.apply(new Cured(book).change(cure));
    desk.say("Done: " + SeatWords.cure(cure, desk.unit()), bench.undoOfLast());
  }

  /** Returns where the section begins in its pane, pixels. */
  int top() {
    return section.getLocation().y;
  }

  /** Returns the button that draws a cure, for tests. */
  Button look(SeatCure cure) {
    return looks.get(cure);
  }

  /** Returns the cures shown, for tests. */
  List<SeatCure> cures() {
    return cures;
  }

  void unitChanged() {
    fill("");
  }
}
