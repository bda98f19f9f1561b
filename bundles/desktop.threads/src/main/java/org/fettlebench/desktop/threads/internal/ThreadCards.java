package org.fettlebench.desktop.threads.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.fettlebench.club.StockLine;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.threads.internal.folds.HeadsFold;
import org.fettlebench.desktop.threads.internal.folds.LimitsFold;
import org.fettlebench.desktop.threads.internal.folds.ListsFold;
import org.fettlebench.desktop.threads.internal.folds.Looked;
import org.fettlebench.desktop.threads.internal.folds.NearFold;
import org.fettlebench.desktop.threads.internal.folds.RiskFold;
import org.fettlebench.desktop.threads.internal.folds.SpeedFold;
import org.fettlebench.desktop.threads.internal.folds.StrengthFold;
import org.fettlebench.desktop.threads.internal.folds.WiresFold;
import org.fettlebench.desktop.threads.internal.sheet.FigureTable;
import org.fettlebench.desktop.threads.internal.sheet.Fold;
import org.fettlebench.desktop.threads.internal.sheet.TableCanvas;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.desktop.widgets.ScrollPane;
import org.fettlebench.tooling.DrillSize;

/** What stands beside the drawing, fold under fold, each with its answer in its head. */
final class ThreadCards {
  private final Desk desk;
  private final Trade trade;
  private final ScrollPane pane;
  private final Fold sizes;
  private final TableCanvas sizesTable;
  private final Label sizesSources;
  private final ListsFold lists;
  private final Fold clearance;
  private final TableCanvas clearanceTable;
  private final Label clearanceSources;
  private final Fold taps;
  private final TableCanvas tapsTable;
  private final BlindHoleCard blind;
  private final LimitsFold limits;
  private final StrengthFold strength;
  private final RiskFold risk;
  private final SpeedFold speed;
  private final HeadsFold heads;
  private final WiresFold wires;
  private final NearFold near;

  ThreadCards(
      Composite parent,
      Desk desk,
      Trade trade,
      Runnable asked,
      BiConsumer<String, String> compare) {
    this.desk = desk;
    this.trade = trade;
    String id = ThreadsPage.ID;
    pane = new ScrollPane(parent, desk.look());
    var grid = (org.eclipse.swt.layout.GridLayout) pane.body().getLayout();
    grid.marginLeft = Layouts.GAP;
    grid.marginRight = Layouts.GAP;
    grid.verticalSpacing = 0;
    Composite body = pane.body();
    sizes = new Fold(body, desk, id, "sizes", "The thread", true);
    sizesTable = new TableCanvas(sizes.body(), desk);
    sizesSources = sizes.remarks();
    lists = new ListsFold(body, desk, id);
    clearance = new Fold(body, desk, id, "clearance", "Clearance holes", true);
    clearanceTable = new TableCanvas(clearance.body(), desk);
    clearanceSources = clearance.remarks();
    taps = new Fold(body, desk, id, "taps", "Taps", true);
    tapsTable = new TableCanvas(taps.body(), desk);
    blind = new BlindHoleCard(body, desk, asked);
    limits = new LimitsFold(body, desk, id, trade.books().classes());
    near = new NearFold(body, desk, id, compare);
    strength =
        new StrengthFold(body, desk, id, trade.books().materials(), trade.books().strength());
    risk = new RiskFold(body, desk, id, trade.risks());
    speed = new SpeedFold(body, desk, id, trade.speeds());
    heads = new HeadsFold(body, desk, id, trade.heads(), trade.sinks());
    wires = new WiresFold(body, desk, id, trade.books().wires(), trade.books().classes());
  }

  /** Returns the blind hole asked for, when depth and metal are both there. */
  Optional<ThreadQuestion.Blind> blind() {
    return blind.asked();
  }

  void show(ThreadAnswer answer, List<DrillSize> held) {
    sizesTable.show(ThreadFigures.sizes(answer, desk.unit()));
    sizes.summary(answer.thread().form().title());
    Fold.tell(sizesSources, ThreadFigures.sources(answer));
    lists.show(answer.listed());
    showClearance(answer);
    showTaps(answer);
    blind.show(answer);

    Looked looked =
        new Looked(answer.thread(), answer.chosen().map(ThreadAnswer.Tapping::drill), held);
    limits.show(answer.thread());
    near.show(answer.thread(), trade.crossings().pairsOf(answer.thread()));
    strength.show(looked);
    risk.show(looked);
    speed.show(looked);
    heads.show(looked);
    wires.show(looked);

    fit();
  }

  /** Gives the folds their height; what did not change is not measured again. */
  private void fit() {
    int width = pane.getClientArea().width;
    if (width > 0) {
      pane.setMinHeight(pane.body().computeSize(width, SWT.DEFAULT, false).y);
    }
  }

  private void showClearance(ThreadAnswer answer) {
    clearanceTable.show(ThreadFigures.clearance(answer, desk.unit()));
    clearance.summary(
        answer.clearance().stream()
            .findFirst()
            .map(hole -> TappingWords.fit(hole) + " " + hole.drill().name())
            .orElse("no drill is large enough"));
    Fold.tell(
        clearanceSources,
        answer.clearance().stream()
            .map(hole -> TappingWords.source(hole.source()))
            .distinct()
            .toArray(String[]::new));
  }

  private void showTaps(ThreadAnswer answer) {
    FigureTable.Maker maker = FigureTable.of("where");
    answer.taps().forEach(tap -> maker.row(TappingWords.tap(tap), Whereabouts.words(tap)));
    if (answer.taps().isEmpty()) {
      maker.row("No tap for " + answer.thread().designation() + " is held.");
    }
    tapsTable.show(maker.made());
    long ready = answer.taps().stream().filter(Whereabouts::ready).count();
    taps.summary(summary(answer.taps(), ready));
  }

  private static String summary(List<StockLine> held, long ready) {
    return held.isEmpty()
        ? "none held"
        : ready == held.size() ? held.size() + " held" : ready + " of " + held.size() + " ready";
  }

  /** Returns everything that is open or always there, for the sheet of the thread. */
  List<ThreadSheet.Part> parts() {
    List<ThreadSheet.Part> parts = new ArrayList<>();
    parts.add(new ThreadSheet.Part("The thread", sizesTable.table()));
    parts.add(new ThreadSheet.Part("What lists name", lists.table()));
    parts.add(new ThreadSheet.Part("Clearance holes", clearanceTable.table()));
    parts.add(new ThreadSheet.Part("Taps", tapsTable.table()));
    parts.add(new ThreadSheet.Part("Blind hole", blind.table()));
    parts.add(new ThreadSheet.Part("Limits", limits.table()));
    parts.add(new ThreadSheet.Part("Strength", strength.table()));
    parts.add(new ThreadSheet.Part("Tap risk", risk.table()));
    parts.add(new ThreadSheet.Part("Spindle speed", speed.table()));
    parts.add(new ThreadSheet.Part("Sinking a head", heads.table()));
    parts.add(new ThreadSheet.Part("Over wires", wires.table()));
    return parts;
  }
}
