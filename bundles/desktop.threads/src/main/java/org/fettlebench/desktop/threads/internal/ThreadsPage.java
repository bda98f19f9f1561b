package org.fettlebench.desktop.threads.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.Page;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.tables.Tables;
import org.fettlebench.threads.ThreadLimits;
import org.fettlebench.threads.Threads;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.Drills;
import org.fettlebench.tooling.HoleChooser;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** How large is a thread, and which drill makes its hole? */
@Component
public final class ThreadsPage implements Page {
  static final String ID = "threads";

  private static final String DRILL = "drill ";

  private final ThreadsBook book;
  private final Stock stock;
  private Desk desk;
  private ThreadsView view;
  private long revision = -1;

  /** Made by Declarative Services. */
  @Activate
  public ThreadsPage(
      @Reference Threads threads,
      @Reference ThreadLimits limits,
      @Reference Drills drills,
      @Reference HoleChooser holes,
      @Reference Tables tables,
      @Reference Stock stock) {
    this.book = new ThreadsBook(threads, limits, drills, holes, tables);
    this.stock = stock;
  }

  @Override
  public String id() {
    return ID;
  }

  @Override
  public String title() {
    return "Threads and drills";
  }

  @Override
  public int order() {
    return 30;
  }

  @Override
  public Control create(Composite parent, Desk newDesk) {
    desk = newDesk;
    revision = -1;
    view = new ThreadsView(parent, desk, book);
    view.type(desk.remembered(ID, "thread", "2 BA"));
    return view.control();
  }

  @Override
  public void refresh() {
    if (stock.revision() != revision) {
      desk.work("Looking up what is held", this::read, this::take);
    } else {
      view.refresh();
    }
  }

  private record Reading(long revision, List<StockLine> lines) {}

  private Reading read() {
    // Asked before the lines are read: a change in between is then seen at the next look.
    long now = stock.revision();
    return new Reading(now, stock.lines());
  }

  private void take(Reading reading) {
    revision = reading.revision();
    view.stock(reading.lines());
  }

  @Override
  public void focus() {
    view.focus();
  }

  @Override
  public List<Found> find(String typed) {
    List<Found> found = new ArrayList<>();
    book.threads()
        .find(typed)
        .ifPresent(
            thread ->
                found.add(
                    new Found(
                        ID, thread.designation(), thread.designation(), "thread and its drills")));
    drill(typed)
        .ifPresent(
            drill ->
                found.add(
                    new Found(
                        ID,
                        DRILL + drill.name(),
                        String.join(" = ", drill.names()),
                        "drill, "
                            + LengthFormat.showBoth(drill.diameter(), LengthUnit.MILLIMETRE))));
    return found;
  }

  private Optional<DrillSize> drill(String typed) {
    return book.drills().find(typed.replaceFirst("(?i)^\\s*drill\\s+|\\s+drill\\s*$", ""));
  }

  @Override
  public void show(Found found) {
    if (found.key().startsWith(DRILL)) {
      book.drills().find(found.key().substring(DRILL.length())).ifPresent(view::lookAt);
    } else {
      view.type(found.key());
    }
  }

  @Override
  public void print() {
    view.print();
  }
}
