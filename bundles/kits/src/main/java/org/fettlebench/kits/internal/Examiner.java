package org.fettlebench.kits.internal;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.fasteners.Head;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.holes.chance.MethodEstimate;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.Holdings;
import org.fettlebench.kits.Joint;
import org.fettlebench.kits.JointCase;
import org.fettlebench.kits.JointReport.Fetch;
import org.fettlebench.kits.Kit;
import org.fettlebench.kits.internal.ToolRack.Pick;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.BlindHole;
import org.fettlebench.tooling.ClearanceChoice;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.HoleChooser.BlindHoleRequest;
import org.fettlebench.tooling.HoleChooser.PercentWanted;
import org.fettlebench.tooling.TappingChoice;

/** Finds out all about a joint: thread, head, holes, seat; then asks the rules. */
final class Examiner {
  /** Usual jobber drills, common practice, no source. */
  private static final double POINT_ANGLE_DEGREES = 118;

  private final Trade trade;
  private final Odds odds;
  private final Kit kit;
  private final Holdings holdings;
  private final ToolRack rack;
  private final RuleBook rules;

  Examiner(Trade trade, Odds odds, Kit kit, Holdings holdings, RuleBook rules) {
    this.trade = trade;
    this.odds = odds;
    this.kit = kit;
    this.holdings = holdings;
    this.rack = new ToolRack(trade, holdings.lines());
    this.rules = rules;
  }

  Exam examine(Joint joint) {
    Optional<ScrewThread> thread = trade.threads().find(joint.fastener().thread());
    return thread
        .map(known -> examine(joint, known))
        .orElseGet(
            () ->
                Exam.refused(
                    joint,
                    Finding.of(
                        Finding.Weight.FAULT,
                        "thread",
                        joint.fastener().thread()
                            + " is no thread of a series known now. "
                            + trade.nearThreads(joint.fastener().thread()))));
  }

  private Exam examine(Joint joint, ScrewThread thread) {
    Optional<PercentWanted> percent = joint.tapped().map(this::percent);
    Optional<Pick<TappingChoice>> tapping =
        joint
            .tapped()
            .filter(hole -> hole.drilled().isEmpty())
            .flatMap(hole -> rack.tapping(thread, percent.orElseThrow()));
    Optional<Pick<ClearanceChoice>> clearance =
        joint
            .clearance()
            .filter(hole -> hole.drilled().isEmpty())
            .flatMap(hole -> rack.clearance(thread, hole.fit()));
    Optional<Head> head = trade.seatedHead(joint.fastener(), thread);
    Optional<HoleMethod> method = joint.method().flatMap(this::method);
    Optional<SeatAnswer> seat =
        head.flatMap(each -> seat(joint, each, method, hole(joint, thread, clearance)));
    JointCase known =
        new JointCase(
            kit,
            joint,
            thread,
            head,
            seat,
            percent
                .map(wanted -> trade.holes().tapping(thread, wanted, rack.atHand()))
                .orElse(List.of()),
            clearance.filter(pick -> pick.state() == Fetch.State.IN).map(Pick::choice),
            blindHole(joint, thread, tapping),
            holdings,
            method,
            percent);
    List<Fetch> taps = joint.tapped().map(hole -> rack.taps(thread, hole)).orElse(List.of());
    return new Exam(joint, Optional.of(known), tapping, clearance, taps, rules.look(known));
  }

  /** Returns a method as the club's own errors have made it, or as the tables have it. */
  private Optional<HoleMethod> method(String id) {
    return odds.methods().find(id, holdings.errors()).map(MethodEstimate::now);
  }

  private PercentWanted percent(Joint.TappedHole hole) {
    return hole.percent()
        .map(value -> new PercentWanted(value, new Source("as the kit says", Standing.PUBLISHED)))
        .orElseGet(() -> trade.holes().usualPercent(hole.material()));
  }

  /** Returns the hole through the seat: as drilled, as chosen, or the bare thread. */
  private static Length hole(
      Joint joint, ScrewThread thread, Optional<Pick<ClearanceChoice>> clearance) {
    return joint
        .clearance()
        .flatMap(Joint.ClearanceHole::drilled)
        .or(() -> clearance.map(pick -> pick.choice().drill().diameter()))
        .orElse(thread.major());
  }

  private Optional<SeatAnswer> seat(
      Joint joint, Head head, Optional<HoleMethod> method, Length hole) {
    return joint.seat().isEmpty() || method.isEmpty()
        ? Optional.empty()
        : Optional.of(
            trade
                .seats()
                .check(
                    new SeatQuestion(
                        joint.seat().get(),
                        joint.dress().on(Expected.seated(head, OptionalDouble.empty())),
                        hole.millimetres(),
                        method.get().errorRadiusMm(kit.confidence()),
                        Expected.means(method.get(), kit.confidence()))));
  }

  private Optional<BlindHole> blindHole(
      Joint joint, ScrewThread thread, Optional<Pick<TappingChoice>> tapping) {
    Optional<Joint.TappedHole> hole = joint.tapped().filter(each -> each.metal().isPresent());
    Optional<DrillSize> drill =
        hole.flatMap(Joint.TappedHole::drilled)
            .map(trade.drills()::ofDiameter)
            .or(() -> tapping.map(pick -> pick.choice().drill()));
    return hole.isEmpty() || drill.isEmpty()
        ? Optional.empty()
        : Optional.of(
            trade
                .holes()
                .blindHole(
                    new BlindHoleRequest(
                        thread,
                        drill.get(),
                        hole.get().fullThread(),
                        hole.get().metal().orElseThrow(),
                        hole.get().lead(),
                        POINT_ANGLE_DEGREES)));
  }
}
