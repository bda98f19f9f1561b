package org.fettlebench.holes.internal.correct;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Verdict;
import org.fettlebench.holes.correct.CorrectionAnswer.WayOut;
import org.fettlebench.holes.correct.CorrectionQuestion;
import org.fettlebench.holes.correct.CorrectionQuestion.Found;
import org.fettlebench.holes.correct.CorrectionQuestion.Rules;
import org.fettlebench.holes.correct.Cutter;
import org.fettlebench.holes.correct.ExpectedError;
import org.fettlebench.holes.internal.Say;
import org.fettlebench.measure.Point;
import org.fettlebench.measure.Tolerances;

/** What remains possible besides filing to the target; nothing is offered that fouls again. */
final class WaysOut {
  private final Situation situation;
  private final CorrectionQuestion question;
  private final Found found;
  private final Rules rules;

  WaysOut(Situation situation) {
    this.situation = situation;
    this.question = situation.question();
    this.found = question.found();
    this.rules = question.rules();
  }

  /**
   * Returns the ways, those that clear first.
   *
   * @param all whether what costs more than moving the mating hole is asked for too
   */
  List<WayOut> find(boolean all) {
    List<WayOut> ways = new ArrayList<>();
    moveMate().ifPresent(ways::add);
    if (all) {
      filePart().ifPresent(ways::add);
      otherHead().ifPresent(ways::add);
      held(question.tools(), this::biggerHole).ifPresent(ways::add);
      held(question.tools(), this::bush).ifPresent(ways::add);
    }
    ways.sort(Comparator.comparingInt(WaysOut::rank));
    return ways;
  }

  private static int rank(WayOut way) {
    return way.after().map(SeatAnswer::verdict).map(Verdict::ordinal).orElse(0);
  }

  private static boolean sits(Optional<SeatAnswer> after) {
    return after.map(SeatAnswer::verdict).filter(Verdict.FOULS::equals).isEmpty();
  }

  private Optional<WayOut> moveMate() {
    Optional<SeatAnswer> after = situation.asIs();
    if (!question.around().mateOpen() || !sits(after)) {
      return Optional.empty();
    }
    double dx = found.centre().xMm() - question.target().xMm();
    double dy = found.centre().yMm() - question.target().yMm();
    return Optional.of(
        new WayOut(
            WayOut.Kind.MOVE_MATE,
            "leave the hole where it is and spot the mating hole through it, "
                + Say.small(Math.hypot(dx, dy))
                + " "
                + situation.error().orElseThrow().words()
                + " as seen from this face"
                + outcome(after),
            found.centre(),
            question.finishDiameterMm(),
            Optional.empty(),
            after));
  }

  private Optional<WayOut> filePart() {
    double curable = situation.curableMm();
    double left = situation.errorMm() - curable;
    if (!(curable > 0 && left > Tolerances.GEOMETRY_SLACK_MM)) {
      return Optional.empty();
    }
    Point centre = situation.towardsTarget(curable);
    Optional<SeatAnswer> after =
        situation.check(centre, question.finishDiameterMm(), situation.afterFiling());
    return sits(after)
        ? Optional.of(
            new WayOut(
                WayOut.Kind.FILE_PART,
                "file "
                    + Say.small(2 * curable)
                    + " off the side towards "
                    + situation.error().orElseThrow().opposite()
                    + ": that brings the hole "
                    + Say.small(curable)
                    + " nearer, "
                    + Say.small(left)
                    + " remain"
                    + outcome(after),
                centre,
                question.finishDiameterMm(),
                Optional.empty(),
                after))
        : Optional.empty();
  }

  private Optional<WayOut> otherHead() {
    Optional<SeatQuestion> seat = question.around().seat();
    if (seat.isEmpty()) {
      return Optional.empty();
    }
    return question.around().otherHeads().stream()
        .filter(head -> head.bearsOnMm() > question.finishDiameterMm())
        .map(head -> otherHead(seat.get(), head))
        .filter(way -> sits(way.after()))
        .min(Comparator.comparingInt(WaysOut::rank));
  }

  private WayOut otherHead(SeatQuestion seat, SeatedHead head) {
    SeatAnswer after =
        situation.check(
            seat, head, found.centre(), question.finishDiameterMm(), situation.asMeasured());
    return new WayOut(
        WayOut.Kind.OTHER_HEAD,
        "leave the hole where it is and use "
            + head.title()
            + (head.caveat().isEmpty() ? "" : " (figures " + head.caveat() + ")")
            + outcome(Optional.of(after)),
        found.centre(),
        question.finishDiameterMm(),
        Optional.empty(),
        Optional.of(after));
  }

