package org.fettlebench.fits.internal;

import java.util.List;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Sketch;
import org.fettlebench.drawing.Tone;
import org.fettlebench.fits.Reach;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatDrawings;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthFormat;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.locationtech.jts.geom.Envelope;
import org.osgi.service.component.annotations.Component;

/** Draws answered seats as a drawing office would: to scale, by the line kinds of ISO 128. */
@Component
public final class SeatPainter implements SeatDrawings {
  @Override
  public Drawing draw(SeatAnswer answer, List<Reach> rose, LengthUnit unit) {
    return new Work(answer, unit).draw(rose);
  }

  /** One drawing in the making. */
  private static final class Work {
    private final SeatAnswer answer;
    private final Seat seat;
    private final SeatedHead head;
    private final LengthUnit unit;
    private final Sketch sketch;
    private final DressShape dress;
    private final Envelope flat;

    /** Size of the whole, by which what has no size of its own is drawn. */
    private final double size;

    private final Surround surround;

    Work(SeatAnswer answer, LengthUnit unit) {
      this.answer = answer;
      this.seat = answer.question().seat();
      this.head = answer.question().head();
      this.unit = unit;
      this.dress = new DressShape(answer);
      this.flat = AllowedCentres.polygon(seat.outline().points()).getEnvelopeInternal();
      this.size = Math.max(Math.max(flat.getWidth(), flat.getHeight()), 2 * dress.reachMm());
      this.sketch = new Sketch();
      this.surround = new Surround(seat, centreReach());
    }

    Drawing draw(List<Reach> rose) {
      part();
      seat.walls().forEach(this::wall);
      seat.neighbours().forEach(this::neighbour);
      dress.fill(sketch);
      headFill();
      allowed();
      dress.lines(sketch);
      headLines();
      new RoseShape(seat.intended(), size).draw(sketch, rose);
      GoverningShape governing = new GoverningShape(answer, unit, size);
      governing.draw(sketch, surround);
      centres(governing);
      overall();
      return sketch.drawing(title(), 0.01 * size);
    }

    private String title() {
      double allowance = answer.allowanceAtIntendedMm();
      return seat.name()
          + ": "
          + head.title()
          + " "
          + answer.verdict().word()
          + ", allowance at the intended centre "
          + LengthFormat.allowance(Length.ofMillimetres(allowance), unit);
    }

    private void part() {
      sketch.area(Tone.PART, seat.outline().points(), List.of());
      seat.cavities().forEach(hollow -> sketch.path(LineKind.HIDDEN, hollow.points(), true));
      seat.underside().ifPresent(below -> sketch.path(LineKind.HIDDEN, below.points(), true));
      sketch.path(LineKind.OUTLINE, seat.outline().points(), true);
    }

    private void wall(Seat.Wall wall) {
      WallShape shape = new WallShape(wall, seat.intended(), GoverningShape.WALL_SHARE * size);
      shape.draw(sketch, seat);
      surround.drawn(shape.band());
      if (!governs(wall)) {
        sketch.label(shape.nameAt(), wall.name(), shape.nameSide(), false);
        surround.words(shape.nameSide(), wall.name());
      }
    }

    private boolean governs(Seat.Wall wall) {
      SeatAnswer.Governing governing = answer.governing();
      return governing.kind() == SeatAnswer.Governing.Kind.WALL
          && governing.from().equals(wall.from())
          && governing.to().equals(wall.to());
    }

    private void neighbour(Seat.Neighbour other) {
      sketch.disc(Tone.HEAD, other.centre(), other.radiusMm());
      sketch.circle(LineKind.OUTLINE, other.centre(), other.radiusMm());
      sketch.label(other.centre(), other.name(), Item.Side.CENTRE, false);
      surround.round(other.centre(), other.radiusMm());
    }

    private void headFill() {
      if (head.acrossFlatsMm().isPresent()) {
        sketch.area(Tone.HEAD, hexagon(), List.of());
      } else {
        sketch.disc(Tone.HEAD, seat.intended(), head.sweepDiameterMm() / 2);
      }
    }

    private List<Point> hexagon() {
      double degrees = head.flatsAlongDegrees().orElse(0);
      Point at = seat.intended();
      return Sweep.hexagon(head.acrossFlatsMm().orElseThrow(), head.sweepDiameterMm() / 2, degrees)
          .stream()
          .map(corner -> at.moved(corner.xMm(), corner.yMm()))
          .toList();
    }

    private void headLines() {
      double radius = head.sweepDiameterMm() / 2;
      if (head.acrossFlatsMm().isPresent()) {
        sketch.path(LineKind.OUTLINE, hexagon(), true);
        if (head.flatsAlongDegrees().isEmpty()) {
          sketch.circle(LineKind.CENTRE, seat.intended(), radius);
        }
      } else {
        sketch.circle(LineKind.OUTLINE, seat.intended(), radius);
      }
      sketch.circle(LineKind.HIDDEN, seat.intended(), answer.question().holeDiameterMm() / 2);
    }

    private void allowed() {
      for (SeatAnswer.Region region : answer.allowed()) {
        sketch.area(Tone.ALLOWED, region.shell(), region.holes());
        sketch.path(LineKind.THIN, region.shell(), true);
        region.holes().forEach(hole -> sketch.path(LineKind.THIN, hole, true));
      }
    }

    private void centres(GoverningShape governing) {
      Point at = seat.intended();
      sketch.centreLines(at, centreReach());
      sketch.marker(at, Item.Mark.CROSS);
      sketch.marker(answer.best(), Item.Mark.RING);
      if (at.distanceMm(answer.best()) > 0.03 * size) {
        new BestShape(at, answer.best(), size).draw(sketch, surround, governing, dress.reachMm());
      }
    }

    /** Returns how far the centre lines stand out from the intended centre. */
    private double centreReach() {
      return dress.reachMm() + 0.04 * size;
    }

    private void overall() {
      Item.Side under = surround.freer(Item.Side.BELOW, Item.Side.ABOVE);
      double y = under == Item.Side.BELOW ? flat.getMinY() : flat.getMaxY();
      double below = surround.taken(under) + Surround.STEP_MM;
      overall(
          new Point(flat.getMinX(), y),
          new Point(flat.getMaxX(), y),
          under == Item.Side.BELOW ? -below : below,
          new Point(0, surround.reach(under) - y));
      Item.Side side = surround.freer(Item.Side.RIGHT, Item.Side.LEFT);
      double x = side == Item.Side.LEFT ? flat.getMinX() : flat.getMaxX();
      double beside = surround.taken(side) + Surround.STEP_MM;
      overall(
          new Point(x, flat.getMinY()),
          new Point(x, flat.getMaxY()),
          side == Item.Side.LEFT ? beside : -beside,
          new Point(surround.reach(side) - x, 0));
    }

    private void overall(Point from, Point to, double paperMm, Point past) {
      String words = show(from.distanceMm(to));
      sketch.dimensionPast(new Item.Dimension(from, to, paperMm, words, false), past);
    }

    private String show(double mm) {
      return LengthFormat.show(Length.ofMillimetres(mm), unit);
    }
  }
}
