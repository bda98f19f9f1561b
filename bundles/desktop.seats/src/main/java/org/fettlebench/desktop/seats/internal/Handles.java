package org.fettlebench.desktop.seats.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatException;
import org.fettlebench.kits.SeatFile;
import org.fettlebench.measure.Point;

/** What may be taken hold of on a sketch, and what comes of moving it. */
final class Handles {
  private Handles() {}

  /** A handle and where it is. */
  record Placed(Handle handle, Point at) {}

  /** Returns all handles in the order of Tab. */
  static List<Placed> of(Sketch sketch) {
    List<Placed> all = new ArrayList<>();
    Shape shape = sketch.shape();
    sketch.centre().ifPresent(at -> all.add(new Placed(Handle.CENTRE, at)));
    sketch.hole().found().ifPresent(hole -> all.add(new Placed(Handle.FOUND, hole.centre())));
    add(all, Handle.Kind.CORNER, shape.knots(shape.corners()));
    arcs(all, shape);
    for (int i = 0; i < shape.walls().size(); i++) {
      Seat.Wall wall = shape.walls().get(i);
      all.add(new Placed(Handle.of(Handle.Kind.WALL_FROM, i), wall.from()));
      all.add(new Placed(Handle.of(Handle.Kind.WALL_TO, i), wall.to()));
      all.add(new Placed(Handle.of(Handle.Kind.WALL, i), middle(wall.from(), wall.to())));
    }
    add(
        all,
        Handle.Kind.NEIGHBOUR,
        shape.neighbours().stream().map(Seat.Neighbour::centre).toList());
    shape.underside().ifPresent(below -> add(all, Handle.Kind.UNDERSIDE, shape.knots(below)));
    for (int i = 0; i < shape.cavities().size(); i++) {
      List<Point> knots = shape.knots(shape.cavities().get(i));
      for (int j = 0; j < knots.size(); j++) {
        all.add(new Placed(new Handle(Handle.Kind.CAVITY, i, j), knots.get(j)));
      }
    }
    return all;
  }

  private static void arcs(List<Placed> all, Shape shape) {
    if (shape.bent(shape.corners())) {
      Outline outline = shape.outline(shape.corners());
      for (int i = 0; i < outline.corners().size(); i++) {
        Handle handle = Handle.of(Handle.Kind.ARC, i);
        Arcs.top(outline, i).ifPresent(top -> all.add(new Placed(handle, top)));
      }
    }
  }

  private static void add(List<Placed> all, Handle.Kind kind, List<Point> places) {
    for (int i = 0; i < places.size(); i++) {
      all.add(new Placed(Handle.of(kind, i), places.get(i)));
    }
  }

  private static Point middle(Point a, Point b) {
    return new Point((a.xMm() + b.xMm()) / 2, (a.yMm() + b.yMm()) / 2);
  }

  /** Returns where a handle is; empty when it is gone. */
  static Optional<Point> at(Sketch sketch, Handle handle) {
    return of(sketch).stream()
        .filter(each -> each.handle().equals(handle))
        .map(Placed::at)
        .findFirst();
  }

  /**
   * Returns the handle nearest to a place, of those within reach; of equally near ones the first in
   * the order of Tab, so that a centre is not hidden by a corner.
   */
  static Optional<Handle> hit(Sketch sketch, Point place, double reachMm) {
    Optional<Handle> found = Optional.empty();
    double nearest = reachMm;
    for (Placed each : of(sketch)) {
      double distance = each.at().distanceMm(place);
      if (distance < nearest || distance == nearest && found.isEmpty()) {
        nearest = distance;
        found = Optional.of(each.handle());
      }
    }
    return found;
  }

  /** Returns the handle after or before another in the order of Tab; empty past the end. */
  static Optional<Handle> next(Sketch sketch, Optional<Handle> from, boolean backwards) {
    List<Handle> all = of(sketch).stream().map(Placed::handle).toList();
    int at = from.map(all::indexOf).orElse(-1);
    int next = backwards ? (at < 0 ? all.size() - 1 : at - 1) : at + 1;
    return next >= 0 && next < all.size() ? Optional.of(all.get(next)) : Optional.empty();
  }

  /** Returns the sketch with a handle moved. */
  static Sketch moved(Sketch sketch, Handle handle, Point to) {
    Shape shape = sketch.shape();
    int index = handle.index();
    return switch (handle.kind()) {
      case CENTRE -> sketch.with(sketch.hole().at(to));
      case FOUND -> sketch.with(sketch.hole().found(sketch.hole().found().map(h -> moved(h, to))));
      case CORNER -> sketch.with(corner(shape, index, to));
      case ARC -> sketch.with(bent(shape, outline -> Arcs.through(outline, index, to)));
      case WALL_FROM -> wall(sketch, index, w -> wall(w, to, w.to()));
      case WALL_TO -> wall(sketch, index, w -> wall(w, w.from(), to));
      case WALL -> wall(sketch, index, w -> shifted(w, to));
      case NEIGHBOUR ->
          sketch.with(
              shape.withNeighbours(
                  Shape.set(shape.neighbours(), index, moved(shape.neighbours().get(index), to))));
      case UNDERSIDE ->
          sketch.with(ring(shape, shape.underside().orElseThrow(), index, to, Optional.empty()));
      case CAVITY ->
          sketch.with(
              ring(shape, shape.cavities().get(index), handle.part(), to, Optional.of(index)));
    };
  }

