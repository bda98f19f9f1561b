package org.fettlebench.desktop.seats.internal;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.fits.Seat;
import org.fettlebench.kits.SeatFile;
import org.fettlebench.measure.Point;

/** Sketches to try things on. */
final class Sketches {
  private Sketches() {}

  static List<Point> square(double mm) {
    return List.of(new Point(0, 0), new Point(mm, 0), new Point(mm, mm), new Point(0, mm));
  }

  static Sketch byCorners(List<Point> corners) {
    Shape shape = Shape.EMPTY.with(Shape.EMPTY.stations().withUsed(false)).withGiven(corners);
    return Sketch.EMPTY.withName("land").with(shape);
  }

  static Sketch byStations(Row... rows) {
    return Sketch.EMPTY.with(Shape.EMPTY.with(Shape.EMPTY.stations().with(List.of(rows))));
  }

  /** Something of everything. */
  static Sketch full() {
    Sketch flat = byCorners(square(12));
    Shape shape =
        flat.shape()
            .withWalls(List.of(new Seat.Wall("bore", new Point(0, 12), new Point(12, 12), 9, 0.5)))
            .withNeighbours(List.of(new Seat.Neighbour("oiler", new Point(17, 6), 4)))
            .withUnderside(Optional.of(square(12.5)))
            .withCavities(
                List.of(
                    List.of(new Point(1, 1), new Point(2, 1), new Point(2, 2), new Point(1, 2))))
            .withLeastMetal(1.2);
    return flat.with(shape)
        .with(new Sketch.Top("2 BA", "hexagon", Optional.empty(), OptionalDouble.of(30)))
        .with(
            new Sketch.Hole(
                Optional.of(new Point(6.25, 5.75)),
                OptionalDouble.of(4.9),
                "jig",
                0.99,
                Optional.of(new SeatFile.Drilled(new Point(6.5, 5.5), 4, 0.05))));
  }
}
