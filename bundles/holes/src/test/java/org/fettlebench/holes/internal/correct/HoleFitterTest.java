package org.fettlebench.holes.internal.correct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.fettlebench.drawing.Item;
import org.fettlebench.holes.correct.HoleException;
import org.fettlebench.holes.correct.MeasuredHole;
import org.fettlebench.holes.correct.MeasuredHole.Agreement;
import org.fettlebench.holes.correct.MeasuringQuestion;
import org.fettlebench.holes.correct.Reading;
import org.fettlebench.holes.correct.Reading.Edge;
import org.fettlebench.holes.correct.Reading.Spot;
import org.fettlebench.holes.correct.Reading.To;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class HoleFitterTest {
  private static final double EXACT = 1e-9;
  private static final Edge NEAR = new Edge("near edge", new Point(0, 0), new Point(30, 0));
  private static final Edge LEFT = new Edge("left edge", new Point(0, 20), new Point(0, 0));
  private static final Edge FAR = new Edge("far edge", new Point(30, 20), new Point(0, 20));

  private final HoleFitter fitter = new HoleFitter();

  private static Reading read(Reading.Reference from, To to, double mm) {
    return new Reading(from, to, mm, 0.02);
  }

  private static MeasuringQuestion ask(double hole, double pin, Point near, Reading... readings) {
    return new MeasuringQuestion(List.of(readings), hole, OptionalDouble.of(pin), near);
  }

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

  @Test
  void uncertaintyOfSquareEdgesIsThatOfEachReading() {
    MeasuredHole hole =
        fitter.measure(
            ask(
                4,
                4,
                new Point(11, 8),
                new Reading(LEFT, To.CENTRE, 12, 0.4),
                new Reading(NEAR, To.CENTRE, 7, 0.1)));
    assertEquals(0.2, hole.spread().alongXMm(), EXACT);
    assertEquals(0.05, hole.spread().alongYMm(), EXACT);
    assertEquals(0.2 * Math.sqrt(-2 * Math.log(0.05)), hole.withinMm(), EXACT);
  }

  @ParameterizedTest
  @ValueSource(doubles = {5, 15, 30, 60, 90, 120, 170})
  void edgesThatCrossAtAnAngleMagnify(double degrees) {
    double turn = Math.toRadians(degrees);
    Edge other =
        new Edge(
            "slanting edge", new Point(0, 0), new Point(50 * Math.cos(turn), 50 * Math.sin(turn)));
    Point near = new Point(20 * Math.cos(turn / 2), 20 * Math.sin(turn / 2));
    MeasuredHole hole =
        fitter.measure(ask(4, 4, near, read(NEAR, To.CENTRE, 5), read(other, To.CENTRE, 5)));
    // Closed form: two equal sights whose directions are at this angle.
    double factor = 1 / Math.sqrt(1 - Math.abs(Math.cos(turn)));
    assertEquals(0.01 * factor, hole.spread().greatestMm(), 1e-9);
    assertEquals(factor > 3, hole.cautions().stream().anyMatch(c -> c.contains("small angle")));
    at(5 / Math.tan(turn / 2), 5, hole.centre());
  }

  @Test
  void aLoosePinAddsItsShake() {
    MeasuredHole hole =
        fitter.measure(
            ask(4.6, 4, new Point(11, 8), read(LEFT, To.OVER_PIN, 14), read(NEAR, To.CENTRE, 7)));
    // 0.3 mm either way, bounded: 0.3 / sqrt 3 standard (GUM 4.3.7).
    assertEquals(Math.hypot(0.01, 0.3 / Math.sqrt(3)), hole.spread().alongXMm(), EXACT);
    assertEquals(0.01, hole.spread().alongYMm(), EXACT);
  }

  @Test
  void moreReadingsThanNeededAreAveragedAndChecked() {
    MeasuredHole hole =
        fitter.measure(
            ask(
                4,
                4,
                new Point(11, 8),
                read(LEFT, To.CENTRE, 12),
                read(NEAR, To.CENTRE, 7.01),
                read(FAR, To.CENTRE, 13.01)));
    // 7.01 from one side and 20 - 13.01 = 6.99 from the other: half way, each 0.01 off.
    at(12, 7, hole.centre());
    assertEquals(Agreement.AGREE, hole.agreement());
    assertEquals(0.01, hole.misfits().get(1).misfitMm(), EXACT);
    assertEquals(0.01, hole.misfits().get(2).misfitMm(), EXACT);
    assertEquals(0, hole.misfits().get(0).misfitMm(), EXACT);
    assertEquals(0.01 / Math.sqrt(2), hole.spread().alongYMm(), EXACT);
  }

  @Test
  void readingsThatContradictAreToldAndWidenTheUncertainty() {
    MeasuredHole hole =
        fitter.measure(
            ask(
                4,
                4,
                new Point(11, 8),
                read(LEFT, To.CENTRE, 12),
                read(NEAR, To.CENTRE, 7.1),
                read(FAR, To.CENTRE, 13.1)));
    assertEquals(Agreement.CONTRADICT, hole.agreement());
    // Each is 0.1 off at 0.01: squares 200 for one to spare, so everything is sqrt 200 times worse.
    assertEquals(0.01 * Math.sqrt(200), hole.spread().alongXMm(), EXACT);
    assertTrue(hole.cautions().get(0).contains("measure again"), hole.cautions().get(0));
  }

  @Test
  void theOneWrongReadingIsNamed() {
    Edge right = new Edge("right edge", new Point(30, 0), new Point(30, 20));
    MeasuredHole hole =
        fitter.measure(
            ask(
                4,
                4,
                new Point(11, 8),
                read(LEFT, To.CENTRE, 12),
                read(NEAR, To.CENTRE, 7),
                read(FAR, To.CENTRE, 13),
                read(right, To.CENTRE, 18),
                read(new Spot("corner 1", new Point(0, 0), 0), To.CENTRE, 14.5)));
    assertEquals(Agreement.CONTRADICT, hole.agreement());
    assertTrue(
        hole.cautions().get(0).contains("without the one from corner 1 (centre)"),
        hole.cautions().get(0));
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

  /** The said radius holds the true centre in at least 95 of 100 trials. */
  @Test
  void theSaidRadiusHoldsTheTrueCentre() {
    Random random = new Random(7);
    Edge slant = new Edge("slant", new Point(0, 0), new Point(20, 26));
    Point centre = new Point(15, 8);
    double toSlant = Math.abs(20 * 8 - 26 * 15) / Math.hypot(20, 26);
    int held = 0;
    int trials = 4000;
    for (int i = 0; i < trials; i++) {
      MeasuredHole hole =
          fitter.measure(
              ask(
                  4,
                  4,
                  new Point(15, 7),
                  new Reading(NEAR, To.CENTRE, 8 + 0.05 * random.nextGaussian(), 0.1),
                  new Reading(slant, To.CENTRE, toSlant + 0.05 * random.nextGaussian(), 0.1)));
      held += hole.centre().distanceMm(centre) <= hole.withinMm() ? 1 : 0;
    }
    double share = held / (double) trials;
    assertTrue(share >= 0.945 && share < 0.995, "held " + share);
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

  private void refused(String words, MeasuringQuestion question) {
    HoleException wrong = assertThrows(HoleException.class, () -> fitter.measure(question));
    assertTrue(wrong.getMessage().contains(words), wrong.getMessage());
  }

  @Test
  void refusesReadingsThatFixNoPlace() {
    Point near = new Point(11, 8);
    refused(
        "near edge, far edge: parallel within 1 degree",
        ask(4, 4, near, read(NEAR, To.CENTRE, 7), read(FAR, To.CENTRE, 13)));
    refused("at least 2 readings, 1 given", ask(4, 4, near, read(NEAR, To.CENTRE, 7)));
    Spot one = new Spot("hole 1", new Point(0, 0), 0);
    Spot two = new Spot("hole 2", new Point(10, 0), 0);
    refused(
        "meet only in passing, or not at all",
        ask(4, 4, new Point(4, 2), read(one, To.CENTRE, 4), read(two, To.CENTRE, 5)));
    refused(
        "two places fit",
        ask(4, 4, new Point(4, 0), read(one, To.CENTRE, 6), read(two, To.CENTRE, 6)));
    refused(
        "on which side",
        ask(4, 4, new Point(4, 0), read(NEAR, To.CENTRE, 6), read(LEFT, To.CENTRE, 6)));
    refused(
        "less than half the diameters",
        ask(4, 4, near, read(NEAR, To.OVER_PIN, 1.5), read(LEFT, To.CENTRE, 6)));
    refused(
        "has no length",
        ask(
            4,
            4,
            near,
            read(new Edge("stub", near, near), To.CENTRE, 6),
            read(LEFT, To.CENTRE, 6)));
  }

  @ParameterizedTest
  @EnumSource(names = {"OVER_PIN", "TO_PIN"})
  void aPinMustBeThereAndGoIn(To to) {
    List<Reading> readings = List.of(read(NEAR, to, 6), read(LEFT, To.CENTRE, 6));
    Point near = new Point(5, 5);
    assertThrows(
        HoleException.class,
        () -> new MeasuringQuestion(readings, 4, OptionalDouble.empty(), near));
    assertThrows(
        HoleException.class,
        () -> new MeasuringQuestion(readings, 4, OptionalDouble.of(4.1), near));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.1, Double.NaN})
  void noReadingIsExact(double bad) {
    assertThrows(HoleException.class, () -> new Reading(NEAR, To.CENTRE, 5, bad));
  }

  @Test
  void drawsADimensionForEachReading() {
    MeasuredHole hole =
        fitter.measure(
            ask(4, 4, new Point(11, 8), read(LEFT, To.OVER_PIN, 14), read(NEAR, To.NEAR_RIM, 5)));
    List<Item.Dimension> dimensions =
        fitter.draw(hole, LengthUnit.MILLIMETRE).items().stream()
            .filter(Item.Dimension.class::isInstance)
            .map(Item.Dimension.class::cast)
            .toList();
    assertEquals(
        List.of("14.00 mm over pin", "5.00 mm near rim"),
        dimensions.stream().map(Item.Dimension::words).toList());
    // Drawn as long as read: from the edge to the pin's far side, and to the rim's near side.
    assertEquals(14, dimensions.get(0).from().distanceMm(dimensions.get(0).to()), EXACT);
    assertEquals(5, dimensions.get(1).from().distanceMm(dimensions.get(1).to()), EXACT);
  }
}