  /** Returns the shape with a corner of its far face or of a hollow elsewhere. */
  private static Shape ring(
      Shape shape, List<Point> ring, int corner, Point to, Optional<Integer> hollow) {
    try {
      boolean bent = shape.bent(ring);
      Outline after =
          bent
              ? Arcs.moved(shape.outline(ring), corner, to)
              : Outline.of(Shape.set(ring, corner, to));
      Shape known = bent ? shape.rebent(ring, after) : shape;
      return hollow
          .map(i -> known.withCavities(Shape.set(shape.cavities(), i, after.points())))
          .orElseGet(() -> known.withUnderside(Optional.of(after.points())));
    } catch (SeatException impossible) {
      return shape;
    }
  }

  /** Returns the shape with its outline changed; as it was where there is no such arc. */
  static Shape bent(Shape shape, UnaryOperator<Outline> change) {
    try {
      return shape.withOutline(change.apply(shape.outline(shape.corners())));
    } catch (SeatException impossible) {
      return shape;
    }
  }

  private static Shape corner(Shape shape, int index, Point to) {
    if (shape.bent(shape.corners())) {
      return bent(shape, outline -> Arcs.moved(outline, index, to));
    }
    return shape.stations().used()
        ? shape.with(shape.stations().moved(index, to))
        : shape.withGiven(Shape.set(shape.given(), index, to));
  }

  private static SeatFile.Drilled moved(SeatFile.Drilled hole, Point to) {
    return new SeatFile.Drilled(to, hole.diameterMm(), hole.withinMm());
  }

  private static Seat.Neighbour moved(Seat.Neighbour head, Point to) {
    return new Seat.Neighbour(head.name(), to, head.radiusMm());
  }

  private static Sketch wall(Sketch sketch, int index, UnaryOperator<Seat.Wall> change) {
    List<Seat.Wall> walls = sketch.shape().walls();
    Seat.Wall changed = change.apply(walls.get(index));
    // A wall without length has no direction; it stays as it was.
    return changed.from().equals(changed.to())
        ? sketch
        : sketch.with(sketch.shape().withWalls(Shape.set(walls, index, changed)));
  }

  private static Seat.Wall wall(Seat.Wall wall, Point from, Point to) {
    return new Seat.Wall(wall.name(), from, to, wall.heightMm(), wall.filletRadiusMm());
  }

  private static Seat.Wall shifted(Seat.Wall wall, Point middle) {
    Point before = middle(wall.from(), wall.to());
    double dx = middle.xMm() - before.xMm();
    double dy = middle.yMm() - before.yMm();
    return wall(wall, wall.from().moved(dx, dy), wall.to().moved(dx, dy));
  }

  /** Returns the sketch without what a handle belongs to; unchanged when it cannot be spared. */
  static Sketch removed(Sketch sketch, Handle handle) {
    Shape shape = sketch.shape();
    int index = handle.index();
    return switch (handle.kind()) {
      case CENTRE -> sketch;
      case FOUND -> sketch.with(sketch.hole().found(Optional.empty()));
      case CORNER -> sketch.with(withoutCorner(shape, index));
      case ARC -> sketch.with(bent(shape, outline -> Arcs.bulged(outline, index, 0)));
      case WALL_FROM, WALL_TO, WALL ->
          sketch.with(shape.withWalls(Shape.without(shape.walls(), index)));
      case NEIGHBOUR -> sketch.with(shape.withNeighbours(Shape.without(shape.neighbours(), index)));
      case UNDERSIDE ->
          sketch.with(
              shape.withUnderside(
                  shape
                      .underside()
                      .filter(ring -> ring.size() > 3 && !shape.bent(ring))
                      .map(ring -> Shape.without(ring, index))));
      case CAVITY -> {
        List<Point> ring = shape.cavities().get(index);
        yield sketch.with(
            shape.withCavities(
                ring.size() > 3 && !shape.bent(ring)
                    ? Shape.set(shape.cavities(), index, Shape.without(ring, handle.part()))
                    : Shape.without(shape.cavities(), index)));
      }
    };
  }

  private static Shape withoutCorner(Shape shape, int index) {
    if (shape.stations().used()) {
      return shape.with(shape.stations().without(index));
    }
    if (shape.bent(shape.given())) {
      return shape.knots(shape.given()).size() > 3
          ? bent(shape, outline -> Arcs.without(outline, index))
          : shape;
    }
    return shape.given().size() > 3 ? shape.withGiven(Shape.without(shape.given(), index)) : shape;
  }
}
