package org.fettlebench.desktop.seats.internal;

import java.util.List;
import java.util.Optional;
import org.fettlebench.fits.Outline;
import org.fettlebench.measure.Point;

/** Edges of a ring of corners: the nearest to a place, and the place on it. */
final class Edges {
  private Edges() {}

  /**
   * A place on an edge.
   *
   * @param edge number of its first corner
   * @param at the place
   * @param distanceMm from where it was looked for
   */
  record Foot(int edge, Point at, double distanceMm) {}

  /** Returns the place of the ring nearest to a place; empty when it has no edge. */
  static Optional<Foot> nearest(List<Point> ring, Point place) {
    Optional<Foot> found = Optional.empty();
    for (int i = 0; i < ring.size(); i++) {
      Point at = foot(ring.get(i), ring.get((i + 1) % ring.size()), place);
      double distance = at.distanceMm(place);
      if (found.isEmpty() || distance < found.get().distanceMm()) {
        found = Optional.of(new Foot(i, at, distance));
      }
    }
    return found;
  }

  static Point foot(Point from, Point to, Point place) {
    double dx = to.xMm() - from.xMm();
    double dy = to.yMm() - from.yMm();
    double square = dx * dx + dy * dy;
    if (!(square > 0)) {
      return from;
    }
    double share = ((place.xMm() - from.xMm()) * dx + (place.yMm() - from.yMm()) * dy) / square;
    double within = Math.max(0, Math.min(1, share));
    return from.moved(within * dx, within * dy);
  }

  /** Returns the sketch with a corner more on the edge under a place; empty when none is near. */
  static Optional<Sketch> cornerAdded(Sketch sketch, Point place, double reachMm) {
    Shape shape = sketch.shape();
    return nearest(shape.knots(shape.corners()), place)
        .filter(foot -> foot.distanceMm() <= reachMm)
        .flatMap(foot -> added(shape, foot))
        .filter(changed -> !changed.equals(shape))
        .map(sketch::with);
  }

  private static Optional<Shape> added(Shape shape, Foot foot) {
    if (shape.stations().used()) {
      return Optional.of(shape.with(shape.stations().added(foot.at().xMm())));
    }
    if (!shape.bent(shape.given())) {
      return Optional.of(shape.withGiven(Shape.plus(shape.given(), foot.edge() + 1, foot.at())));
    }
    List<Outline.Corner> corners = shape.outline(shape.given()).corners();
    Outline.Corner added = Outline.Corner.sharp(foot.at());
    return corners.get(foot.edge()).through().isPresent()
        ? Optional.empty()
        : Optional.of(
            Handles.bent(
                shape, outline -> Outline.ofCorners(Shape.plus(corners, foot.edge() + 1, added))));
  }

  /** Returns the number of the longest edge. */
  static int longest(List<Point> ring) {
    int best = 0;
    double most = -1;
    for (int i = 0; i < ring.size(); i++) {
      double length = ring.get(i).distanceMm(ring.get((i + 1) % ring.size()));
      if (length > most) {
        most = length;
        best = i;
      }
    }
    return best;
  }
}
