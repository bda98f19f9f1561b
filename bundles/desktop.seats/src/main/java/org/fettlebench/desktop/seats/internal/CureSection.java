package org.fettlebench.desktop.seats.internal;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.ScrollPane;
import org.fettlebench.desktop.widgets.Section;
import org.fettlebench.desktop.widgets.VerdictBadge;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatCure;
import org.fettlebench.fits.Verdict;
import org.fettlebench.measure.LengthFormat;

/** What would cure the seat; a button does it, Undo takes it back. */
final class CureSection {
  private static final int REST_MS = 250;

  private final Desk desk;
  private final Bench bench;
  private final SeatBook book;
  private final Section section;
  private Optional<SeatAnswer> curedFor = Optional.empty();
  private List<SeatCure> cures = List.of();
  private int asked;

  CureSection(Composite parent, Desk desk, Bench bench, SeatBook book) {
    this.desk = desk;
    this.bench = bench;
    this.book = book;
    section = new Section(parent, desk.look(), "Cures");
  }

  /** Looks for cures once the person rests; while dragging the old ones are gone. */
  void show() {
    Optional<SeatAnswer> answer = bench.reply().answer();
    if (answer.equals(curedFor)) {
      return;
    }
    curedFor = answer;
    int mine = ++asked;
    if (!cures.isEmpty() || section.body().getChildren().length == 0) {
      cures = List.of();
      fill("");
    }
    Form.present(section, answer.filter(each -> each.verdict() != Verdict.CLEARS).isPresent());
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
    Composite body = section.body();
    for (SeatCure cure : cures) {
      Composite row = Layouts.wide(Layouts.columns(body, 2));
      Composite words = Layouts.wide(Layouts.columns(row, 1));
      ((org.eclipse.swt.layout.GridLayout) words.getLayout()).verticalSpacing = 1;
      Layouts.text(words, desk.look(), LengthFormat.turned(cure.sentence(), desk.unit()));
      new VerdictBadge(words, desk.look())
          .small()
          .show(SeatWords.mark(cure.after().verdict()), SeatWords.then(cure.after(), desk.unit()));
      Layouts.button(row, desk.look(), "Do it", () -> apply(cure));
    }
    if (cures.isEmpty() && !none.isEmpty()) {
      section.remark(none);
    }
    section.requestLayout();
    ScrollPane.around(section).ifPresent(ScrollPane::fit);
  }

  private void apply(SeatCure cure) {
    bench.apply(new Cured(book).change(cure));
    desk.say(
        LengthFormat.turned(cure.sentence(), desk.unit()) + ": shown and applied.",
        bench.undoOfLast());
  }

  /** Returns where the section begins in its pane, pixels. */
  int top() {
    return section.getLocation().y;
  }

  /** Returns the cures shown, for tests. */
  List<SeatCure> cures() {
    return cures;
  }

  void unitChanged() {
    fill("");
  }
}
