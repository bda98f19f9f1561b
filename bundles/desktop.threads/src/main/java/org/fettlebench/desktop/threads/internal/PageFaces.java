package org.fettlebench.desktop.threads.internal;

import java.util.List;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.fettlebench.club.StockLine;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.threads.internal.compare.CompareView;
import org.fettlebench.desktop.threads.internal.identify.IdentifyView;
import org.fettlebench.desktop.threads.internal.pairs.PairsView;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.threads.ThreadSeries;
import org.fettlebench.tooling.DrillSize;

/** The page: its faces, of which one is shown, and what can be put on paper. */
final class PageFaces implements ThreadsView.Turns {
  private static final String HOLE = "hole";
  private static final String COMPARE = "compare";
  private static final String IDENTIFY = "identify";
  private static final String PAIRS = "pairs";

  private final Trade trade;
  private final Composite page;
  private final FaceBar bar;
  private final ThreadsView hole;
  private final CompareView compare;
  private final IdentifyView identify;
  private final PairsView pairs;

  PageFaces(Composite parent, Desk desk, Trade trade) {
    this.trade = trade;
    page = Layouts.page(parent, desk.look());
    ((org.eclipse.swt.layout.GridLayout) page.getLayout()).marginTop = -Layouts.GAP;
    Composite row = Layouts.wide(Layouts.columns(page, 3));
    Composite below = Layouts.fill(Layouts.columns(page, 1));
    bar = new FaceBar(row, below, desk);
    hole = new ThreadsView(below, desk, trade, this);
    String id = ThreadsPage.ID;
    identify =
        new IdentifyView(
            below,
            desk,
            id,
            trade.books().identifier(),
            trade.crossings(),
            this::compare,
            this::open);
    compare = new CompareView(below, desk, id, trade.crossings());
    pairs =
        new PairsView(
            below, desk, id, trade.books().identifier(), trade.crossings(), this::compare);
    bar.add(HOLE, "&Thread and hole", "A thread, its drills and all its figures", hole.control());
    bar.add(
        IDENTIFY, "&Identify", "Which thread is it, from what was measured", identify.control());
    bar.add(COMPARE, "Compare t&wo", "Two threads laid over each other", compare.control());
    bar.add(PAIRS, "&Pairs to mind", "All threads that could be crossed", pairs.control());
    WallChartDeed chart = new WallChartDeed(desk, trade, hole);
    Layouts.button(row, desk.look(), "Wall &chart \u2026", chart::ask);
    Layouts.button(row, desk.look(), "P&rint \u2026", this::print);
    ((GridData) row.getLayoutData()).heightHint = -1;
    bar.onChange(this::turned);
    bar.again();
  }

  Control control() {
    return page;
  }

  private void turned() {
    if (bar.shown().equals(PAIRS)) {
      pairs.refresh(
          trade.book().threads().series().stream()
              .map(ThreadSeries::threads)
              .flatMap(List::stream)
              .toList());
    }
  }

  @Override
  public void compare(String screw, String nut) {
    compare.put(screw, nut);
    bar.show(COMPARE);
    compare.focus();
  }

  @Override
  public boolean identify(String line) {
    boolean taken = identify.take(line);
    if (taken) {
      bar.show(IDENTIFY);
      identify.focus();
    }
    return taken;
  }

  private void open(String designation) {
    bar.show(HOLE);
    hole.type(designation);
    hole.focus();
  }

  void type(String designation) {
    hole.type(designation);
  }

  /** Shows a thread on the first face. */
  void show(String designation) {
    bar.show(HOLE);
    hole.type(designation);
  }

  void lookAt(DrillSize drill) {
    bar.show(HOLE);
    hole.lookAt(drill);
  }

  void stock(List<StockLine> lines) {
    hole.stock(lines);
  }

  void refresh() {
    hole.refresh();
    turned();
  }

  void focus() {
    switch (bar.shown()) {
      case COMPARE -> compare.focus();
      case IDENTIFY -> identify.focus();
      case PAIRS -> pairs.focus();
      default -> hole.focus();
    }
  }

  void print() {
    switch (bar.shown()) {
      case COMPARE -> compare.print();
      case IDENTIFY -> identify.print();
      case PAIRS -> pairs.print();
      default -> hole.print();
    }
  }
}
