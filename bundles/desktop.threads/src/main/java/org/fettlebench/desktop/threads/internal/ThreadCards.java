package org.fettlebench.desktop.threads.internal;

import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.fettlebench.club.StockLine;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.ScrollPane;
import org.fettlebench.desktop.widgets.Section;
import org.fettlebench.desktop.widgets.VerdictMark;

/** What stands beside the drawing: figures, clearance holes, taps, blind hole. */
final class ThreadCards {
  private final Desk desk;
  private final ScrollPane pane;
  private final Section figures;
  private final Section clearance;
  private final Section taps;
  private final BlindHoleCard blind;

  ThreadCards(Composite parent, Desk desk, Runnable asked) {
    this.desk = desk;
    pane = new ScrollPane(parent, desk.look());
    var grid = (org.eclipse.swt.layout.GridLayout) pane.body().getLayout();
    grid.marginLeft = Layouts.GAP;
    grid.marginRight = Layouts.GAP;
    grid.verticalSpacing = 0;
    figures = new Section(pane.body(), desk.look(), "The thread");
    clearance = new Section(pane.body(), desk.look(), "Clearance holes");
    taps = new Section(pane.body(), desk.look(), "Taps");
    blind = new BlindHoleCard(pane.body(), desk, asked);
  }

  Control control() {
    return pane;
  }

  /** Returns the blind hole asked for, when depth and metal are both there. */
  Optional<ThreadQuestion.Blind> blind() {
    return blind.asked();
  }

  void show(ThreadAnswer answer) {
    new ThreadFigures(desk.look(), desk.unit()).fill(figures.clear(), answer);
    showClearance(answer);
    showTaps(answer);
    blind.show(answer);
    pane.fit();
  }

  private void showClearance(ThreadAnswer answer) {
    clearance.clear();
    if (answer.clearance().isEmpty()) {
      clearance.text("No drill is large enough.");
    }
    answer
        .clearance()
        .forEach(
            hole ->
                clearance.point(
                    hole.where().isPresent() ? VerdictMark.TICK : VerdictMark.OPEN,
                    TappingWords.clearance(hole, desk.unit())));
    answer.clearance().stream()
        .map(hole -> TappingWords.source(hole.source()))
        .distinct()
        .forEach(clearance::remark);
  }

  private void showTaps(ThreadAnswer answer) {
    taps.clear();
    if (answer.taps().isEmpty()) {
      taps.point(VerdictMark.STRUCK, "No tap for " + answer.thread().designation() + " is held.");
    }
    for (StockLine tap : answer.taps()) {
      taps.point(
          Whereabouts.ready(tap) ? VerdictMark.TICK : VerdictMark.HALF,
          TappingWords.tap(tap) + ": " + Whereabouts.words(tap));
    }
  }
}
