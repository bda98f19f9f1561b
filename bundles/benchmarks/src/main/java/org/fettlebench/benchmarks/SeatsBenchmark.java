package org.fettlebench.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Reach;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatCure;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.internal.SeatChecker;
import org.fettlebench.measure.Point;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** One seat question with many corners and walls, against a library's own polygon operations. */
@State(Scope.Benchmark)
public class SeatsBenchmark {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  /** Corners of the flat and walls on it. */
  @Param({"4/1", "200/20"})
  String size;

  private final SeatChecker seats = new SeatChecker();
  private SeatQuestion question;
  private SeatQuestion fouling;
  private Geometry flat;
  private Geometry walls;

  /** Makes the question with the intended centre allowed and failing. */
  @Setup
  public void make() {
    String[] counts = size.split("/");
    question = question(Integer.parseInt(counts[0]), Integer.parseInt(counts[1]));
    fouling = question.withIntended(new Point(17, 3));
    List<Coordinate> ring = new ArrayList<>();
    question.seat().outline().points().forEach(corner -> ring.add(coordinate(corner)));
    ring.add(ring.get(0));
    flat = GEOMETRY.createPolygon(ring.toArray(new Coordinate[0]));
    walls =
        GEOMETRY.buildGeometry(
            question.seat().walls().stream()
                .map(
                    wall ->
                        GEOMETRY.createLineString(
                            new Coordinate[] {coordinate(wall.from()), coordinate(wall.to())}))
                .toList());
  }

  /** Returns a hexagon on a star-shaped flat with walls along its edge. */
  static SeatQuestion question(int corners, int walls) {
    List<Point> outline = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * i / corners;
      double radius = 20 + 2 * Math.sin(5 * angle) + (i % 2 == 0 ? 0.4 : 0);
      outline.add(new Point(radius * Math.cos(angle), radius * Math.sin(angle)));
    }
    List<Seat.Wall> standing = new ArrayList<>();
    for (int i = 0; i < walls; i++) {
      Point from = outline.get(i * corners / walls);
      Point to = outline.get((i * corners / walls + 1) % corners);
      standing.add(new Seat.Wall("wall " + i, from, to, 9, 0.8));
    }
    SeatedHead head =
        new SeatedHead(
            "hexagon",
            10 / Math.cos(Math.PI / 6),
            OptionalDouble.of(10),
            OptionalDouble.of(4),
            OptionalDouble.empty(),
            "");
    Seat seat = Seat.flat("star", Outline.of(outline), new Point(3, 2)).withWalls(standing);
    return new SeatQuestion(seat, head, 6, 0.3, "asked");
  }

  private static Coordinate coordinate(Point point) {
    return new Coordinate(point.xMm(), point.yMm());
  }

  /** Verdict, allowance, best centre and governing feature, as a pointer moves. */
  @Benchmark
  public SeatAnswer check() {
    return seats.check(question);
  }

  /** The same where the intended centre fails, with the nearest allowed one. */
  @Benchmark
  public SeatAnswer checkFouling() {
    return seats.check(fouling);
  }

  /** The regions too, as they are drawn. */
  @Benchmark
  public List<SeatAnswer.Region> regions() {
    return seats.check(question).allowed();
  }

  /** Sixteen directions. */
  @Benchmark
  public List<Reach> rose() {
    return seats.rose(question, 16);
  }

  /** Cures of a centre that fails. */
  @Benchmark
  public List<SeatCure> cures() {
    return seats.cures(seats.check(fouling), List.of(), List.of(), 0.95);
  }

  /** What the library gives: the shrunk flat less the grown walls, and its inscribed circle. */
  @Benchmark
  public Geometry library() {
    return MaximumInscribedCircle.getRadiusLine(libraryRegions(), 1e-6);
  }

  /** The region alone by the library's plain buffering, each quarter circle in 16 chords. */
  @Benchmark
  public Geometry libraryRegions() {
    double head = 5 / Math.cos(Math.PI / 6);
    return flat.buffer(-head, 16).difference(walls.buffer(head + 0.8, 16));
  }

  /** A plain loop: the room at every place of a grid of a hundredth of the flat. */
  @Benchmark
  public double grid() {
    double most = Double.NEGATIVE_INFINITY;
    Coordinate[] ring = flat.getCoordinates();
    for (int i = 0; i <= 100; i++) {
      for (int j = 0; j <= 100; j++) {
        most = Math.max(most, nearest(ring, -22.5 + 0.45 * i, -22.5 + 0.45 * j));
      }
    }
    return most;
  }

  private static double nearest(Coordinate[] ring, double x, double y) {
    double least = Double.POSITIVE_INFINITY;
    boolean inside = false;
    for (int i = 0; i + 1 < ring.length; i++) {
      double dx = ring[i + 1].x - ring[i].x;
      double dy = ring[i + 1].y - ring[i].y;
      double share = ((x - ring[i].x) * dx + (y - ring[i].y) * dy) / (dx * dx + dy * dy);
      double held = Math.max(0, Math.min(1, share));
      least = Math.min(least, Math.hypot(x - ring[i].x - held * dx, y - ring[i].y - held * dy));
      boolean crossed =
          ring[i].y > y != ring[i + 1].y > y && x < ring[i].x + (y - ring[i].y) / dy * dx;
      inside ^= crossed;
    }
    return inside ? least : -least;
  }
}
