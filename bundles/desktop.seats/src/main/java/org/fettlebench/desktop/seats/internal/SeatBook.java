package org.fettlebench.desktop.seats.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.fettlebench.club.Goods;
import org.fettlebench.club.StockLine;
import org.fettlebench.desktop.seats.internal.Sketch.Measured;
import org.fettlebench.fasteners.Head;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.HoleMethods;
import org.fettlebench.fits.Reach;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatCure;
import org.fettlebench.fits.SeatException;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatWords;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Seats;
import org.fettlebench.fits.Spanner;
import org.fettlebench.fits.Spanners;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.Point;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.Threads;
import org.fettlebench.tooling.ClearanceChoice;
import org.fettlebench.tooling.ClearanceFit;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.Drills;
import org.fettlebench.tooling.HoleChooser;

/** Turns a sketch into a question and has it answered; knows no window. */
final class SeatBook {
  private static final String CHOOSE_HEAD =
      "Choose the thread and the head that shall sit here (2), or give a head as measured.";

  private final Trade trade;
  private final HeldHeads heads;
  private volatile List<HoleMethod> measured = List.of();
  private Proposed lastProposed = new Proposed("", List.of(), Optional.empty());

  /** The services asked. */
  record Trade(
      Threads threads,
      Drills drills,
      HoleChooser holes,
      HoleMethods methods,
      Seats seats,
      Supplier<Optional<Spanners>> spanners) {}

  SeatBook(Trade trade, HeldHeads heads) {
    this.trade = trade;
    this.heads = heads;
  }

  HeldHeads heads() {
    return heads;
  }

  Optional<ScrewThread> thread(String designation) {
    return designation.isBlank() ? Optional.empty() : trade.threads().find(designation);
  }

  /** Returns threads for a person to choose from: held ones first, then every series. */
  List<String> threadNames() {
    List<String> names = new ArrayList<>(heads.threadsHeld());
    trade.threads().series().stream()
        .flatMap(series -> series.threads().stream())
        .map(ScrewThread::designation)
        .filter(name -> !names.contains(name))
        .forEach(names::add);
    return names.stream().distinct().toList();
  }

  /** Returns the ways of placing a hole, least careful first. */
  List<HoleMethod> methods() {
    return measured.isEmpty() ? trade.methods().methods() : measured;
  }

  /** Takes the ways of placing a hole as the club's measured errors have made them. */
  void measured(List<HoleMethod> methods) {
    measured = List.copyOf(methods);
  }

  /** Returns the way chosen; the least careful one while none is, since it promises least. */
  Optional<HoleMethod> method(Sketch sketch) {
    String id = sketch.hole().method();
    Optional<HoleMethod> chosen =
        methods().stream().filter(method -> method.id().equals(id)).findFirst();
    return chosen.isPresent() ? chosen : methods().stream().findFirst();
  }

  /** Returns what sits on the flat, as far as it is chosen. */
  Optional<SeatedHead> head(Sketch sketch) {
    Sketch.Top top = sketch.top();
    Optional<SeatedHead> bare =
        top.measured().isPresent()
            ? top.measured().flatMap(head -> measured(head, top.flatsAlongDegrees()))
            : thread(top.thread())
                .flatMap(thread -> heads.find(top.style(), thread))
                .map(head -> seated(head, top.flatsAlongDegrees()));
    Optional<SeatedHead> washered =
        bare.map(head -> top.washer().map(head::withWasher).orElse(head));
    return washered.map(head -> top.spanner().map(head::withSpanner).orElse(head));
  }

  /** Returns the tool of a kind for the head that sits there; absent for a round one. */
  Optional<Spanner> spanner(Spanner.Kind kind, Sketch sketch) {
    OptionalDouble flats =
        head(sketch).map(SeatedHead::acrossFlatsMm).orElse(OptionalDouble.empty());
    return flats.isPresent()
        ? trade.spanners().get().flatMap(all -> all.find(kind, flats.getAsDouble()))
        : Optional.empty();
  }

  static SeatedHead seated(Head head, OptionalDouble along) {
    return new SeatedHead(
        head.title(),
        head.acrossCorners().millimetres(),
        millimetres(head.acrossFlats()),
        millimetres(head.height()),
        head.acrossFlats().isPresent() ? along : OptionalDouble.empty(),
        millimetres(head.washerFace()),
        Optional.empty(),
        Optional.empty(),
        head.source().doubt().orElse(""));
  }

  private static OptionalDouble millimetres(Optional<Length> length) {
    return length.isPresent()
        ? OptionalDouble.of(length.get().millimetres())
        : OptionalDouble.empty();
  }

  private static Optional<SeatedHead> measured(Measured head, OptionalDouble along) {
    OptionalDouble flats = head.acrossFlatsMm();
    double corners =
        head.acrossCornersMm()
            .orElseGet(() -> flats.isPresent() ? flats.getAsDouble() / Math.cos(Math.PI / 6) : 0);
    return corners > 0 && corners >= flats.orElse(0)
        ? Optional.of(
            new SeatedHead(
                head.title(),
                corners,
                flats,
                head.heightMm(),
                flats.isPresent() ? along : OptionalDouble.empty(),
                ""))
        : Optional.empty();
  }

