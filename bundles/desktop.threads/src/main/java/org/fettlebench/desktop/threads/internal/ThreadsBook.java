package org.fettlebench.desktop.threads.internal;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fettlebench.club.Goods;
import org.fettlebench.club.StockLine;
import org.fettlebench.desktop.threads.internal.ThreadAnswer.Clearance;
import org.fettlebench.desktop.threads.internal.ThreadAnswer.Tapping;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.Tables;
import org.fettlebench.threads.DiameterLimits;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadLimits;
import org.fettlebench.threads.Threads;
import org.fettlebench.tooling.ClearanceChoice;
import org.fettlebench.tooling.ClearanceFit;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.Drills;
import org.fettlebench.tooling.HoleChooser;
import org.fettlebench.tooling.TapLead;
import org.fettlebench.tooling.TappingChoice;

/** Answers what is asked of threads and drills. Knows no window; for any thread of work. */
final class ThreadsBook {
  /** The usual point of a twist drill, degrees; common practice, no source. */
  private static final double POINT_DEGREES = 118;

  /** How far either side of what is wanted the rule of drills reaches, per cent of thread. */
  private static final double REACH_PERCENT = 30;

  /** What stands for the material where none is named. */
  private static final Set<String> NO_MATERIALS = Set.of("general", "none told");

  private final Threads threads;
  private final ThreadLimits limits;
  private final Drills drills;
  private final HoleChooser holes;
  private final Tables tables;

  ThreadsBook(
      Threads threads, ThreadLimits limits, Drills drills, HoleChooser holes, Tables tables) {
    this.threads = threads;
    this.limits = limits;
    this.drills = drills;
    this.holes = holes;
    this.tables = tables;
  }

  Threads threads() {
    return threads;
  }

  Drills drills() {
    return drills;
  }

  /** Returns the materials for which a per cent of thread is listed. */
  List<String> materials() {
    return tables.ofKind("thread-percent").stream()
        .flatMap(table -> table.rows().stream())
        .flatMap(row -> row.text("material").stream())
        .filter(material -> !NO_MATERIALS.contains(material))
        .distinct()
        .sorted()
        .toList();
  }

  /** Returns the drills that are held, smallest first. */
  List<DrillSize> held(List<StockLine> stock) {
    return List.copyOf(HeldDrills.of(stock, drills).sizes());
  }

  /** Returns where a drill is; empty when the club holds none. */
  Optional<String> where(DrillSize drill, List<StockLine> stock) {
    return HeldDrills.of(stock, drills).where(drill);
  }

  /**
   * Answers a question from what is held now.
   *
   * @throws MeasureException naming the figure that is outside its range
   */
  ThreadAnswer answer(ThreadQuestion question, List<StockLine> stock) {
    HeldDrills held = HeldDrills.of(stock, drills);
    ScrewThread thread = question.thread();
    HoleChooser.PercentWanted usual = holes.usualPercent(question.material());
    double wanted = question.percent().orElse(usual.percent());
    Collection<DrillSize> all = new TreeSet<>(drills.catalogue());
    all.addAll(held.sizes());
    List<TappingChoice> ranked =
        question.percent().isPresent()
            ? holes.tapping(thread, wanted, all)
            : holes.tapping(thread, usual, all);
    Optional<DiameterLimits> allowed = limits.minorOfNut(thread);
    List<Tapping> every = ranked.stream().map(choice -> tapping(choice, held, allowed)).toList();
    List<Tapping> choices = every.stream().filter(t -> question.catalogue() || t.held()).toList();
    List<Tapping> rule = rule(every, wanted);
    Optional<Tapping> chosen = chosen(question, choices, every);
    return new ThreadAnswer(
        question,
        wanted,
        question.percent().isPresent() ? Optional.empty() : Optional.of(usual.source()),
        allowed,
        choices,
        rule,
        chosen,
        holes.listed(thread),
        clearance(thread, all, held),
        question.blind().flatMap(blind -> chosen.map(drill -> blind(thread, drill.drill(), blind))),
        taps(thread, stock));
  }

