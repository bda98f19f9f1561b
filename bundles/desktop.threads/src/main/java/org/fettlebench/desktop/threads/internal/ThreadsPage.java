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
import org.fettlebench.desktop.threads.internal.compare.CrossingBook;
import org.fettlebench.fasteners.HeadSinks;
import org.fettlebench.fasteners.Heads;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.paper.WallCharts;
import org.fettlebench.tables.Tables;
import org.fettlebench.threads.ThreadLimits;
import org.fettlebench.threads.Threads;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.Drills;
import org.fettlebench.tooling.HoleChooser;
import org.fettlebench.tooling.risk.TapRisks;
import org.fettlebench.tooling.speed.SpindleSpeeds;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;

/** How large is a thread, and which drill makes its hole? */
@Component
public final class ThreadsPage implements Page {
  static final String ID = "threads";

  private static final String DRILL = "drill ";

  private final ThreadsBook book;
  private final Trade trade;
  private final Stock stock;
  private volatile Optional<TapRisks> risks = Optional.empty();
  private volatile Optional<SpindleSpeeds> speeds = Optional.empty();
  private volatile Optional<Heads> heads = Optional.empty();
  private volatile Optional<HeadSinks> sinks = Optional.empty();
  private volatile Optional<WallCharts> charts = Optional.empty();
  private Desk desk;
  private PageFaces view;
  private long revision = -1;

  /** Made by Declarative Services. */
  @Activate
  public ThreadsPage(
      @Reference Threads threads,
      @Reference ThreadLimits limits,
      @Reference ThreadBooks books,
      @Reference Drills drills,
      @Reference HoleChooser holes,
      @Reference Tables tables,
      @Reference Stock stock) {
    this.book = new ThreadsBook(threads, limits, drills, holes, tables);
    this.trade =
        new Trade(
            book,
            new CrossingBook(threads, books.classes(), books.identifier()),
            books,
            () -> risks,
            () -> speeds,
            () -> heads,
            () -> sinks,
            () -> charts);
    this.stock = stock;
  }

  @Reference(cardinality = ReferenceCardinality.OPTIONAL, policy = ReferencePolicy.DYNAMIC)
  void setRisks(TapRisks service) {
    risks = Optional.of(service);
  }

  void unsetRisks(TapRisks service) {
    risks = risks.filter(held -> held != service);
  }

  @Reference(cardinality = ReferenceCardinality.OPTIONAL, policy = ReferencePolicy.DYNAMIC)
  void setSpeeds(SpindleSpeeds service) {
    speeds = Optional.of(service);
  }

  void unsetSpeeds(SpindleSpeeds service) {
    speeds = speeds.filter(held -> held != service);
  }

  @Reference(cardinality = ReferenceCardinality.OPTIONAL, policy = ReferencePolicy.DYNAMIC)
  void setHeads(Heads service) {
    heads = Optional.of(service);
  }

  void unsetHeads(Heads service) {
    heads = heads.filter(held -> held != service);
  }

  @Reference(cardinality = ReferenceCardinality.OPTIONAL, policy = ReferencePolicy.DYNAMIC)
  void setSinks(HeadSinks service) {
    sinks = Optional.of(service);
  }

  void unsetSinks(HeadSinks service) {
    sinks = sinks.filter(held -> held != service);
  }

  @Reference(cardinality = ReferenceCardinality.OPTIONAL, policy = ReferencePolicy.DYNAMIC)
  void setCharts(WallCharts service) {
    charts = Optional.of(service);
  }

  void unsetCharts(WallCharts service) {
    charts = charts.filter(held -> held != service);
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
    view = new PageFaces(parent, desk, trade);
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
      view.show(found.key());
    }
  }

  @Override
  public void print() {
    view.print();
  }
}
