package org.fettlebench.fits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.measure.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** What must hold for any seat; the number shown with a failure is the seed. */
class SeatLawsTest {
  private static final double EXACT = 1e-6;
  private final SeatChecker seats = new SeatChecker();

  static IntStream seeds() {
    return IntStream.range(0, 60);
  }

  /** A star-shaped flat, often with reentrant corners, and now and then a wall and a neighbour. */
  private static SeatQuestion any(int seed) {
    Random random = new Random(seed);
    int count = 3 + random.nextInt(8);
    List<Point> outline = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double angle = 2 * Math.PI * (i + 0.6 * random.nextDouble()) / count;
      double radius = 6 + 14 * random.nextDouble();
      outline.add(new Point(radius * Math.cos(angle), radius * Math.sin(angle)));
    }
    Point intended = new Point(random.nextDouble() * 10 - 5, random.nextDouble() * 10 - 5);
    Seat seat = Bench.seat(outline, intended);
    if (seed % 3 == 0) {
      seat = Bench.with(seat, new Seat.Wall("wall", outline.get(0), outline.get(1), 5, 0.8));
    }
    SeatedHead head = Bench.hexagon(1 + random.nextDouble() * 7);
    return Bench.ask(seat, seed % 4 == 1 ? head.withFlatsAlong(random.nextDouble() * 60) : head);
  }

  private static SeatQuestion moved(
      SeatQuestion question, UnaryOperator<Point> place, double turnDegrees, double scale) {
    Seat seat = question.seat();
    SeatedHead head = question.head();
    Seat other =
        Bench.with(
            Bench.seat(
                seat.outline().points().stream().map(place).toList(), place.apply(seat.intended())),
            seat.walls().stream()
                .map(
                    wall ->
                        new Seat.Wall(
                            wall.name(),
                            place.apply(wall.from()),
                            place.apply(wall.to()),
                            wall.heightMm() * scale,
                            wall.filletRadiusMm() * scale))
                .toArray(Seat.Wall[]::new));
    OptionalDouble flats =
        head.flatsAlongDegrees().isPresent()
            ? OptionalDouble.of(head.flatsAlongDegrees().getAsDouble() + turnDegrees)
            : OptionalDouble.empty();
    SeatedHead turned =
        new SeatedHead(
            head.title(),
            head.sweepDiameterMm() * scale,
            OptionalDouble.of(head.acrossFlatsMm().getAsDouble() * scale),
            head.heightMm(),
            flats,
            head.caveat());
    return new SeatQuestion(
        other, turned, question.holeDiameterMm() * scale, question.expectedErrorMm() * scale, "");
  }

  private void same(SeatQuestion question, SeatQuestion other, double scale) {
    SeatAnswer expected = seats.check(question);
    SeatAnswer found = seats.check(other);
    assertEquals(expected.verdict(), found.verdict());
    assertEquals(
        expected.allowanceAtIntendedMm() * scale, found.allowanceAtIntendedMm(), EXACT * scale);
    assertEquals(expected.allowanceAtBestMm() * scale, found.allowanceAtBestMm(), EXACT * scale);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void turnedSeatAnswersTheSame(int seed) {
    double angle = 0.1 + seed;
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    SeatQuestion question = any(seed);
    same(
        question,
        moved(
            question,
            p -> new Point(p.xMm() * cos - p.yMm() * sin, p.xMm() * sin + p.yMm() * cos),
            Math.toDegrees(angle),
            1),
        1);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void shiftedScaledAndMirroredSeatsAnswerTheSame(int seed) {
    SeatQuestion question = any(seed);
    same(question, moved(question, p -> p.moved(123.4, -56.7), 0, 1), 1);
    same(question, moved(question, p -> new Point(p.xMm() * 25.4, p.yMm() * 25.4), 0, 25.4), 25.4);
    double turn = -2 * question.head().flatsAlongDegrees().orElse(0);
    same(question, moved(question, p -> new Point(p.xMm(), -p.yMm()), turn, 1), 1);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void cornersMayStartAnywhereAndRunEitherWay(int seed) {
    SeatQuestion question = any(seed);
    List<Point> outline = new ArrayList<>(question.seat().outline().points());
    Collections.rotate(outline, seed % outline.size());
    Collections.reverse(outline);
    Seat other =
        Bench.with(
            Bench.seat(outline, question.seat().intended()),
            question.seat().walls().toArray(Seat.Wall[]::new));

    same(question, Bench.ask(other, question.head()), 1);
  }

  /** The region comes from polygons, the figures from distances: two ways to one answer. */
  @ParameterizedTest
  @MethodSource("seeds")
  void allowanceAgreesWithTheRegion(int seed) {
    SeatAnswer answer = seats.check(any(seed));
    GeometryFactory geometry = new GeometryFactory();
    Point at = answer.question().seat().intended();
    Geometry centre = geometry.createPoint(new Coordinate(at.xMm(), at.yMm()));
    Geometry best = geometry.createPoint(new Coordinate(answer.best().xMm(), answer.best().yMm()));
    double broken = 0.02;

    assertEquals(answer.allowanceAtBestMm() > 0, !answer.allowed().isEmpty());
    double greatest = Double.NEGATIVE_INFINITY;
    double nearest = Double.POSITIVE_INFINITY;
    for (SeatAnswer.Region region : answer.allowed()) {
      Geometry area = AllowedCentres.polygon(region.shell());
      nearest = Math.min(nearest, area.distance(centre));
      if (area.contains(best)) {
        greatest = Math.max(greatest, area.getBoundary().distance(best));
      }
      if (area.contains(centre)) {
        assertEquals(area.getBoundary().distance(centre), answer.allowanceAtIntendedMm(), broken);
      }
    }
    if (!answer.allowed().isEmpty()) {
      assertEquals(greatest, answer.allowanceAtBestMm(), broken);
      if (answer.allowanceAtIntendedMm() < 0) {
        assertEquals(nearest, -answer.allowanceAtIntendedMm(), broken);
      }
    }
  }

  /** No place on a fine grid has more room than the best centre. */
  @ParameterizedTest
  @MethodSource("seeds")
  void nowhereIsBetterThanTheBestCentre(int seed) {
    SeatQuestion question = any(seed);
    Room room = new Plan(question).room();
    double best = seats.check(question).allowanceAtBestMm();
    for (double x = -20; x <= 20; x += 0.5) {
      for (double y = -20; y <= 20; y += 0.5) {
        assertTrue(room.at(x, y) <= best + EXACT, x + ", " + y);
      }
    }
  }

  /** Set square, a head never needs more room than when it is turned anywhere. */
  @ParameterizedTest
  @MethodSource("seeds")
  void aSetHeadHasNoLessRoom(int seed) {
    SeatQuestion question = any(seed * 4);
    SeatAnswer turned = seats.check(question);
    SeatAnswer set = seats.check(question.withHead(question.head().withFlatsAlong(seed)));

    assertTrue(set.allowanceAtBestMm() >= turned.allowanceAtBestMm() - EXACT);
    assertTrue(set.allowanceAtIntendedMm() >= turned.allowanceAtIntendedMm() - EXACT);
  }
}
