package org.fettlebench.fits.internal;

import java.util.List;
import java.util.Optional;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatAnswer.Governing;
import org.fettlebench.fits.Verdict;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** The feature that leaves least room: thick, with its distance and what is to spare or lacking. */
final class GoverningShape {
  /** How thick a wall is drawn, of the size of the whole. */
  static final double WALL_SHARE = 0.06;

  private final SeatAnswer answer;
  private final Governing governing;
  private final Point centre;
  private final LengthUnit unit;
  private final double size;
  private final double outX;
  private final double outY;

  GoverningShape(SeatAnswer answer, LengthUnit unit, double size) {
    this.answer = answer;
    this.governing = answer.governing();
    this.centre = answer.question().seat().intended();
    this.unit = unit;
    this.size = size;
    double distance = centre.distanceMm(governing.nearest());
    double way = Math.signum(governing.distanceMm());
    boolean apart = distance > 1e-6 * size;
    this.outX = apart ? way * (governing.nearest().xMm() - centre.xMm()) / distance : 0;
    this.outY = apart ? way * (governing.nearest().yMm() - centre.yMm()) / distance : -1;
  }

  /** Returns the side of the flat on which the figure stands. */
  Item.Side side() {
    return WallShape.side(outX, outY);
  }

  void draw(Canvas canvas) {
    if (measurable()) {
      dimension(canvas);
    }
    feature(canvas);
    // A wall's figure stands behind the wall, with its name.
    double behind = governing.kind() == Governing.Kind.WALL ? WALL_SHARE * size : 0.02 * size;
    canvas.label(governing.nearest().moved(outX * behind, outY * behind), words(), side(), true);
  }

  private void feature(Canvas canvas) {
    if (governing.from().equals(governing.to())) {
      double radius =
          answer.question().seat().neighbours().stream()
              .filter(other -> other.centre().equals(governing.from()))
              .mapToDouble(other -> other.radiusMm())
              .max()
              .orElse(0.01 * size);
      canvas.circle(LineKind.GOVERNING, governing.from(), radius);
    } else {
      canvas.path(LineKind.GOVERNING, List.of(governing.from(), governing.to()), false);
    }
  }

  /** Returns the side of the flat on which the distance is written; absent when it is not. */
  Optional<Item.Side> dimensionSide() {
    double way = way();
    return measurable() ? Optional.of(WallShape.side(-outY * way, outX * way)) : Optional.empty();
  }

  private boolean measurable() {
    return centre.distanceMm(governing.nearest()) > 0.04 * size;
  }

  /** Stands beside the head, on the side where the seat is longer, clear of the flat's edge. */
  private void dimension(Canvas canvas) {
    double way = way();
    double off = headOff();
    double edge = reach(-outY * way, outX * way);
    if (Math.abs(off - edge) < 0.09 * size) {
      off = edge + 0.1 * size;
    }
    canvas.dimension(
        centre,
        governing.nearest(),
        -outY * off * way,
        outX * off * way,
        show(centre.distanceMm(governing.nearest())),
        true);
  }

  private double headOff() {
    return answer.question().head().sweepDiameterMm() / 2 + 0.07 * size;
  }

  private double way() {
    double off = headOff();
    return roomAt(-outY * off, outX * off) >= roomAt(outY * off, -outX * off) ? 1 : -1;
  }

  /** Returns how far the flat reaches from the centre in a direction. */
  private double reach(double dx, double dy) {
    return answer.question().seat().outline().stream()
        .mapToDouble(
            corner -> (corner.xMm() - centre.xMm()) * dx + (corner.yMm() - centre.yMm()) * dy)
        .max()
        .orElse(0);
  }

  /** Returns how far inside the box of the flat a shifted centre lies. */
  private double roomAt(double dx, double dy) {
    var box = AllowedCentres.polygon(answer.question().seat().outline()).getEnvelopeInternal();
    double x = centre.xMm() + dx;
    double y = centre.yMm() + dy;
    return Math.min(
        Math.min(x - box.getMinX(), box.getMaxX() - x),
        Math.min(y - box.getMinY(), box.getMaxY() - y));
  }

  private String words() {
    double room = governing.distanceMm() - governing.neededMm();
    String figure = LengthFormat.allowance(Length.ofMillimetres(Math.abs(room)), unit);
    String name = governing.kind() == Governing.Kind.WALL ? governing.name() + ": " : "";
    return name + (answer.verdict() == Verdict.FOULS ? "fouls by " + figure : figure + " to spare");
  }

  private String show(double mm) {
    return LengthFormat.show(Length.ofMillimetres(mm), unit);
  }
}
