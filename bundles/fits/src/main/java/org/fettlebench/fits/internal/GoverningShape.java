package org.fettlebench.fits.internal;

import java.util.Optional;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Sketch;
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

  /** How far its words stand off what is drawn, likewise. */
  private static final double GAP_SHARE = 0.01;

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

  void draw(Sketch sketch, Surround surround) {
    if (measurable()) {
      dimension(sketch, surround);
    }
    feature(sketch);
    Item.Side stands = wordsSide();
    Point at =
        atTheEnd()
            ? new Point(surround.reach(stands), endLevel(stands))
            : surround.clear(stands, governing.nearest(), words());
    double gap = GAP_SHARE * size;
    sketch.label(at.moved(gap * across(stands), gap * up(stands)), words(), stands, true);
    surround.words(stands, words());
  }

  /** Returns the side on which the words stand: beside an edge's end they cost no height. */
  Item.Side wordsSide() {
    return atTheEnd() ? aside() : side();
  }

  private boolean atTheEnd() {
    return governing.kind() == Governing.Kind.EDGE && Surround.upright(side());
  }

  /** Returns the side free of the governing dimension. */
  private Item.Side aside() {
    return dimensionSide()
        .filter(side -> !Surround.upright(side))
        .map(Surround::opposite)
        .orElse(Item.Side.RIGHT);
  }

  private double endLevel(Item.Side aside) {
    boolean from = governing.from().xMm() > governing.to().xMm() == (aside == Item.Side.RIGHT);
    return (from ? governing.from() : governing.to()).yMm();
  }

  private static int across(Item.Side side) {
    return side == Item.Side.RIGHT ? 1 : side == Item.Side.LEFT ? -1 : 0;
  }

  private static int up(Item.Side side) {
    return side == Item.Side.ABOVE ? 1 : side == Item.Side.BELOW ? -1 : 0;
  }

  private void feature(Sketch sketch) {
    if (governing.from().equals(governing.to())) {
      double radius =
          answer.question().seat().neighbours().stream()
              .filter(other -> other.centre().equals(governing.from()))
              .mapToDouble(other -> other.radiusMm())
              .max()
              .orElse(0.01 * size);
      sketch.circle(LineKind.GOVERNING, governing.from(), radius);
    } else {
      sketch.path(LineKind.GOVERNING, governing.line(), false);
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

  /** Stands beside the head where the flat leaves room for it, else beyond all that is drawn. */
  private void dimension(Sketch sketch, Surround surround) {
    double x = -outY * way();
    double y = outX * way();
    boolean inside = reach(x, y) - headOff() > 0.09 * size;
    double off = inside ? headOff() : beyond(x, y, surround);
    double leftOf = way() * Math.signum(governing.distanceMm());
    double paper = inside ? 0 : leftOf * Surround.STEP_MM;
    Point past = new Point(x * off, y * off);
    double distance = centre.distanceMm(governing.nearest());
    sketch.dimensionPast(
        new Item.Dimension(centre, governing.nearest(), paper, show(distance), true), past);
    if (!inside) {
      Item.Side side = dimensionSide().orElseThrow();
      surround.take(side, Surround.STEP_MM);
      if (!Surround.upright(side)) {
        // On a small drawing the figure finds no room along its line and stands beside it.
        surround.words(side, show(distance));
      }
    }
  }

  /** Returns how far from the centre the drawn ends, in a direction. */
  private double beyond(double x, double y, Surround surround) {
    Item.Side side = WallShape.side(x, y);
    boolean upright = Surround.upright(side);
    double at = upright ? centre.yMm() : centre.xMm();
    double share = Math.abs(upright ? y : x);
    return Math.max(reach(x, y), Math.abs(surround.reach(side) - at) / share);
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
    return answer.question().seat().outline().points().stream()
        .mapToDouble(
            corner -> (corner.xMm() - centre.xMm()) * dx + (corner.yMm() - centre.yMm()) * dy)
        .max()
        .orElse(0);
  }

  /** Returns how far inside the box of the flat a shifted centre lies. */
  private double roomAt(double dx, double dy) {
    var box =
        AllowedCentres.polygon(answer.question().seat().outline().points()).getEnvelopeInternal();
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
