package org.fettlebench.desktop.seats.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Seat;
import org.fettlebench.measure.Point;

/**
 * The flat and what stands on it, as far as it is known.
 *
 * @param stations widths as measured
 * @param given corners as given; used while the stations are not
 * @param underside corners of the far face
 * @param cavities corners of hollows below
 * @param walls what stands above
 * @param neighbours other heads
 * @param leastMetalMm metal wanted round the hole; 0 when not asked
 * @param bends outlines with arcs, each known by the chords that stand for it above
 */
record Shape(
    Stations stations,
    List<Point> given,
    Optional<List<Point>> underside,
    List<List<Point>> cavities,
    List<Seat.Wall> walls,
    List<Seat.Neighbour> neighbours,
    double leastMetalMm,
    List<Outline> bends) {
  static final Shape EMPTY =
      new Shape(
          new Stations(true, false, List.of()),
          List.of(),
          Optional.empty(),
          List.of(),
          List.of(),
          List.of(),
          0,
          List.of());

  Shape {
    given = List.copyOf(given);
    underside = underside.map(List::copyOf);
    cavities = cavities.stream().map(List::copyOf).toList();
    walls = List.copyOf(walls);
    neighbours = List.copyOf(neighbours);
    bends = List.copyOf(bends);
  }

  Shape with(Stations other) {
    return new Shape(other, given, underside, cavities, walls, neighbours, leastMetalMm, bends);
  }

  Shape withGiven(List<Point> corners) {
    return new Shape(
        stations, corners, underside, cavities, walls, neighbours, leastMetalMm, bends);
  }

  Shape withUnderside(Optional<List<Point>> other) {
    return new Shape(stations, given, other, cavities, walls, neighbours, leastMetalMm, bends);
  }

  Shape withCavities(List<List<Point>> others) {
    return new Shape(stations, given, underside, others, walls, neighbours, leastMetalMm, bends);
  }

  Shape withWalls(List<Seat.Wall> others) {
    return new Shape(stations, given, underside, cavities, others, neighbours, leastMetalMm, bends);
  }

  Shape withNeighbours(List<Seat.Neighbour> others) {
    return new Shape(stations, given, underside, cavities, walls, others, leastMetalMm, bends);
  }

  Shape withLeastMetal(double mm) {
    return new Shape(stations, given, underside, cavities, walls, neighbours, mm, bends);
  }

  /** Returns the outline; empty while there is none. */
  List<Point> corners() {
    return stations.used() ? stations.corners() : given;
  }

  /** Returns the outline by its corners from now on. */
  Shape byCorners() {
    return withGiven(corners()).with(stations.withUsed(false));
  }

  Shape withBends(List<Outline> others) {
    return new Shape(stations, given, underside, cavities, walls, neighbours, leastMetalMm, others);
  }

  /** Returns the line of which these are the corners, with its arcs where it has some. */
  Outline outline(List<Point> ring) {
    return bends.stream()
        .filter(bent -> bent.points().equals(ring))
        .findFirst()
        .orElseGet(() -> Outline.of(ring));
  }

  /** Returns whether these corners are the chords of a line with arcs. */
  boolean bent(List<Point> ring) {
    return bends.stream().anyMatch(bent -> bent.points().equals(ring));
  }

  /** Returns the corners of a line as a person knows them: an arc's chords have none. */
  List<Point> knots(List<Point> ring) {
    return bent(ring) ? outline(ring).corners().stream().map(Outline.Corner::at).toList() : ring;
  }

  /** Returns the same with another outline, by its corners from now on. */
  Shape withOutline(Outline other) {
    return rebent(corners(), other).withGiven(other.points()).with(stations.withUsed(false));
  }

  /** Returns the same with a ring's arcs known anew; the ring itself is to be set besides. */
  Shape rebent(List<Point> before, Outline after) {
    List<Outline> all = new ArrayList<>(bends);
    all.removeIf(bent -> bent.points().equals(before));
    if (after.bent()) {
      all.add(after);
    }
    return withBends(all);
  }

  boolean drawable() {
    return corners().size() >= 3;
  }

  /** Returns the middle of the box round the outline. */
  Optional<Point> middle() {
    if (!drawable()) {
      return Optional.empty();
    }
    double[] box = box();
    return Optional.of(new Point((box[0] + box[2]) / 2, (box[1] + box[3]) / 2));
  }

  /** Returns left, near, right and far of the outline. */
  double[] box() {
    double[] box = {
      Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY,
      Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY
    };
    for (Point corner : corners()) {
      box[0] = Math.min(box[0], corner.xMm());
      box[1] = Math.min(box[1], corner.yMm());
      box[2] = Math.max(box[2], corner.xMm());
      box[3] = Math.max(box[3], corner.yMm());
    }
    return box;
  }

  /** Returns a list with one thing changed. */
  static <T> List<T> set(List<T> list, int index, T thing) {
    List<T> changed = new ArrayList<>(list);
    changed.set(index, thing);
    return changed;
  }

  /** Returns a list without one thing. */
  static <T> List<T> without(List<T> list, int index) {
    List<T> changed = new ArrayList<>(list);
    changed.remove(index);
    return changed;
  }

  /** Returns a list with one thing more. */
  static <T> List<T> plus(List<T> list, int index, T thing) {
    List<T> changed = new ArrayList<>(list);
    changed.add(index, thing);
    return changed;
  }
}
