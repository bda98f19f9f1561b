package org.fettlebench.holes.internal.correct;

import static org.fettlebench.holes.internal.correct.Readings.FAR;
import static org.fettlebench.holes.internal.correct.Readings.LEFT;
import static org.fettlebench.holes.internal.correct.Readings.NEAR;
import static org.fettlebench.holes.internal.correct.Readings.ask;
import static org.fettlebench.holes.internal.correct.Readings.read;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.fettlebench.holes.correct.HoleException;
import org.fettlebench.holes.correct.MeasuredHole;
import org.fettlebench.holes.correct.MeasuredHole.Agreement;
import org.fettlebench.holes.correct.Reading;
import org.fettlebench.holes.correct.Reading.Edge;
import org.fettlebench.holes.correct.Reading.Spot;
import org.fettlebench.holes.correct.Reading.To;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Where a hole is, from what was read of it. */
class HoleFitterTest {
  private static final double EXACT = 1e-9;
  private final HoleFitter fitter = new HoleFitter();

  private static void at(double x, double y, Point found) {
    assertEquals(x, found.xMm(), EXACT);
    assertEquals(y, found.yMm(), EXACT);
  }

  @Test
  void calliperOverPinAndEdge() {
    // 4 mm hole at 12, 7: over the pin 14 from the left, 9 from the near edge.
    MeasuredHole hole =
        fitter.measure(
            ask(4, 4, new Point(11, 8), read(LEFT, To.OVER_PIN, 14), read(NEAR, To.OVER_PIN, 9)));
    at(12, 7, hole.centre());
    assertEquals(Agreement.UNCHECKED, hole.agreement());
    assertTrue(hole.cautions().isEmpty());
    assertTrue(hole.other().isEmpty());
  }

  @Test
  void ruleToTheRimAndDepthRodToThePin() {
    at(
        12,
        7,
        fitter
            .measure(
                ask(
                    4,
                    3.9,
                    new Point(1, 1),
                    read(LEFT, To.NEAR_RIM, 10),
                    read(NEAR, To.TO_PIN, 5.05)))
            .centre());
    at(
        12,
        7,
        fitter
            .measure(
                ask(4, 3.9, new Point(1, 1), read(LEFT, To.FAR_RIM, 14), read(FAR, To.CENTRE, 13)))
            .centre());
  }

  @Test
  void calliperOverTwoHoles() {
    // Holes of 3 and 4 mm, pins fit; the known one at 2, 3: centres are 5 apart in a 3-4-5
    // triangle.
    Spot known = new Spot("hole 1", new Point(2, 3), 3);
    MeasuredHole over =
        fitter.measure(
            ask(
                4,
                4,
                new Point(5.2, 6.7),
                read(known, To.OVER_PIN, 8.5),
                read(LEFT, To.CENTRE, 5)));
    at(5, 7, over.centre());
    at(5, -1, over.other().orElseThrow());
    MeasuredHole between =
        fitter.measure(
            ask(4, 4, new Point(5.2, 6.7), read(known, To.TO_PIN, 1.5), read(NEAR, To.CENTRE, 7)));
    at(5, 7, between.centre());
    at(-1, 7, between.other().orElseThrow());
  }

  @Test
  void distancesFromTwoKnownHoles() {
    Spot one = new Spot("hole 1", new Point(0, 0), 0);
    Spot two = new Spot("hole 2", new Point(10, 0), 0);
    MeasuredHole hole =
        fitter.measure(
            ask(
                4,
                4,
                new Point(3, 3),
                read(one, To.CENTRE, 5),
                read(two, To.CENTRE, Math.sqrt(65))));
    at(3, 4, hole.centre());
    at(3, -4, hole.other().orElseThrow());
  }

  @Test
  void theHoleMayLieOnEitherSideOfAnEdge() {
    MeasuredHole hole =
        fitter.measure(
            ask(4, 4, new Point(-3, -1), read(LEFT, To.CENTRE, 3.5), read(NEAR, To.CENTRE, 1.25)));
    at(-3.5, -1.25, hole.centre());
    assertEquals(2, hole.cautions().size(), "beyond both edges: " + hole.cautions());
  }

