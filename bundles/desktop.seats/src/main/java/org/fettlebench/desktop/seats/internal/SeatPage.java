package org.fettlebench.desktop.seats.internal;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.fettlebench.club.KitShelf;
import org.fettlebench.club.MeasuredErrors;
import org.fettlebench.club.Stock;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.Page;
import org.fettlebench.desktop.widgets.Change;
import org.fettlebench.fasteners.Heads;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.HoleMethods;
import org.fettlebench.fits.SeatDrawings;
import org.fettlebench.fits.Seats;
import org.fettlebench.fits.Spanners;
import org.fettlebench.holes.correct.Corrections;
import org.fettlebench.holes.correct.HoleMeasuring;
import org.fettlebench.holes.otherface.OtherFaces;
import org.fettlebench.kits.ClubMethods;
import org.fettlebench.kits.KitFiles;
import org.fettlebench.paper.HoleCards;
import org.fettlebench.paper.SeatCards;
import org.fettlebench.threads.Threads;
import org.fettlebench.tooling.Drills;
import org.fettlebench.tooling.HoleChooser;
import org.osgi.framework.BundleContext;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;

/** Answers: will the head sit where the hole must go, and what when it is drilled already? */
@Component
public final class SeatPage implements Page {
  static final String ID = "seats";

  private final SeatBook book;
  private final SeatDrawings drawings;
  private final KitFiles files;
  private final Stock stock;
  private final KitShelf shelf;

  /** Whether the suite was opened to look round, so that the example is shown at once. */
  private final boolean demo;

  private volatile Optional<Corrections> corrections = Optional.empty();
  private volatile Optional<OtherFaces> faces = Optional.empty();
  private volatile Optional<HoleMeasuring> measuring = Optional.empty();
  private volatile Optional<SeatCards> cards = Optional.empty();
  private volatile Optional<HoleCards> holeCards = Optional.empty();
  private volatile Optional<ClubMethods> clubMethods = Optional.empty();
  private volatile Optional<MeasuredErrors> errors = Optional.empty();
  private volatile Optional<Spanners> spanners = Optional.empty();
  private Optional<SeatView> view = Optional.empty();
  private Optional<Desk> desk = Optional.empty();
  private Optional<Bench> bench = Optional.empty();
  private long known = -1;

  /** Takes what it asks. */
  @Activate
  @SuppressWarnings("checkstyle:ParameterNumber")
  public SeatPage(
      @Reference Threads threads,
      @Reference Heads heads,
      @Reference Drills drills,
      @Reference HoleChooser holes,
      @Reference HoleMethods methods,
      @Reference Seats seats,
      @Reference SeatDrawings drawings,
      @Reference KitFiles files,
      @Reference Stock stock,
      @Reference KitShelf shelf,
      BundleContext context) {
    this.book =
        new SeatBook(
            new SeatBook.Trade(threads, drills, holes, methods, seats, () -> spanners),
            new HeldHeads(heads, threads));
    this.drawings = drawings;
    this.files = files;
    this.stock = stock;
    this.shelf = shelf;
    this.demo = "demo".equals(context.getProperty("fettlebench.open"));
  }

  @Reference(cardinality = ReferenceCardinality.OPTIONAL, policy = ReferencePolicy.DYNAMIC)
  void setCorrections(Corrections service) {
    corrections = Optional.of(service);
  }

  void unsetCorrections(Corrections service) {
    corrections = Optional.empty();
  }

  @Reference(cardinality = ReferenceCardinality.OPTIONAL, policy = ReferencePolicy.DYNAMIC)
  void setFaces(OtherFaces service) {
    faces = Optional.of(service);
  }

  void unsetFaces(OtherFaces service) {
    faces = Optional.empty();
  }

  @Reference(cardinality = ReferenceCardinality.OPTIONAL, policy = ReferencePolicy.DYNAMIC)
  void setMeasuring(HoleMeasuring service) {
    measuring = Optional.of(service);
  }

  void unsetMeasuring(HoleMeasuring service) {
    measuring = Optional.empty();
  }

  @Reference(cardinality = ReferenceCardinality.OPTIONAL, policy = ReferencePolicy.DYNAMIC)
  void setCards(SeatCards service) {
    cards = Optional.of(service);
  }

  void unsetCards(SeatCards service) {
    cards = Optional.empty();
  }

  @Reference(cardinality = ReferenceCardinality.OPTIONAL, policy = ReferencePolicy.DYNAMIC)
  void setHoleCards(HoleCards service) {
    holeCards = Optional.of(service);
  }

  void unsetHoleCards(HoleCards service) {
    holeCards = Optional.empty();
  }

  @Reference(cardinality = ReferenceCardinality.OPTIONAL, policy = ReferencePolicy.DYNAMIC)
  void setClubMethods(ClubMethods service) {
    clubMethods = Optional.of(service);
  }

