package org.fettlebench.desktop.seats.internal;

import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.widgets.ScrollPane;
import org.fettlebench.holes.correct.HoleMeasuring;

/** Everything in figures, beside the drawing. */
final class SidePanel {
  private final Bench bench;
  private final ScrollPane pane;
  private final FlatSection flat;
  private final HeadSection head;
  private final HoleSection hole;
  private final CureSection cures;
  private final ThingsSection things;
  private final FoundSection found;

  /** What the page is made of. */
  record Parts(SeatBook book, Drawn drawn, Supplier<Optional<HoleMeasuring>> measuring) {}

  SidePanel(Composite parent, Desk desk, Bench bench, Parts parts) {
    this.bench = bench;
    pane = new ScrollPane(parent, desk.look());
    flat = new FlatSection(pane.body(), desk, bench);
    head = new HeadSection(pane.body(), desk, bench, parts.book());
    hole = new HoleSection(pane.body(), desk, bench, parts.book());
    cures = new CureSection(pane.body(), desk, bench, parts.book());
    things = new ThingsSection(pane.body(), desk, bench);
    found = new FoundSection(pane.body(), desk, bench, parts.book(), parts.measuring());
    flat.then(head.thread()::setFocus);
    GridLayout grid = (GridLayout) pane.body().getLayout();
    grid.verticalSpacing = 6;
    // A scroll bar that lies over the pane leaves the figures free.
    grid.marginRight = 8;
    pane.fit();
  }

  /** Shows the sketch of now; what a drag cannot change waits until it ends. */
  void show() {
    flat.show();
    things.show();
    hole.show();
    found.show();
    if (!bench.dragging()) {
      head.show();
      cures.show();
    }
  }

  /** Brings the cures into sight. */
  void showCures() {
    pane.setOrigin(0, cures.top());
  }

  void unitChanged() {
    flat.unitChanged();
    head.unitChanged();
    hole.unitChanged();
    cures.unitChanged();
    things.unitChanged();
    found.unitChanged();
    pane.fit();
  }

  FlatSection flat() {
    return flat;
  }

  HeadSection head() {
    return head;
  }

  HoleSection hole() {
    return hole;
  }

  CureSection cures() {
    return cures;
  }

  FoundSection found() {
    return found;
  }

  ThingsSection things() {
    return things;
  }

  ScrollPane pane() {
    return pane;
  }
}