  /** What was proposed last: it is asked for at every move of the pointer. */
  private record Proposed(String thread, List<StockLine> stock, Optional<ClearanceChoice> choice) {}

  /** Returns the hole proposed for the thread: medium, by a drill at hand where there is one. */
  Optional<ClearanceChoice> proposed(Sketch sketch) {
    Proposed last = lastProposed;
    String thread = sketch.top().thread();
    if (!last.thread().equals(thread) || last.stock() != heads.lines()) {
      last = new Proposed(thread, heads.lines(), propose(thread));
      lastProposed = last;
    }
    return last.choice();
  }

  private Optional<ClearanceChoice> propose(String designation) {
    return thread(designation)
        .flatMap(
            each -> {
              Optional<ClearanceChoice> held = medium(each, drillsHeld());
              return held.isPresent() ? held : medium(each, trade.drills().catalogue());
            });
  }

  private Optional<ClearanceChoice> medium(ScrewThread thread, List<DrillSize> drills) {
    List<ClearanceChoice> all =
        drills.isEmpty() ? List.of() : trade.holes().clearance(thread, drills);
    return all.stream().min(Comparator.comparing(choice -> choice.fit() != ClearanceFit.MEDIUM));
  }

  /** Returns the drills that the club has in good condition. */
  List<DrillSize> drillsHeld() {
    return heads.lines().stream()
        .filter(line -> line.goods().kind() == Goods.Kind.DRILL)
        .filter(line -> line.condition() == StockLine.Condition.GOOD && line.present() > 0)
        .flatMap(line -> line.goods().diameter().stream())
        .map(trade.drills()::ofDiameter)
        .distinct()
        .sorted()
        .toList();
  }

  OptionalDouble diameterMm(Sketch sketch) {
    return sketch.hole().diameterMm().isPresent()
        ? sketch.hole().diameterMm()
        : proposed(sketch)
            .map(choice -> OptionalDouble.of(choice.drill().diameter().millimetres()))
            .orElse(OptionalDouble.empty());
  }

  /** Answers a sketch, or says what is missing or wrong. */
  Reply ask(Sketch sketch) {
    Shape shape = sketch.shape();
    if (!shape.drawable()) {
      return shape.stations().used()
          ? Reply.missing(shape.stations().trouble())
          : Reply.missing("Three corners at least make an outline.");
    }
    Optional<SeatedHead> head = head(sketch);
    if (head.isEmpty()) {
      return Reply.missing(CHOOSE_HEAD);
    }
    OptionalDouble diameter = diameterMm(sketch);
    if (diameter.isEmpty()) {
      return Reply.missing("Give the diameter of the hole: no list has one for this thread.");
    }
    Optional<HoleMethod> method = method(sketch);
    if (method.isEmpty()) {
      return Reply.missing("No way of placing a hole is installed; see the page Modules.");
    }
    try {
      return Reply.of(trade.seats().check(question(sketch, head.get(), method.get())));
    } catch (SeatException refused) {
      return Reply.refused(refused.getMessage());
    }
  }

  private SeatQuestion question(Sketch sketch, SeatedHead head, HoleMethod method) {
    double confidence = sketch.hole().confidence();
    return new SeatQuestion(
        seat(sketch),
        head,
        diameterMm(sketch).orElseThrow(),
        method.errorRadiusMm(confidence),
        method.errorMeans(confidence));
  }

  /** Returns the seat of a sketch that has an outline. */
  static Seat seat(Sketch sketch) {
    Shape shape = sketch.shape();
    Point centre = sketch.centre().orElseThrow();
    return new Seat(
        sketch.name().isBlank() ? "seat" : sketch.name(),
        shape.outline(shape.corners()),
        shape.underside().map(shape::outline),
        shape.walls(),
        shape.cavities().stream().map(shape::outline).toList(),
        shape.neighbours(),
        centre,
        shape.leastMetalMm());
  }

  /** Returns other heads of the same thread as they would sit, held ones first. */
  List<SeatedHead> others(Sketch sketch) {
    Optional<ScrewThread> thread = thread(sketch.top().thread());
    return thread.map(heads::of).orElse(List.of()).stream()
        .filter(held -> !held.head().style().equals(sketch.top().style()))
        .map(held -> seated(held.head(), OptionalDouble.empty()))
        .toList();
  }

  /** Returns how far the hole may be out each way. */
  List<Reach> rose(SeatAnswer answer) {
    return trade.seats().rose(answer.question(), SeatWords.DIRECTIONS);
  }

  /** Returns the chance that a hole placed as chosen will do; empty when no way is installed. */
  OptionalDouble chance(Sketch sketch, SeatAnswer answer) {
    return method(sketch)
        .map(each -> each.law().chanceWithin(answer.allowed(), answer.question().seat().intended()))
        .map(OptionalDouble::of)
        .orElse(OptionalDouble.empty());
  }

  /** Returns what would cure a seat, each already checked. */
  List<SeatCure> cures(Sketch sketch, SeatAnswer answer) {
    return trade.seats().cures(answer, others(sketch), methods(), sketch.hole().confidence());
  }
}