  static IntStream seeds() {
    return IntStream.range(0, 200);
  }

  /** Readings made from a place, off references of any kind, lead back to it. */
  @ParameterizedTest
  @MethodSource("seeds")
  void findsThePlaceThatTheReadingsWereMadeFrom(int seed) {
    Random random = new Random(seed);
    Point centre = new Point(20 * random.nextDouble() + 5, 20 * random.nextDouble() + 5);
    double hole = 1 + 4 * random.nextDouble();
    double pin = hole;
    List<Reading> readings = new ArrayList<>();
    int count = 3 + random.nextInt(3);
    for (int i = 0; i < count; i++) {
      readings.add(made(random, centre, hole, pin, i));
    }
    Point near = centre.moved(random.nextDouble() - 0.5, random.nextDouble() - 0.5);
    MeasuredHole found;
    try {
      found = fitter.measure(ask(hole, pin, near, readings.toArray(Reading[]::new)));
    } catch (HoleException parallel) {
      // Two of the random references may happen to look the same way.
      assertTrue(parallel.getMessage().contains("parallel"), parallel.getMessage());
      return;
    }
    assertEquals(0, found.centre().distanceMm(centre), 1e-6);
    assertTrue(found.other().isEmpty(), "three readings leave no doubt: " + found.other());
    found.misfits().forEach(misfit -> assertEquals(0, misfit.misfitMm(), 1e-6));
  }

  private static Reading made(Random random, Point centre, double hole, double pin, int index) {
    To to = To.values()[random.nextInt(To.values().length)];
    boolean edge = random.nextBoolean() || index == 0;
    double turn = 2 * Math.PI * random.nextDouble();
    double away = 6 + 20 * random.nextDouble();
    Point foot = centre.moved(away * Math.cos(turn), away * Math.sin(turn));
    double diameter = edge ? 0 : 2 * random.nextDouble();
    double half =
        switch (to) {
          case CENTRE -> 0;
          case NEAR_RIM -> -(hole + diameter) / 2;
          case FAR_RIM -> (hole + diameter) / 2;
          case OVER_PIN -> (pin + diameter) / 2;
          case TO_PIN -> -(pin + diameter) / 2;
        };
    double dx = -Math.sin(turn);
    double dy = Math.cos(turn);
    Reading.Reference from =
        edge
            ? new Edge("edge " + index, foot.moved(-9 * dx, -9 * dy), foot.moved(15 * dx, 15 * dy))
            : new Spot("spot " + index, foot, diameter);
    return new Reading(from, to, away + half, 0.05);
  }

  @Test
  void turningEverythingTurnsThePlace() {
    double turn = 0.7;
    Reading[] readings = {read(LEFT, To.OVER_PIN, 14), read(NEAR, To.OVER_PIN, 9)};
    Reading[] turned = new Reading[2];
    for (int i = 0; i < 2; i++) {
      Edge edge = (Edge) readings[i].from();
      turned[i] =
          read(
              new Edge(edge.name(), turn(edge.start(), turn), turn(edge.end(), turn)),
              To.OVER_PIN,
              readings[i].readingMm());
    }
    MeasuredHole plain = fitter.measure(ask(4, 4, new Point(11, 8), readings));
    MeasuredHole other = fitter.measure(ask(4, 4, turn(new Point(11, 8), turn), turned));
    Point expected = turn(plain.centre(), turn);
    at(expected.xMm(), expected.yMm(), other.centre());
    assertEquals(plain.withinMm(), other.withinMm(), EXACT);
  }

  private static Point turn(Point p, double by) {
    return new Point(
        p.xMm() * Math.cos(by) - p.yMm() * Math.sin(by),
        p.xMm() * Math.sin(by) + p.yMm() * Math.cos(by));
  }
}
