package org.fettlebench.fits.internal;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Tone;
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
  public Drawing draw(SeatAnswer answer, LengthUnit unit) {
    return new Work(answer, unit).draw();
  }

  /** One drawing in the making. */
  private static final class Work {
    private final SeatAnswer answer;
    private final Seat seat;
    private final SeatedHead head;
    private final LengthUnit unit;
    private final Canvas canvas;
    private final Envelope flat;

    /** Size of the whole, by which what has no size of its own is drawn. */
    private final double size;

    private final Set<Item.Side> taken = EnumSet.noneOf(Item.Side.class);

    Work(SeatAnswer answer, LengthUnit unit) {
      this.answer = answer;
      this.seat = answer.question().seat();
      this.head = answer.question().head();
      this.unit = unit;
      this.flat = AllowedCentres.polygon(seat.outline()).getEnvelopeInternal();
      this.size = Math.max(Math.max(flat.getWidth(), flat.getHeight()), head.sweepDiameterMm());
      this.canvas = new Canvas(size);
    }

    Drawing draw() {
      part();
      seat.walls().forEach(this::wall);
      seat.neighbours().forEach(this::neighbour);
      headFill();
      allowed();
      headLines();
      GoverningShape governing = new GoverningShape(answer, unit, size);
      governing.draw(canvas);
      taken.add(governing.side());
      governing.dimensionSide().ifPresent(taken::add);
      centres();
      overall();
      return canvas.drawing(title(), 0.07 * size);
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
      canvas.area(Tone.PART, seat.outline(), List.of());
      seat.cavities().forEach(hollow -> canvas.path(LineKind.HIDDEN, hollow, true));
      seat.underside().ifPresent(below -> canvas.path(LineKind.HIDDEN, below, true));
      canvas.path(LineKind.OUTLINE, seat.outline(), true);
    }

    private void wall(Seat.Wall wall) {
      WallShape shape = new WallShape(wall, seat.intended(), GoverningShape.WALL_SHARE * size);
      shape.draw(canvas, seat);
      if (!governs(wall)) {
        canvas.label(shape.nameAt(), wall.name(), shape.nameSide(), false);
      }
      taken.add(shape.nameSide());
    }

    private boolean governs(Seat.Wall wall) {
      SeatAnswer.Governing governing = answer.governing();
      return governing.kind() == SeatAnswer.Governing.Kind.WALL
          && governing.from().equals(wall.from())
          && governing.to().equals(wall.to());
    }

    private void neighbour(Seat.Neighbour other) {
      canvas.disc(Tone.HEAD, other.centre(), other.radiusMm());
      canvas.circle(LineKind.OUTLINE, other.centre(), other.radiusMm());
      canvas.label(other.centre(), other.name(), Item.Side.CENTRE, false);
    }

    private void headFill() {
      if (head.acrossFlatsMm().isPresent()) {
        canvas.area(Tone.HEAD, hexagon(), List.of());
      } else {
        canvas.disc(Tone.HEAD, seat.intended(), head.sweepDiameterMm() / 2);
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
        canvas.path(LineKind.OUTLINE, hexagon(), true);
        if (head.flatsAlongDegrees().isEmpty()) {
          canvas.circle(LineKind.CENTRE, seat.intended(), radius);
        }
      } else {
        canvas.circle(LineKind.OUTLINE, seat.intended(), radius);
      }
      canvas.circle(LineKind.HIDDEN, seat.intended(), answer.question().holeDiameterMm() / 2);
    }

    private void allowed() {
      for (SeatAnswer.Region region : answer.allowed()) {
        canvas.area(Tone.ALLOWED, region.shell(), region.holes());
        canvas.path(LineKind.THIN, region.shell(), true);
        region.holes().forEach(hole -> canvas.path(LineKind.THIN, hole, true));
      }
    }

    private void centres() {
      Point at = seat.intended();
      double reach = head.sweepDiameterMm() / 2 + 0.04 * size;
      canvas.path(LineKind.CENTRE, List.of(at.moved(-reach, 0), at.moved(reach, 0)), false);
      canvas.path(LineKind.CENTRE, List.of(at.moved(0, -reach), at.moved(0, reach)), false);
      canvas.marker(at, Item.Mark.CROSS);
      canvas.marker(answer.best(), Item.Mark.RING);
      if (at.distanceMm(answer.best()) > 0.03 * size) {
        arrow(at, answer.best());
      }
    }

    private void arrow(Point from, Point to) {
      double length = from.distanceMm(to);
      double ux = (to.xMm() - from.xMm()) / length;
      double uy = (to.yMm() - from.yMm()) / length;
      double barb = Math.min(0.025 * size, length / 3);
      canvas.path(LineKind.THIN, List.of(from, to), false);
      Point back = to.moved(-ux * barb, -uy * barb);
      canvas.path(
          LineKind.THIN,
          List.of(
              back.moved(-uy * barb / 3, ux * barb / 3),
              to,
              back.moved(uy * barb / 3, -ux * barb / 3)),
          false);
      canvas.label(to, "best centre", WallShape.side(ux, uy), false);
    }

    private void overall() {
      boolean above = taken.contains(Item.Side.BELOW) && !taken.contains(Item.Side.ABOVE);
      double y = above ? flat.getMaxY() : flat.getMinY();
      canvas.dimension(
          new Point(flat.getMinX(), y),
          new Point(flat.getMaxX(), y),
          0,
          above ? off(Item.Side.ABOVE) : -off(Item.Side.BELOW),
          show(flat.getWidth()),
          false);
      boolean right = taken.contains(Item.Side.LEFT) && !taken.contains(Item.Side.RIGHT);
      double x = right ? flat.getMaxX() : flat.getMinX();
      canvas.dimension(
          new Point(x, flat.getMinY()),
          new Point(x, flat.getMaxY()),
          right ? off(Item.Side.RIGHT) : -off(Item.Side.LEFT),
          0,
          show(flat.getHeight()),
          false);
    }

    /** Stands farther off where words or another size stand already. */
    private double off(Item.Side side) {
      return (taken.contains(side) ? 0.24 : 0.11) * size;
    }

    private String show(double mm) {
      return LengthFormat.show(Length.ofMillimetres(mm), unit);
    }
  }
}
