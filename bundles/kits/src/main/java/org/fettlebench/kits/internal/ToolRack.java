package org.fettlebench.kits.internal;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.fettlebench.club.Goods;
import org.fettlebench.club.StockLine;
import org.fettlebench.kits.Joint;
import org.fettlebench.kits.JointReport.Fetch;
import org.fettlebench.kits.JointReport.Fetch.Role;
import org.fettlebench.kits.JointReport.Fetch.State;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.ClearanceChoice;
import org.fettlebench.tooling.ClearanceFit;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.HoleChooser.PercentWanted;
import org.fettlebench.tooling.TapLead;
import org.fettlebench.tooling.TappingChoice;

/** The drills and taps of the holdings: which will do, and whether they can be had. */
final class ToolRack {
  /**
   * A choice and how it can be had.
   *
   * @param choice what
   * @param state whether it can be had
   * @param from where
   */
  record Pick<T>(T choice, State state, String from) {}

  private static final String NOT_HELD = "to buy or borrow";

  /** The order in which a person would rather have a thing. */
  private static final List<State> BEST_FIRST = List.of(State.IN, State.OUT, State.WORN);

  private final Trade trade;
  private final List<StockLine> lines;
  private final Map<State, Map<DrillSize, StockLine>> drills = new TreeMap<>();
  private final Map<String, String> canonical = new HashMap<>();

  ToolRack(Trade trade, List<StockLine> lines) {
    this.trade = trade;
    this.lines =
        lines.stream()
            .sorted(Comparator.comparing(StockLine::place).thenComparing(StockLine::id))
            .toList();
    BEST_FIRST.forEach(state -> drills.put(state, new TreeMap<>()));
    for (StockLine line : this.lines) {
      State state = Held.state(line);
      if (line.goods().kind() == Goods.Kind.DRILL
          && line.goods().diameter().filter(d -> d.isPositive()).isPresent()
          && state != State.NOT_HELD) {
        DrillSize size = trade.drills().ofDiameter(line.goods().diameter().get());
        drills.get(state).putIfAbsent(size, line);
      }
    }
  }

  /** Returns the drills that are in their places and fit for use. */
  List<DrillSize> atHand() {
    return List.copyOf(drills.get(State.IN).keySet());
  }

  /** Returns the best drill for a hole to tap: one that is in, else out, else worn, else to buy. */
  Optional<Pick<TappingChoice>> tapping(ScrewThread thread, PercentWanted percent) {
    for (State state : BEST_FIRST) {
      Optional<TappingChoice> choice =
          trade.holes().tapping(thread, percent, drills.get(state).keySet()).stream()
              .filter(TappingRule::sound)
              .findFirst();
      if (choice.isPresent()) {
        return choice.map(found -> pick(found, found.drill(), state));
      }
    }
    List<TappingChoice> catalogue =
        trade.holes().tapping(thread, percent, trade.drills().catalogue());
    return catalogue.stream()
        .filter(TappingRule::sound)
        .findFirst()
        .or(() -> catalogue.stream().findFirst())
        .map(found -> new Pick<>(found, State.NOT_HELD, NOT_HELD));
  }

  /**
   * Returns the best drill for a hole to pass, in the same order. Where the lists have no hole of
   * that fit for the thread, the medium one is taken, or else the one they have.
   */
  Optional<Pick<ClearanceChoice>> clearance(ScrewThread thread, ClearanceFit asked) {
    Optional<ClearanceChoice> listed =
        trade.holes().clearance(thread, trade.drills().catalogue()).stream()
            .min(
                Comparator.comparing((ClearanceChoice choice) -> choice.fit() != asked)
                    .thenComparing(choice -> choice.fit() != ClearanceFit.MEDIUM)
                    .thenComparing(ClearanceChoice::fit));
    for (State state : BEST_FIRST) {
      Optional<ClearanceChoice> held =
          listed.flatMap(choice -> ofFit(thread, choice.fit(), drills.get(state).keySet()));
      if (held.isPresent()) {
        return held.map(found -> pick(found, found.drill(), state));
      }
    }
    return listed.map(found -> new Pick<>(found, State.NOT_HELD, NOT_HELD));
  }

  private Optional<ClearanceChoice> ofFit(
      ScrewThread thread, ClearanceFit fit, Collection<DrillSize> from) {
    return trade.holes().clearance(thread, from).stream()
        .filter(choice -> choice.fit() == fit)
        .filter(ClearanceRule::sound)
        .findFirst();
  }

  private <T> Pick<T> pick(T choice, DrillSize drill, State state) {
    return new Pick<>(choice, state, Held.from(drills.get(state).get(drill)));
  }

  /**
   * Returns the taps a hole needs: taper and second, and where the hole is blind those up to the
   * lead asked (common practice, no source).
   */
  List<Fetch> taps(ScrewThread thread, Joint.TappedHole hole) {
    return Arrays.stream(TapLead.values())
        .filter(
            lead ->
                hole.metal().isPresent()
                    ? lead.compareTo(hole.lead()) <= 0
                    : lead != TapLead.BOTTOMING)
        .map(lead -> tap(thread, lead.name().toLowerCase(Locale.ROOT)))
        .toList();
  }

  private String canonical(String designation) {
    return canonical.computeIfAbsent(designation, trade::canonical);
  }

  private Fetch tap(ScrewThread thread, String lead) {
    Optional<StockLine> line =
        lines.stream()
            .filter(each -> each.goods().kind() == Goods.Kind.TAP)
            .filter(each -> Held.state(each) != State.NOT_HELD)
            .filter(
                each ->
                    each.goods().style().equalsIgnoreCase(lead)
                        || each.goods().style().equalsIgnoreCase("set"))
            .filter(each -> canonical(each.goods().thread()).equals(thread.designation()))
            .min(Comparator.comparing(each -> BEST_FIRST.indexOf(Held.state(each))));
    String what = thread.designation() + " " + lead + " tap";
    return line.map(
            each ->
                new Fetch(
                    Role.TAP,
                    what,
                    Held.state(each),
                    Held.from(each),
                    each.goods().style().equalsIgnoreCase("set") ? "from a set" : ""))
        .orElseGet(() -> new Fetch(Role.TAP, what, State.NOT_HELD, NOT_HELD, ""));
  }
}