  private static Tapping tapping(
      TappingChoice choice, HeldDrills held, Optional<DiameterLimits> allowed) {
    DrillSize drill = choice.drill();
    return new Tapping(
        choice,
        held.where(drill),
        held.ready(drill),
        allowed.flatMap(limits -> beyond(limits, drill.diameter())));
  }

  private static Optional<Length> beyond(DiameterLimits limits, Length hole) {
    if (limits.allow(hole)) {
      return Optional.empty();
    }
    boolean large = hole.compareTo(limits.most()) > 0;
    return Optional.of(hole.minus(large ? limits.most() : limits.least()));
  }

  private static List<Tapping> rule(List<Tapping> every, double wanted) {
    return every.stream()
        .filter(t -> Math.abs(t.choice().percentOfThread() - wanted) <= REACH_PERCENT)
        .sorted(Comparator.comparing(Tapping::drill))
        .toList();
  }

  /** The one looked at if it can be tapped after, else the best that can be used as it is. */
  private static Optional<Tapping> chosen(
      ThreadQuestion question, List<Tapping> choices, List<Tapping> every) {
    return question
        .chosen()
        .flatMap(drill -> every.stream().filter(t -> t.drill().equals(drill)).findFirst())
        .or(() -> sound(choices).filter(Tapping::ready).findFirst())
        .or(() -> sound(choices).findFirst())
        .or(() -> choices.stream().findFirst())
        .or(() -> every.stream().findFirst());
  }

  private static java.util.stream.Stream<Tapping> sound(List<Tapping> choices) {
    return choices.stream().filter(t -> t.choice().concern().isEmpty());
  }

  private List<Clearance> clearance(
      ScrewThread thread, Collection<DrillSize> all, HeldDrills held) {
    Map<ClearanceFit, ClearanceChoice> fromHeld = byFit(thread, held.sizes());
    Map<ClearanceFit, ClearanceChoice> fromAll = byFit(thread, all);
    return Arrays.stream(ClearanceFit.values())
        .filter(fromAll::containsKey)
        .map(fit -> fromHeld.getOrDefault(fit, fromAll.get(fit)))
        .map(
            c ->
                new Clearance(
                    c.fit(),
                    c.drill(),
                    c.listed(),
                    c.clearance(),
                    held.where(c.drill()),
                    c.source()))
        .toList();
  }

  private Map<ClearanceFit, ClearanceChoice> byFit(ScrewThread thread, Collection<DrillSize> from) {
    return holes.clearance(thread, from).stream()
        .collect(Collectors.toMap(ClearanceChoice::fit, Function.identity(), (a, b) -> a));
  }

  private ThreadAnswer.Blind blind(
      ScrewThread thread, DrillSize drill, ThreadQuestion.Blind blind) {
    HoleChooser.BlindHoleRequest asked =
        new HoleChooser.BlindHoleRequest(
            thread, drill, blind.fullThread(), blind.metal(), blind.lead(), POINT_DEGREES);
    return new ThreadAnswer.Blind(asked, holes.blindHole(asked));
  }

  private List<StockLine> taps(ScrewThread thread, List<StockLine> stock) {
    return stock.stream()
        .filter(line -> line.goods().kind() == Goods.Kind.TAP && line.quantity() > 0)
        .filter(line -> isOf(line.goods().thread(), thread))
        .sorted(Comparator.comparingInt(ThreadsBook::lead).thenComparingInt(Whereabouts::rank))
        .toList();
  }

  /** Returns which turn a tap has in the hole; a set or anything else comes after single taps. */
  private static int lead(StockLine tap) {
    for (TapLead lead : TapLead.values()) {
      if (lead.name().equalsIgnoreCase(tap.goods().style())) {
        return lead.ordinal();
      }
    }
    return TapLead.values().length;
  }

  private boolean isOf(String designation, ScrewThread thread) {
    return designation.equals(thread.designation())
        || threads
            .find(designation)
            .filter(found -> found.designation().equals(thread.designation()))
            .isPresent();
  }
}
