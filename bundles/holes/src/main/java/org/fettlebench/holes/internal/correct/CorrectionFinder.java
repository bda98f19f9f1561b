package org.fettlebench.holes.internal.correct;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.Seats;
import org.fettlebench.fits.Verdict;
import org.fettlebench.holes.correct.CorrectionAnswer;
import org.fettlebench.holes.correct.CorrectionAnswer.Filing;
import org.fettlebench.holes.correct.CorrectionAnswer.Outcome;
import org.fettlebench.holes.correct.CorrectionAnswer.WayOut;
import org.fettlebench.holes.correct.CorrectionQuestion;
import org.fettlebench.holes.correct.Corrections;
import org.fettlebench.holes.correct.Cutter;
import org.fettlebench.holes.correct.Direction;
import org.fettlebench.holes.internal.Outline;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Tolerances;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

/** Works out what to do about a hole that is there, and checks each way again. */
@Component
public final class CorrectionFinder implements Corrections {
  private static final double SLACK_MM = Tolerances.GEOMETRY_SLACK_MM;

  private final Seats seats;

  /** Takes what checks a seat again. */
  @Activate
  public CorrectionFinder(@Reference Seats seats) {
    this.seats = seats;
  }

  @Override
  public CorrectionAnswer correct(CorrectionQuestion question) {
    Situation situation = new Situation(question, seats);
    Outcome outcome = outcome(situation);
    Optional<Filing> filing = filing(situation);
    List<WayOut> ways =
        outcome == Outcome.ON_TARGET
            ? List.of()
            : new WaysOut(situation).find(needsMore(outcome, filing));
    return new CorrectionAnswer(
        question,
        outcome,
        situation.errorMm(),
        situation.error(),
        situation.curableMm(),
        filing,
        ways,
        situation.asIs());
  }

  /** Filing alone is not enough where it is in doubt, or where the head fouls all the same. */
  private static boolean needsMore(Outcome outcome, Optional<Filing> filing) {
    boolean fouls =
        filing
            .flatMap(Filing::after)
            .map(SeatAnswer::verdict)
            .filter(Verdict.FOULS::equals)
            .isPresent();
    return outcome != Outcome.LEAVE && (outcome != Outcome.FILE || fouls);
  }

  private static Outcome outcome(Situation situation) {
    double error = situation.errorMm();
    double within = situation.question().found().withinMm();
    if (error <= within + SLACK_MM) {
      return Outcome.ON_TARGET;
    }
    if (situation.asIs().map(SeatAnswer::verdict).filter(Verdict.CLEARS::equals).isPresent()) {
      return Outcome.LEAVE;
    }
    if (error + within <= situation.curableMm() + SLACK_MM) {
      return Outcome.FILE;
    }
    return error <= situation.curableMm() + SLACK_MM ? Outcome.FILE_IN_DOUBT : Outcome.PAST_CURE;
  }

  private static Optional<Filing> filing(Situation situation) {
    double error = situation.errorMm();
    if (situation.error().isEmpty() || !(error <= situation.curableMm() + SLACK_MM)) {
      return Optional.empty();
    }
    CorrectionQuestion question = situation.question();
    double drilled = question.found().diameterMm();
    double finish = question.finishDiameterMm();
    double filed = drilled + 2 * error;
    Direction towards = situation.error().get().opposite();
    return Optional.of(
        new Filing(
            towards,
            edge(question, towards),
            2 * error,
            filed / 2 - Math.sqrt(Math.max(0, drilled * drilled / 4 - error * error)),
            filed,
            (finish - filed) / 2,
            file(question, drilled),
            between(question, filed),
            question.tools().drills().stream()
                .filter(drill -> Tolerances.sameMm(drill.diameterMm(), finish))
                .findFirst(),
            situation.check(question.target(), finish, situation.afterFiling())));
  }

  private static String edge(CorrectionQuestion question, Direction towards) {
    if (question.around().seat().isEmpty()) {
      return "";
    }
    Outline outline = Outline.of("outline", question.around().seat().get().seat().outline());
    return outline.met(question.found().centre(), towards).map(outline::nameAt).orElse("");
  }

  private static Optional<Cutter> file(CorrectionQuestion question, double drilled) {
    return question.tools().roundFiles().stream()
        .filter(file -> file.diameterMm() < drilled - SLACK_MM)
        .max(Comparator.comparingDouble(Cutter::diameterMm));
  }

  /** A drill that cleans the filing up, after which the filing's own error can be cured again. */
  private static Optional<Cutter> between(CorrectionQuestion question, double filed) {
    CorrectionQuestion.Rules rules = question.rules();
    double least = filed + 2 * rules.cleanUp().perSideMm();
    return question.tools().drills().stream()
        .filter(drill -> drill.diameterMm() >= least - SLACK_MM)
        .filter(
            drill ->
                rules.cleanUp().curableMm(drill.diameterMm(), question.finishDiameterMm())
                    >= rules.filing().radiusMm() - SLACK_MM)
        .min(Comparator.comparingDouble(Cutter::diameterMm));
  }

  @Override
  public Drawing drawFace(CorrectionAnswer answer, LengthUnit unit) {
    return new FacePicture(answer, unit).draw();
  }

  @Override
  public Drawing drawHole(CorrectionAnswer answer, LengthUnit unit) {
    return new HolePicture(answer, unit).draw();
  }
}
