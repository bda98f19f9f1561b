package org.fettlebench.fits.internal;

import java.util.List;
import java.util.OptionalDouble;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatException;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Spanner;
import org.fettlebench.measure.Point;

/** Refuses seats that cannot be, with the place, the value and the remedy. */
final class SeatGuard {
  /** Across corners of a square over its across flats, with a hair for rounded figures. */
  private static final double SQUARE_CORNERS = Math.sqrt(2) * 1.002;

  private SeatGuard() {}

  static void check(SeatQuestion question) {
    Seat seat = question.seat();
    outline("outline", seat.outline());
    seat.underside().ifPresent(below -> outline("underside", below));
    for (int i = 0; i < seat.cavities().size(); i++) {
      outline("hollow " + (i + 1), seat.cavities().get(i));
    }
    seat.walls().forEach(SeatGuard::wall);
    seat.neighbours().forEach(SeatGuard::neighbour);
    place("intended centre", seat.intended());
    notNegative("metal wanted around the hole", seat.leastMetalMm());
    positive("hole diameter", question.holeDiameterMm());
    notNegative("expected position error", question.expectedErrorMm());
    head(question.head());
    if (!bears(question)) {
      throw new SeatException(
          "hole diameter "
              + mm(question.holeDiameterMm())
              + " is wider than what bears round it, "
              + mm(question.head().bearsOnMm())
              + ": "
              + question.head().title()
              + " would drop through; check the hole, or put a washer under it");
    }
  }

  /** Returns whether anything of the head or its washer bears round the hole. */
  static boolean bears(SeatQuestion question) {
    return question.holeDiameterMm() <= question.head().bearsOnMm();
  }

  private static void head(SeatedHead head) {
    positive(head.title() + ": circle that it sweeps", head.sweepDiameterMm());
    head.heightMm().ifPresent(height -> positive(head.title() + ": height", height));
    head.bearingDiameterMm().ifPresent(face -> positive(head.title() + ": washer face", face));
    head.washer().ifPresent(SeatGuard::washer);
    head.spanner().ifPresent(SeatGuard::spanner);
    OptionalDouble flats = head.acrossFlatsMm();
    if (flats.isPresent()) {
      positive(head.title() + ": across flats", flats.getAsDouble());
      if (!(head.sweepDiameterMm() <= flats.getAsDouble() * SQUARE_CORNERS)) {
        throw new SeatException(
            head.title()
                + ": across corners "
                + mm(head.sweepDiameterMm())
                + " is more than even a square head of across flats "
                + mm(flats.getAsDouble())
                + " has; measure both again");
      }
      if (!(flats.getAsDouble() <= head.sweepDiameterMm())) {
        throw new SeatException(
            head.title()
                + ": across flats "
                + mm(flats.getAsDouble())
                + " is more than across corners "
                + mm(head.sweepDiameterMm())
                + "; check which is which");
      }
    } else if (head.flatsAlongDegrees().isPresent()) {
      throw new SeatException(
          head.title() + " is round and cannot be set with its flats along a direction");
    }
    if (!Double.isFinite(head.flatsAlongDegrees().orElse(0))) {
      throw new SeatException(head.title() + ": direction of the flats is not a number");
    }
  }

  private static void washer(SeatedHead.Washer washer) {
    positive(washer.title() + ": outside diameter", washer.diameterMm());
    positive(washer.title() + ": thickness", washer.thicknessMm());
  }

  private static void spanner(Spanner spanner) {
    positive(spanner.title() + ": size of its head", spanner.headDiameterMm());
    spanner.heightMm().ifPresent(high -> positive(spanner.title() + ": height", high));
    notNegative(spanner.title() + ": lift above the flat", spanner.liftMm());
  }

  private static void wall(Seat.Wall wall) {
    String name = "wall \"" + wall.name() + "\"";
    place(name + ", first end", wall.from());
    place(name + ", second end", wall.to());
    if (!(wall.from().distanceMm(wall.to()) >= Tolerances.SMALLEST_MM)) {
      throw new SeatException(
          name + ": both ends are at " + at(wall.from()) + "; give its other end");
    }
    positive(name + ", height", wall.heightMm());
    notNegative(name + ", fillet radius", wall.filletRadiusMm());
  }

  private static void neighbour(Seat.Neighbour neighbour) {
    String name = "neighbour \"" + neighbour.name() + "\"";
    place(name, neighbour.centre());
    positive(name + ", radius", neighbour.radiusMm());
    neighbour.heightMm().ifPresent(height -> positive(name + ", height", height));
  }

  private static void outline(String name, Outline outline) {
    List<Point> corners = outline.corners().stream().map(Outline.Corner::at).toList();
    if (corners.size() < (outline.bent() ? 2 : 3)) {
      throw new SeatException(
          name + ": " + corners.size() + " corners given, at least 3 are needed");
    }
    for (int i = 0; i < corners.size(); i++) {
      place(name + ", corner " + (i + 1), corners.get(i));
      int next = (i + 1) % corners.size();
      if (!(corners.get(i).distanceMm(corners.get(next)) >= Tolerances.SMALLEST_MM)) {
        throw new SeatException(
            name
                + ": corners "
                + (i + 1)
                + " and "
                + (next + 1)
                + " are the same place, "
                + at(corners.get(i))
                + "; leave one out");
      }
    }
    if (outline.bent()) {
      Box box = Box.of(outline.points());
      range(name + ", arcs, x", box.minX());
      range(name + ", arcs, x", box.maxX());
      range(name + ", arcs, y", box.minY());
      range(name + ", arcs, y", box.maxY());
    }
    Crossings.refuse(name, outline);
  }

  private static void place(String name, Point point) {
    range(name + ", x", point.xMm());
    range(name + ", y", point.yMm());
  }

  private static void range(String name, double value) {
    double most = Tolerances.LARGEST_MM;
    if (!(value >= -most && value <= most)) {
      throw new SeatException(
          name + " " + mm(value) + " is outside " + mm(-most) + " to " + mm(most));
    }
  }

  private static void positive(String name, double value) {
    if (!(value > 0 && value <= Tolerances.LARGEST_MM)) {
      throw new SeatException(
          name + " " + mm(value) + " is not above 0 and at most " + mm(Tolerances.LARGEST_MM));
    }
  }

  private static void notNegative(String name, double value) {
    if (!(value >= 0 && value <= Tolerances.LARGEST_MM)) {
      throw new SeatException(
          name + " " + mm(value) + " is outside 0 to " + mm(Tolerances.LARGEST_MM));
    }
  }

  static String at(Point point) {
    return "x " + mm(point.xMm()) + ", y " + mm(point.yMm());
  }

  /** Writes a figure as it was given, without a tail of noughts. */
  static String mm(double value) {
    return Double.isFinite(value) && value == Math.rint(value) && Math.abs(value) < 1e15
        ? (long) value + " mm"
        : value + " mm";
  }
}
