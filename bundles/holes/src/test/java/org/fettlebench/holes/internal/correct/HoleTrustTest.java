package org.fettlebench.holes.internal.correct;

import static org.fettlebench.holes.internal.correct.Readings.FAR;
import static org.fettlebench.holes.internal.correct.Readings.LEFT;
import static org.fettlebench.holes.internal.correct.Readings.NEAR;
import static org.fettlebench.holes.internal.correct.Readings.RIGHT;
import static org.fettlebench.holes.internal.correct.Readings.ask;
import static org.fettlebench.holes.internal.correct.Readings.read;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.fettlebench.holes.correct.MeasuredHole;
import org.fettlebench.holes.correct.MeasuredHole.Agreement;
import org.fettlebench.holes.correct.Reading;
import org.fettlebench.holes.correct.Reading.Edge;
import org.fettlebench.holes.correct.Reading.Spot;
import org.fettlebench.holes.correct.Reading.To;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How far the place of a hole may be trusted, and what is told of that. */
class HoleTrustTest {
  private static final double EXACT = 1e-9;
  private final HoleFitter fitter = new HoleFitter();

  private static void at(double x, double y, Point found) {
    assertEquals(x, found.xMm(), EXACT);
    assertEquals(y, found.yMm(), EXACT);
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
    MeasuredHole hole =
        fitter.measure(
            ask(
                4,
                4,
                new Point(11, 8),
                read(LEFT, To.CENTRE, 12),
                read(NEAR, To.CENTRE, 7),
                read(FAR, To.CENTRE, 13),
                read(RIGHT, To.CENTRE, 18),
                read(new Spot("corner 1", new Point(0, 0), 0), To.CENTRE, 14.5)));
    assertEquals(Agreement.CONTRADICT, hole.agreement());
    assertTrue(
        hole.cautions().get(0).contains("without the one from corner 1 (centre)"),
        hole.cautions().get(0));
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

  /** y is what the near edge says, x is y and what the slanting edge adds: both are known. */
  @Test
  void theErrorsOfSlantingEdgesGoTogether() {
    Edge slant = new Edge("slant", new Point(0, 0), new Point(20, 20));
    MeasuredHole hole =
        fitter.measure(
            ask(4, 4, new Point(15, 5), read(NEAR, To.CENTRE, 5), read(slant, To.CENTRE, 7)));
    assertEquals(5 + 7 * Math.sqrt(2), hole.centre().xMm(), EXACT);
    // x = y + sqrt 2 d, each read with a variance of 1e-4.
    assertEquals(3e-4, hole.spread().xxMm2(), EXACT);
    assertEquals(1e-4, hole.spread().xyMm2(), EXACT);
    assertEquals(1e-4, hole.spread().yyMm2(), EXACT);
  }

  @Test
  void readingsThatContradictTwiceOverMustAllBeTakenAgain() {
    MeasuredHole hole =
        fitter.measure(
            ask(
                4,
                4,
                new Point(11, 8),
                read(LEFT, To.CENTRE, 12.1),
                read(RIGHT, To.CENTRE, 18.1),
                read(NEAR, To.CENTRE, 7.1),
                read(FAR, To.CENTRE, 13.1)));
    // Four readings each 0.1 off at 0.01 are squares of 400 for two to spare.
    assertEquals(Agreement.CONTRADICT, hole.agreement());
    assertEquals(0.01 / Math.sqrt(2) * Math.sqrt(200), hole.spread().alongXMm(), EXACT);
    assertEquals(
        List.of(
            "the readings contradict each other by more than their uncertainties; measure them all"
                + " again"),
        hole.cautions());
  }

  @Test
  void oneToSpareTellsThatButNotWhich() {
    MeasuredHole hole =
        fitter.measure(
            ask(
                4,
                4,
                new Point(11, 8),
                read(LEFT, To.CENTRE, 12),
                read(NEAR, To.CENTRE, 7.1),
                read(FAR, To.CENTRE, 13.1)));
    assertTrue(
        hole.cautions().get(0).endsWith("measure again, one of them more than once"),
        hole.cautions().get(0));
  }

  /** An edge of 10 mm in a 3-4-5 direction; the hole lies square to its line 1.5 mm past an end. */
  @Test
  void aHoleBeyondAnEndIsDoubted() {
    Edge slant = new Edge("slant", new Point(2, 3), new Point(10, 9));
    Point past = new Point(10 + 0.8 * 1.5 - 0.6 * 4, 9 + 0.6 * 1.5 + 0.8 * 4);
    Point before = new Point(2 - 0.8 * 1.5 - 0.6 * 4, 3 - 0.6 * 1.5 + 0.8 * 4);
    Point beside = new Point(10 - 0.6 * 4, 9 + 0.8 * 4);
    assertEquals(
        List.of(
            "slant: square to the hole there is no edge any more, it ends 1.50 mm (0.059 in)"
                + " before; was it measured from this edge?"),
        cautions(slant, past));
    assertEquals(cautions(slant, past), cautions(slant, before));
    assertEquals(List.of(), cautions(slant, beside));
  }

  private List<String> cautions(Edge slant, Point hole) {
    Edge below = new Edge("below", new Point(-30, 0), new Point(30, 0));
    return fitter
        .measure(
            ask(
                4,
                4,
                hole.moved(0.1, 0.2),
                read(slant, To.CENTRE, 4),
                read(below, To.CENTRE, hole.yMm())))
        .cautions();
  }

  @Test
  void aSecondPlaceThatFitsIsTold() {
    Spot one = new Spot("hole 1", new Point(0, 0), 0);
    Spot two = new Spot("hole 2", new Point(6, 0), 0);
    MeasuredHole hole =
        fitter.measure(
            ask(4, 4, new Point(3, 1), read(one, To.CENTRE, 5), read(two, To.CENTRE, 5)));
    assertEquals(
        List.of(
            "the readings would fit a hole at x 3.00 mm (0.118 in), y -4.00 mm (-0.157 in) as well;"
                + " the one nearer to where it should be is taken"),
        hole.cautions());
  }
}
