package org.fettlebench.desktop.seats.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Outline.Corner;
import org.fettlebench.measure.Point;

/** Outlines with arcs, changed corner by corner and side by side. Side n runs from corner n on. */
final class Arcs {
  /** Less than this is straight: far below anything measured. */
  private static final double LEAST_MM = 1e-6;

  private Arcs() {}

  private static Corner at(Outline outline, int index) {
    return outline.corners().get(Math.floorMod(index, outline.corners().size()));
  }

  private static Outline with(Outline outline, int index, Corner corner) {
    int count = outline.corners().size();
    return Outline.ofCorners(Shape.set(outline.corners(), Math.floorMod(index, count), corner));
  }

  /**
   * Returns the outline with a corner elsewhere; arcs that end there keep their shape.
   *
   * @throws org.fettlebench.fits.SeatException if an arc or a rounding cannot be so
   */
  static Outline moved(Outline outline, int index, Point to) {
    List<Corner> corners = new ArrayList<>(outline.corners());
    int before = Math.floorMod(index - 1, corners.size());
    Corner own = corners.get(index);
    Point next = at(outline, index + 1).at();
    Point previous = corners.get(before).at();
    corners.set(
        index,
        own.through().isEmpty()
            ? own.withAt(to)
            : own.withAt(to).withThrough(like(own.through().get(), own.at(), next, to, next)));
    Corner side = corners.get(before);
    side.through()
        .ifPresent(
            place ->
                corners.set(
                    before, side.withThrough(like(place, previous, own.at(), previous, to))));
    return Outline.ofCorners(corners);
  }

  /** Returns the place that stands to two new ends as another one stood to the old ends. */
  private static Point like(Point place, Point from, Point to, Point newFrom, Point newTo) {
    double dx = to.xMm() - from.xMm();
    double dy = to.yMm() - from.yMm();
    double square = dx * dx + dy * dy;
    double px = place.xMm() - from.xMm();
    double py = place.yMm() - from.yMm();
    double along = (px * dx + py * dy) / square;
    double off = (py * dx - px * dy) / square;
    double ex = newTo.xMm() - newFrom.xMm();
    double ey = newTo.yMm() - newFrom.yMm();
    return newFrom.moved(along * ex - off * ey, along * ey + off * ex);
  }

  /**
   * Returns how far a side bulges outwards beyond its straight way, millimetres; negative inwards,
   * empty when it is straight.
   */
  static OptionalDouble bulgeMm(Outline outline, int side) {
    Optional<Point> through = at(outline, side).through();
    if (through.isEmpty()) {
      return OptionalDouble.empty();
    }
    Point from = at(outline, side).at();
    Point to = at(outline, side + 1).at();
    Point on = through.get();
    double cross = cross(from, to, on);
    double seen = Math.abs(Math.atan2(cross(on, from, to), dot(on, from, to)));
    // The height of an arc over its chord from the angle under which the chord is seen from it.
    double high = from.distanceMm(to) / 2 * Math.tan((Math.PI - seen) / 2);
    return OptionalDouble.of(cross > 0 == anticlockwise(outline) ? -high : high);
  }

  /** Returns the radius of a side; empty when it is straight. */
  static OptionalDouble radiusMm(Outline outline, int side) {
    OptionalDouble bulge = bulgeMm(outline, side);
    if (bulge.isEmpty()) {
      return bulge;
    }
    double half = at(outline, side).at().distanceMm(at(outline, side + 1).at()) / 2;
    double high = Math.abs(bulge.getAsDouble());
    return OptionalDouble.of((half * half + high * high) / (2 * high));
  }

  /**
   * Returns the outline with a side that bulges so far outwards; straight when it does not.
   *
   * @throws org.fettlebench.fits.SeatException if a rounding beside it cannot be so
   */
  static Outline bulged(Outline outline, int side, double outwardsMm) {
    Corner own = at(outline, side);
    if (Math.abs(outwardsMm) < LEAST_MM) {
      return with(outline, side, own.withStraightEdge());
    }
    Point from = own.at();
    Point to = at(outline, side + 1).at();
    double length = from.distanceMm(to);
    double right = anticlockwise(outline) ? outwardsMm : -outwardsMm;
    Point middle = new Point((from.xMm() + to.xMm()) / 2, (from.yMm() + to.yMm()) / 2);
    return with(
        outline,
        side,
        own.withThrough(
            middle.moved(
                right * (to.yMm() - from.yMm()) / length,
                -right * (to.xMm() - from.xMm()) / length)));
  }

  /**
   * Returns the outline with a side of a radius that bulges to the side to which it does, else
   * outwards.
   *
   * @throws org.fettlebench.fits.SeatException if the radius does not reach from end to end
   */
  static Outline radius(Outline outline, int side, double radiusMm) {
    Corner own = at(outline, side);
    boolean outwards = bulgeMm(outline, side).orElse(1) > 0;
    boolean left = outwards != anticlockwise(outline);
    Point through = Outline.throughOfRadius(own.at(), at(outline, side + 1).at(), radiusMm, left);
    return with(outline, side, own.withThrough(through));
  }

  /**
   * Returns the outline with an arc through a place.
   *
   * @throws org.fettlebench.fits.SeatException if there is no such arc
   */
  static Outline through(Outline outline, int side, Point place) {
    return with(outline, side, at(outline, side).withThrough(place));
  }

  /**
   * Returns the outline with a corner rounded; 0 makes it sharp.
   *
   * @throws org.fettlebench.fits.SeatException if there is no room for it
   */
  static Outline rounded(Outline outline, int index, double radiusMm) {
    return with(outline, index, at(outline, index).withRounded(radiusMm));
  }

  /** Returns the outline without a corner; the side before it is then straight. */
  static Outline without(Outline outline, int index) {
    Outline straight = with(outline, index - 1, at(outline, index - 1).withStraightEdge());
    return Outline.ofCorners(Shape.without(straight.corners(), index));
  }

  /** Returns the highest place of a side's arc. */
  static Optional<Point> top(Outline outline, int side) {
    OptionalDouble bulge = bulgeMm(outline, side);
    return bulge.isEmpty()
        ? Optional.empty()
        : at(bulged(outline, side, bulge.getAsDouble()), side).through();
  }

  private static boolean anticlockwise(Outline outline) {
    List<Point> points = outline.points();
    double twice = 0;
    for (int i = 0; i < points.size(); i++) {
      twice += cross(points.get(0), points.get(i), points.get((i + 1) % points.size()));
    }
    return twice > 0;
  }

  private static double cross(Point at, Point a, Point b) {
    return (a.xMm() - at.xMm()) * (b.yMm() - at.yMm())
        - (a.yMm() - at.yMm()) * (b.xMm() - at.xMm());
  }

  private static double dot(Point at, Point a, Point b) {
    return (a.xMm() - at.xMm()) * (b.xMm() - at.xMm())
        + (a.yMm() - at.yMm()) * (b.yMm() - at.yMm());
  }
}