  void unsetClubMethods(ClubMethods service) {
    clubMethods = Optional.empty();
  }

  @Reference(cardinality = ReferenceCardinality.OPTIONAL, policy = ReferencePolicy.DYNAMIC)
  void setErrors(MeasuredErrors service) {
    errors = Optional.of(service);
  }

  void unsetErrors(MeasuredErrors service) {
    errors = Optional.empty();
  }

  @Reference(cardinality = ReferenceCardinality.OPTIONAL, policy = ReferencePolicy.DYNAMIC)
  void setSpanners(Spanners service) {
    spanners = Optional.of(service);
  }

  void unsetSpanners(Spanners service) {
    spanners = Optional.empty();
  }

  @Override
  public String id() {
    return ID;
  }

  @Override
  public String title() {
    return "Seat and hole";
  }

  @Override
  public int order() {
    return 20;
  }

  @Override
  public Control create(Composite parent, Desk newDesk) {
    Bench work = new Bench(book);
    work.begin(Draft.read(newDesk.remembered(ID, "draft", "")));
    Drawn drawn = new Drawn(book, drawings, () -> corrections, () -> faces);
    Papers papers = new Papers(book, drawn, drawings, () -> cards, () -> holeCards);
    SeatDeeds deeds = new SeatDeeds(newDesk, work, book, files, papers);
    SeatView made =
        new SeatView(
            parent, newDesk, work, new SidePanel.Parts(book, drawn, () -> measuring), deeds);
    if (demo && work.sketch().equals(Sketch.EMPTY)) {
      deeds.example();
    }
    deeds.draws(made.canvas()::drawing, made.canvas()::picture);
    deeds.views(made::choice);
    new SeatKeys(made, deeds).watch();
    desk = Optional.of(newDesk);
    bench = Optional.of(work);
    view = Optional.of(made);
    return made;
  }

  /** Takes in the stock and the club's measured errors as they are now, off the window's thread. */
  @Override
  public void refresh() {
    long now = stock.revision();
    desk.filter(place -> now != known)
        .ifPresent(
            place ->
                place.work(
                    "Looking at the stock",
                    stock::lines,
                    lines -> {
                      known = now;
                      book.heads().stock(lines);
                      bench.ifPresent(Bench::ask);
                    }));
    ClubWays ways = new ClubWays(clubMethods, errors);
    desk.ifPresent(place -> place.work("Looking at the measured holes", ways::now, this::measured));
  }

  private void measured(List<HoleMethod> methods) {
    if (!methods.isEmpty() && !methods.equals(book.methods())) {
      book.measured(methods);
      bench.ifPresent(Bench::ask);
    }
  }

  @Override
  public void focus() {
    view.filter(shown -> !shown.isDisposed()).ifPresent(SeatView::begin);
  }

  @Override
  public List<Found> find(String typed) {
    String wanted = typed.strip().toLowerCase(Locale.ROOT);
    Sketch sketch = bench.map(Bench::sketch).orElse(Sketch.EMPTY);
    String hay = ("seat and hole " + sketch.name()).toLowerCase(Locale.ROOT);
    return wanted.length() > 2 && hay.contains(wanted)
        ? List.of(
            new Found(
                ID,
                "",
                sketch.name().isBlank() ? title() : sketch.name(),
                "seat on the page Seat and hole"))
        : List.of();
  }

  /** Opens the seat of a joint, when the key names one: {@code joint:KIT/JOINT}. */
  @Override
  public void show(Found found) {
    Joints.Wanted wanted = Joints.wanted(found.key());
    if (wanted.joint().isEmpty()) {
      return;
    }
    Desk place = desk.orElseThrow();
    Joints joints = new Joints(files, shelf);
    place.work(
        "Reading the seat of " + wanted.joint(),
        () -> joints.sketch(wanted),
        read -> {
          if (read.isEmpty()) {
            place.complain("No seat was measured for " + wanted.joint() + ".");
          } else {
            bench
                .orElseThrow()
                .apply(Change.of("seat of " + wanted.joint() + " opened", before -> read.get()));
            place.say(
                "The seat of " + wanted.joint() + " is open; the kit itself is not changed.",
                bench.orElseThrow().undoOfLast());
          }
        });
  }

  @Override
  public boolean undo() {
    view.filter(shown -> !shown.isDisposed()).ifPresent(SeatView::undo);
    return view.isPresent();
  }

  @Override
  public void print() {
    view.ifPresent(shown -> shown.deeds().card());
  }

  @Override
  public void close() {
    view.filter(shown -> !shown.isDisposed()).ifPresent(SeatView::keep);
    view = Optional.empty();
    bench = Optional.empty();
    desk = Optional.empty();
  }
}
