package org.fettlebench.fits.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.Reach;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatCure;
import org.fettlebench.fits.SeatException;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Seats;
import org.fettlebench.fits.Verdict;
import org.fettlebench.measure.Point;
import org.osgi.service.component.annotations.Component;

/** Answers seat questions by exact distances; keeps nothing between questions. */
@Component
public final class SeatChecker implements Seats {
  @Override
  public SeatAnswer check(SeatQuestion question) {
    SeatGuard.check(question);
    Plan plan = new Plan(question);
    Room room = plan.room();
    Point intended = question.seat().intended();
    BestCentre.Spot best =
        new BestCentre(room, Box.of(question.seat().outline().points()), intended).find();
    Touch governing = room.governing(intended.xMm(), intended.yMm());
    double bestRoom = tidy(best.roomMm());
    double allowance = tidy(governing.roomMm());
    if (allowance < 0 && bestRoom >= 0) {
      Point nearest = new NearestAllowed(room, intended).find(best.point());
      allowance = -nearest.distanceMm(intended);
    }
    return new SeatAnswer(
        question,
        verdict(allowance, question.expectedErrorMm()),
        new SeatAnswer.Figures(best.point(), bestRoom, allowance, plan.spannerFromDegrees()),
        governing.governing(),
        Oddities.of(question.seat()),
        () -> AllowedCentres.regions(AllowedCentres.of(question.seat(), plan)));
  }

  @Override
  public List<Reach> rose(SeatQuestion question, int directions) {
    if (!(directions >= 1 && directions <= 3600)) {
      throw new SeatException(directions + " directions are outside 1 to 3600; 16 will do");
    }
    SeatGuard.check(question);
    Room room = new Plan(question).room();
    Box box = Box.of(question.seat().outline().points());
    Point centre = question.seat().intended();
    List<Reach> rose = new ArrayList<>(directions);
    for (int i = 0; i < directions; i++) {
      double degrees = i * 360.0 / directions;
      OptionalDouble reach = new Ray(room, centre, Math.toRadians(degrees), box).allowanceMm();
      rose.add(new Reach(degrees, reach));
    }
    return List.copyOf(rose);
  }

  @Override
  public List<SeatCure> cures(
      SeatAnswer answer, List<SeatedHead> otherHeads, List<HoleMethod> methods, double confidence) {
    return new SeatCurer(this::check, answer).find(otherHeads, methods, confidence);
  }

  /** Takes away the dust of rounding about nought, which would turn a verdict. */
  private static double tidy(double roomMm) {
    return Math.abs(roomMm) < Tolerances.SAME_MM ? 0 : roomMm;
  }

  private static Verdict verdict(double allowanceMm, double errorMm) {
    if (allowanceMm < 0) {
      return Verdict.FOULS;
    }
    return allowanceMm >= errorMm - Tolerances.SAME_MM ? Verdict.CLEARS : Verdict.TIGHT;
  }
}
