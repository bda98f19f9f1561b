package org.fettlebench.fits.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatAnswer.Governing;
import org.fettlebench.fits.SeatCure;
import org.fettlebench.fits.SeatException;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Verdict;
import org.fettlebench.measure.Point;

/** Looks for what would better a verdict; every cure is checked like any other question. */
final class SeatCurer {
  /** Sizes that a person is asked to work to are given to a hundredth of a millimetre. */
  private static final double WORK_TO_MM = 0.01;

  private final Function<SeatQuestion, SeatAnswer> check;
  private final SeatAnswer answer;
  private final SeatQuestion question;
  private final List<SeatCure> cures = new ArrayList<>();

  SeatCurer(Function<SeatQuestion, SeatAnswer> check, SeatAnswer answer) {
    this.check = check;
    this.answer = answer;
    this.question = answer.question();
  }

  List<SeatCure> find(List<SeatedHead> otherHeads, List<HoleMethod> methods, double confidence) {
    if (!(confidence > 0 && confidence < 1)) {
      throw new SeatException("confidence " + confidence + " is outside 0 to 1");
    }
    if (answer.verdict() == Verdict.CLEARS) {
      return List.of();
    }
    washerOff();
    otherHeads.forEach(this::otherHead);
    carefulMethod(methods, confidence);
    moveCentre();
    setSquare();
    turnDown();
    turnWasherDown();
    // The order of finding is that of least change, and the sort keeps it among equals.
    cures.sort(Comparator.comparing(cure -> cure.after().verdict()));
    return List.copyOf(cures);
  }

  /** Keeps a cure if it betters the verdict. */
  private boolean offer(SeatCure.Kind kind, String what, SeatQuestion cured) {
    if (!SeatGuard.bears(cured)) {
      return false;
    }
    SeatAnswer after = check.apply(cured);
    // Just touching is no cure: no hole lands so exactly.
    boolean better =
        after.verdict().compareTo(answer.verdict()) < 0
            && after.allowanceAtIntendedMm() >= WORK_TO_MM;
    if (better) {
      cures.add(new SeatCure(kind, what + "; " + Words.outcome(after), after));
    }
    return better;
  }

  private void washerOff() {
    question
        .head()
        .washer()
        .ifPresent(
            washer ->
                offer(
                    SeatCure.Kind.WASHER_OFF,
                    Words.washerOff(washer.title()),
                    question.withHead(question.head().withoutWasher())));
  }

  private void otherHead(SeatedHead head) {
    if (head.withoutSpanner().equals(question.head().withoutSpanner())) {
      head.spanner()
          .ifPresent(
              spanner ->
                  offer(
                      SeatCure.Kind.OTHER_SPANNER,
                      Words.otherSpanner(spanner),
                      question.withHead(head)));
      return;
    }
    offer(
        SeatCure.Kind.OTHER_HEAD,
        Words.otherHead(head.title(), head.caveat()),
        question.withHead(head));
  }

  private void carefulMethod(List<HoleMethod> methods, double confidence) {
    Optional<HoleMethod> enough =
        methods.stream()
            .filter(method -> method.errorRadiusMm(confidence) <= answer.allowanceAtIntendedMm())
            .max(Comparator.comparingDouble(HoleMethod::sigmaPerAxisMm));
    enough.ifPresent(
        method -> {
          double error = method.errorRadiusMm(confidence);
          String standing = method.source().standing().words();
          offer(
              SeatCure.Kind.CAREFUL_METHOD,
              Words.method(method.title(), error, confidence, standing),
              question.withError(error, Words.errorMeans(method.title(), confidence, standing)));
        });
  }

  private void moveCentre() {
    Point from = question.seat().intended();
    double dx = workTo(answer.best().xMm() - from.xMm());
    double dy = workTo(answer.best().yMm() - from.yMm());
    if (dx != 0 || dy != 0) {
      offer(
          SeatCure.Kind.MOVE_CENTRE, Words.move(dx, dy), question.withIntended(from.moved(dx, dy)));
    }
  }

  private void setSquare() {
    Governing governing = answer.governing();
    SeatedHead head = question.head();
    boolean straight =
        governing.line().size() == 2
            && (governing.kind() == Governing.Kind.EDGE || governing.kind() == Governing.Kind.WALL);
    if (straight && head.acrossFlatsMm().isPresent() && head.flatsAlongDegrees().isEmpty()) {
      double degrees =
          Math.toDegrees(
              Math.atan2(
                  governing.to().yMm() - governing.from().yMm(),
                  governing.to().xMm() - governing.from().xMm()));
      offer(
          SeatCure.Kind.SET_SQUARE,
          Words.setSquare(governing.name()),
          question.withHead(head.withFlatsAlong(degrees)));
    }
  }

  /** Corners may be turned off a hexagon as far as its flats; beyond that no spanner holds. */
  private void turnDown() {
    SeatedHead head = question.head();
    if (head.acrossFlatsMm().isPresent()) {
      turnTo(
          head.sweepDiameterMm(),
          head.acrossFlatsMm().getAsDouble(),
          diameter ->
              offer(
                  SeatCure.Kind.TURN_HEAD_DOWN,
                  Words.turnDown(diameter),
                  question.withHead(head.turnedDownTo(diameter))));
    }
  }

  /** A washer may be turned down as far as what bears on it. */
  private void turnWasherDown() {
    SeatedHead head = question.head();
    head.washer()
        .ifPresent(
            washer ->
                turnTo(
                    washer.diameterMm(),
                    head.bearingDiameterMm().orElse(head.sweepDiameterMm()),
                    diameter ->
                        offer(
                            SeatCure.Kind.TURN_WASHER_DOWN,
                            Words.turnWasherDown(washer.title(), diameter),
                            question.withHead(head.withWasher(washer.turnedDownTo(diameter))))));
  }

  /** Tries a diameter just small enough, and if that will not do the least there may be. */
  private void turnTo(double from, double leastMm, Function<Double, Boolean> offered) {
    double least = Math.ceil(leastMm / WORK_TO_MM - 1e-9) * WORK_TO_MM;
    double lack = question.expectedErrorMm() - answer.allowanceAtIntendedMm();
    double enough = Math.floor((from - 2 * lack) / WORK_TO_MM + 1e-9) * WORK_TO_MM;
    double first = Math.max(least, enough);
    boolean done = first < from && offered.apply(first);
    if (!done && least < first && least < from) {
      offered.apply(least);
    }
  }

  private static double workTo(double mm) {
    return Math.rint(mm / WORK_TO_MM) * WORK_TO_MM;
  }
}
