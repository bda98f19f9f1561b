package org.fettlebench.fits.internal;

import java.util.List;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatCure;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Seats;
import org.fettlebench.fits.Verdict;
import org.fettlebench.measure.Point;
import org.locationtech.jts.geom.Geometry;
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
    Geometry allowed = AllowedCentres.of(question.seat(), plan);
    BestCentre.Spot best =
        new BestCentre(
                room,
                AllowedCentres.polygon(question.seat().outline()).getEnvelopeInternal(),
                intended)
            .find();
    Touch governing = room.governing(intended.xMm(), intended.yMm());
    double bestRoom = tidy(best.roomMm());
    double allowance = tidy(governing.roomMm());
    if (allowance < 0 && bestRoom >= 0) {
      Point nearest = NearestAllowed.find(room, allowed, best.point(), intended);
      allowance = -nearest.distanceMm(intended);
    }
    return new SeatAnswer(
        question,
        verdict(allowance, question.expectedErrorMm()),
        AllowedCentres.regions(allowed),
        best.point(),
        bestRoom,
        allowance,
        governing.governing());
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
