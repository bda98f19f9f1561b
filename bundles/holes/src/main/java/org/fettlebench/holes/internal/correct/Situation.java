package org.fettlebench.holes.internal.correct;

import java.util.Optional;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Seats;
import org.fettlebench.holes.correct.CorrectionQuestion;
import org.fettlebench.holes.correct.Direction;
import org.fettlebench.holes.correct.ExpectedError;
import org.fettlebench.measure.Point;
import org.fettlebench.measure.Tolerances;

/** A question about a hole that is there, with what follows from it at once. */
final class Situation {
  private final CorrectionQuestion question;
  private final Seats seats;
  private final double errorMm;

  Situation(CorrectionQuestion question, Seats seats) {
    this.question = question;
    this.seats = seats;
    this.errorMm = question.target().distanceMm(question.found().centre());
  }

  CorrectionQuestion question() {
    return question;
  }

  double errorMm() {
    return errorMm;
  }

  /** Returns the way in which the hole is out; empty when it is not. */
  Optional<Direction> error() {
    Point target = question.target();
    Point found = question.found().centre();
    return errorMm > Tolerances.GEOMETRY_SLACK_MM
        ? Optional.of(Direction.of(found.xMm() - target.xMm(), found.yMm() - target.yMm()))
        : Optional.empty();
  }

  double curableMm() {
    return question
        .rules()
        .cleanUp()
        .curableMm(question.found().diameterMm(), question.finishDiameterMm());
  }

  /** Returns the place so far from the hole towards the target. */
  Point towardsTarget(double mm) {
    Point found = question.found().centre();
    Direction back = error().orElseThrow().opposite();
    return found.moved(mm * back.dx(), mm * back.dy());
  }

  /** Returns how sure the hole's place is as it was measured. */
  ExpectedError asMeasured() {
    return new ExpectedError(
        "the hole as measured", question.found().withinMm(), "as measured, 95 per cent");
  }

  /** Measuring and filing err apart from each other, so their radii add by squares. */
  ExpectedError afterFiling() {
    ExpectedError filing = question.rules().filing();
    return new ExpectedError(
        filing.title(),
        Math.hypot(question.found().withinMm(), filing.radiusMm()),
        "as measured and " + filing.title() + ", added by squares; " + filing.means());
  }

  /** Returns the seat with the hole where it is. */
  Optional<SeatAnswer> asIs() {
    return check(question.found().centre(), question.finishDiameterMm(), asMeasured());
  }

  /** Checks the seat with a hole elsewhere; empty when there is no seat. */
  Optional<SeatAnswer> check(Point centre, double holeMm, ExpectedError error) {
    return question.around().seat().map(seat -> check(seat, seat.head(), centre, holeMm, error));
  }

  /** Checks the seat with another head on a hole elsewhere. */
  SeatAnswer check(
      SeatQuestion seat, SeatedHead head, Point centre, double holeMm, ExpectedError error) {
    SeatQuestion moved = seat.withIntended(centre);
    return seats.check(
        new SeatQuestion(moved.seat(), head, holeMm, error.radiusMm(), error.means()));
  }
}
