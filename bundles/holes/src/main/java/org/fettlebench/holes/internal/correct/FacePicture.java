package org.fettlebench.holes.internal.correct;

import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Sketch;
import org.fettlebench.drawing.Tone;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.holes.correct.CorrectionAnswer;
import org.fettlebench.holes.correct.CorrectionAnswer.Filing;
import org.fettlebench.holes.correct.CorrectionQuestion;
import org.fettlebench.holes.internal.Outline;
import org.fettlebench.holes.internal.Say;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** Draws the face with the hole as found, its target, and an arrow to the side to file. */
final class FacePicture {
  private final CorrectionAnswer answer;
  private final CorrectionQuestion question;
  private final LengthUnit unit;
  private final Sketch sketch = new Sketch();

  FacePicture(CorrectionAnswer answer, LengthUnit unit) {
    this.answer = answer;
    this.question = answer.question();
    this.unit = unit;
  }

  Drawing draw() {
    question.around().seat().ifPresent(this::part);
    Point found = question.found().centre();
    double radius = question.found().diameterMm() / 2;
    sketch.disc(Tone.EMPTY, found, radius);
    sketch.circle(LineKind.OUTLINE, found, radius);
    sketch.circle(LineKind.HIDDEN, question.target(), question.finishDiameterMm() / 2);
    sketch.centreLines(question.target(), question.finishDiameterMm() * 0.8);
    sketch.marker(question.target(), Item.Mark.CROSS);
    sketch.marker(found, Item.Mark.SALTIRE);
    answer.filing().ifPresent(this::arrow);
    return sketch.drawing(title(), 0.15 * question.finishDiameterMm());
  }

  private String title() {
    return answer
        .error()
        .map(
            way ->
                "the face: hole out by "
                    + Say.figure(answer.errorMm(), unit)
                    + " towards "
                    + way
                    + ", "
                    + answer.outcome().word())
        .orElse("the face: hole on target");
  }

  private void part(SeatQuestion seatQuestion) {
    Seat seat = seatQuestion.seat();
    sketch.area(Tone.PART, seat.outline().points());
    seat.cavities().forEach(hollow -> sketch.path(LineKind.HIDDEN, hollow.points(), true));
    sketch.path(LineKind.OUTLINE, seat.outline().points(), true);
    seat.walls()
        .forEach(
            wall -> {
              sketch.line(LineKind.GOVERNING, wall.from(), wall.to());
              sketch.label(middle(wall.from(), wall.to()), wall.name(), Item.Side.ABOVE, false);
            });
    corners(Outline.of("outline", seat.outline()));
    sketch.circle(LineKind.CENTRE, question.target(), seatQuestion.head().sweepDiameterMm() / 2);
  }

  private static Point middle(Point a, Point b) {
    return new Point((a.xMm() + b.xMm()) / 2, (a.yMm() + b.yMm()) / 2);
  }

  private void corners(Outline outline) {
    double middle = (outline.box().getMinX() + outline.box().getMaxX()) / 2;
    for (int corner = 1; corner <= outline.edges(); corner++) {
      Point at = outline.corner(corner);
      Item.Side side = at.xMm() < middle ? Item.Side.LEFT : Item.Side.RIGHT;
      sketch.label(at, Integer.toString(corner), side, false);
    }
  }

  /** An arrow from the hole's centre to the side to file; its words stand outside the face. */
  private void arrow(Filing filing) {
    Point found = question.found().centre();
    Point target = question.target();
    double radius = question.found().diameterMm() / 2;
    double filed = filing.filedDiameterMm() / 2;
    double degrees = filing.towards().degrees();
    double ux = filing.towards().dx();
    double uy = filing.towards().dy();
    sketch.path(LineKind.GOVERNING, Sketch.arc(target, filed, degrees - 75, degrees + 75), false);
    Point rim = found.moved(radius * ux, radius * uy);
    sketch.arrow(LineKind.OUTLINE, found, rim, 0.4 * radius);
    boolean above = uy >= 0;
    Point words = words(filing, above);
    sketch.line(LineKind.THIN, target.moved(filed * ux, filed * uy), words);
    sketch.label(
        words,
        "file " + Say.figure(filing.deepestMm(), unit) + " here",
        above ? Item.Side.ABOVE : Item.Side.BELOW,
        true);
  }

  /** The words stand above or below the face, where they leave its width to the scale. */
  private Point words(Filing filing, boolean above) {
    Point found = question.found().centre();
    double finish = question.finishDiameterMm();
    double x = found.xMm() + 0.8 * finish * filing.towards().dx();
    double past = (above ? 0.3 : -0.3) * finish;
    return question
        .around()
        .seat()
        .map(seat -> Outline.of("outline", seat.seat().outline()).box())
        .map(box -> new Point(x, (above ? box.getMaxY() : box.getMinY()) + past))
        .orElse(new Point(x, found.yMm() + (above ? finish : -finish) + past));
  }
}