  /** Tries a way with the drills at hand, and with what can be bought when none of them will do. */
  private static Optional<WayOut> held(
      CorrectionQuestion.Tools tools, BiFunction<List<Cutter>, Boolean, Optional<WayOut>> way) {
    return way.apply(tools.drills(), true).or(() -> way.apply(tools.catalogue(), false));
  }

  private Optional<WayOut> biggerHole(List<Cutter> drills, boolean atHand) {
    double out = situation.errorMm() + found.withinMm() + rules.cleanUp().perSideMm();
    double larger = question.finishDiameterMm() + 2 * Tolerances.GEOMETRY_SLACK_MM;
    Optional<Cutter> fitting = smallest(drills, Math.max(found.diameterMm() + 2 * out, larger));
    if (fitting.isEmpty() || !(fitting.get().diameterMm() < bearingMm())) {
      return Optional.empty();
    }
    double diameter = fitting.get().diameterMm();
    Optional<SeatAnswer> after =
        situation.check(question.target(), diameter, situation.afterFiling());
    return sits(after)
        ? Optional.of(
            new WayOut(
                WayOut.Kind.BIGGER_HOLE,
                "file "
                    + Say.small(2 * situation.errorMm())
                    + " off the side towards "
                    + situation.error().orElseThrow().opposite()
                    + " and finish with "
                    + named(fitting.get(), atHand)
                    + ", "
                    + Say.small(diameter - question.finishDiameterMm())
                    + " larger: for a larger fastener, or with that much more clearance"
                    + outcome(after),
                question.target(),
                diameter,
                toGet(fitting.get(), atHand),
                after))
        : Optional.empty();
  }

  private static String named(Cutter drill, boolean atHand) {
    return drill.name() + (atHand ? "" : " (not at hand)");
  }

  private static Optional<Cutter> toGet(Cutter drill, boolean atHand) {
    return atHand ? Optional.empty() : Optional.of(drill);
  }

  /** A hole as wide as what bears on the flat leaves nothing to bear on. */
  private double bearingMm() {
    return question
        .around()
        .seat()
        .map(seat -> seat.head().bearsOnMm())
        .orElse(Double.POSITIVE_INFINITY);
  }

  private static Optional<Cutter> smallest(List<Cutter> drills, double leastMm) {
    return drills.stream()
        .filter(drill -> drill.diameterMm() >= leastMm - Tolerances.GEOMETRY_SLACK_MM)
        .min(Comparator.comparingDouble(Cutter::diameterMm));
  }

  private Optional<WayOut> bush(List<Cutter> drills, boolean atHand) {
    double out = situation.errorMm() + found.withinMm();
    double least = question.finishDiameterMm() + 2 * (out + rules.bushWallMm());
    Optional<Cutter> fitting = smallest(drills, least);
    if (fitting.isEmpty() || !roomForPlug(fitting.get().diameterMm())) {
      return Optional.empty();
    }
    double diameter = fitting.get().diameterMm();
    Optional<SeatAnswer> after =
        question
            .around()
            .seat()
            .map(
                seat ->
                    situation.check(
                        seat,
                        seat.head(),
                        question.target(),
                        question.finishDiameterMm(),
                        new ExpectedError(
                            "the hole placed anew", seat.expectedErrorMm(), seat.errorMeans())));
    double wall = (diameter - question.finishDiameterMm()) / 2 - situation.errorMm();
    return sits(after)
        ? Optional.of(
            new WayOut(
                WayOut.Kind.BUSH,
                "open out where it is with "
                    + named(fitting.get(), atHand)
                    + ", fit a plug, and drill that anew where the hole should be; its thinnest"
                    + " wall is "
                    + Say.small(wall)
                    + " ("
                    + rules.bushMeans()
                    + ": at least "
                    + Say.small(rules.bushWallMm())
                    + ")"
                    + outcome(after),
                question.target(),
                diameter,
                toGet(fitting.get(), atHand),
                after))
        : Optional.empty();
  }

  /** The plug is checked like a round head of its size: it must stay within all that is there. */
  private boolean roomForPlug(double diameterMm) {
    SeatedHead plug =
        new SeatedHead(
            "plug",
            diameterMm,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            "");
    return question
        .around()
        .seat()
        .map(
            seat -> situation.check(seat, plug, found.centre(), diameterMm, situation.asMeasured()))
        .filter(after -> after.verdict() != Verdict.CLEARS)
        .isEmpty();
  }

  private static String outcome(Optional<SeatAnswer> after) {
    return after
        .map(
            seat ->
                "; then the head "
                    + (seat.verdict() == Verdict.CLEARS ? "clears" : "is tight")
                    + ", allowance "
                    + Say.small(seat.allowanceAtIntendedMm()))
        .orElse("");
  }
}
