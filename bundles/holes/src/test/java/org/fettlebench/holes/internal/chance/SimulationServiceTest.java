package org.fettlebench.holes.internal.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.fettlebench.holes.chance.Aim;
import org.fettlebench.holes.chance.Chance;
import org.fettlebench.holes.chance.Draws;
import org.fettlebench.holes.chance.Simulated;
import org.fettlebench.holes.chance.Simulations;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Simulation against published results of others, and its own errors against what they promise. */
class SimulationServiceTest {
  private static final Simulations SIMULATIONS = new SimulationService();
  private static final double ROOT_3 = Math.sqrt(3);

  /** Inputs as the sources print them. */
  private static final Map<String, Simulations.Trial> EXAMPLES =
      Map.ofEntries(
          Map.entry("G1", SimulationServiceTest::gauge),
          Map.entry("G5", draws -> sum(draws, 4)),
          Map.entry(
              "G7",
              draws ->
                  draws.rectangular(-ROOT_3, ROOT_3)
                      + draws.rectangular(-ROOT_3, ROOT_3)
                      + draws.rectangular(-ROOT_3, ROOT_3)
                      + draws.rectangular(-10 * ROOT_3, 10 * ROOT_3)),
          Map.entry("G9 magnitude", draws -> magnitude(pair(draws, 0))),
          Map.entry("G9 phase", draws -> phase(pair(draws, 0))),
          Map.entry("G9 magnitude r 0.9", draws -> magnitude(pair(draws, 0.9))),
          Map.entry("G9 phase r 0.9", draws -> phase(pair(draws, 0.9))),
          Map.entry("G11", SimulationServiceTest::viscosity),
          Map.entry("G13", draws -> Math.log(draws.rectangular(0.1, 1.1))),
          Map.entry("G17", SimulationServiceTest::solution),
          Map.entry(
              "S1",
              draws ->
                  draws.rectangular(1.747, 1.753)
                      - draws.rectangular(0.749, 0.751)
                      - draws.rectangular(0.115, 0.125)
                      - draws.rectangular(0.874, 0.876)),
          Map.entry("S3", draws -> sum(draws, 10) * 0.1 / 3));

  private static final Map<String, Simulated> RUN = new ConcurrentHashMap<>();

  private static double sum(Draws draws, int count) {
    double sum = 0;
    for (int i = 0; i < count; i++) {
      sum += draws.normal(0, 1);
    }
    return sum;
  }

  private static double[] pair(Draws draws, double correlation) {
    double first = draws.normal(0, 1);
    double second =
        correlation * first + Math.sqrt(1 - correlation * correlation) * draws.normal(0, 1);
    return new double[] {0.001 + 0.010 * first, 0.010 * second};
  }

  private static double magnitude(double[] pair) {
    return Math.hypot(pair[0], pair[1]);
  }

  private static double phase(double[] pair) {
    return Math.atan2(pair[1], pair[0]);
  }

  private static double viscosity(Draws draws) {
    double ball = draws.normal(2217, 0.5);
    return draws.normal(4.63, 0.0463)
        * (draws.normal(61.0, 6.1) / draws.normal(36.6, 5.49))
        * (ball - draws.normal(1180, 0.5))
        / (ball - draws.normal(810, 0.5));
  }

  /** The end gauge: nm and kelvin; the cyclic temperature follows the arcsine law. */
  private static double gauge(Draws draws) {
    double cyclic = 0.5 * Math.sin(draws.rectangular(-Math.PI, Math.PI));
    double temperature = draws.normal(-0.1, 0.2) + cyclic;
    double standard = draws.normal(50_000_623, 25);
    double difference = draws.normal(215, 5.8) + draws.normal(0, 3.9) + draws.normal(0, 6.7);
    double expansion = draws.rectangular(9.5e-6, 13.5e-6);
    return standard
        + difference
        - standard
            * (draws.rectangular(-1e-6, 1e-6) * temperature
                + expansion * draws.rectangular(-0.05, 0.05));
  }

  /** The solution: 1000 m P / (M V), with the mean of the mass of a mole in grammes. */
  private static double solution(Draws draws) {
    double mass = 0.3888 + even(draws, 0.15e-3) + even(draws, 0.15e-3);
    double mole =
        8 * (12.0107 + even(draws, 0.0008))
            + 5 * (1.00794 + even(draws, 0.00007))
            + 4 * (15.9994 + even(draws, 0.0003))
            + 39.0983
            + even(draws, 0.0001);
    double volume = draws.triangular(18.61, 18.64, 18.67) + draws.normal(0, 0.006);
    return draws.normal(1, 0.0005) * 1000 * mass * (1 + even(draws, 0.0005)) / (mole * volume);
  }

  private static double even(Draws draws, double half) {
    return draws.rectangular(-half, half);
  }

  /**
   * Half a unit of the last printed digit, and four standard errors of the simulation itself; the
   * sources' own figures were simulated too.
   */
  @ParameterizedTest
  @CsvFileSource(resources = "/expected/simulation.csv", numLinesToSkip = 1)
  void publishedResultsAreReached(
      String example, String source, String quantity, BigDecimal published) {
    Simulated run =
        RUN.computeIfAbsent(
            example, name -> SIMULATIONS.run(EXAMPLES.get(name), Aim.trials(11, 500_000)));
    double ofDeviation = run.standardDeviation() / Math.sqrt(2.0 * run.trials());
    double[] found =
        switch (quantity) {
          case "mean" -> new double[] {run.mean(), run.standardError()};
          case "standard deviation" -> new double[] {run.standardDeviation(), ofDeviation};
          case "three standard deviations" ->
              new double[] {3 * run.standardDeviation(), 3 * ofDeviation};
          case "low 95 %" -> new double[] {run.quantile(0.025), run.quantileStandardError(0.025)};
          case "high 95 %" -> new double[] {run.quantile(0.975), run.quantileStandardError(0.975)};
          default -> throw new IllegalArgumentException(quantity);
        };
    double half = 0.5 * Math.pow(10, -published.scale());

    assertEquals(published.doubleValue(), found[0], half + 4 * found[1], example + quantity);
    assertTrue(found[1] < 5 * half, example + quantity + ": its own error is " + found[1]);
  }

  @Test
  void lawsHaveTheMomentsOfTheirFormulas() {
    moments(draws -> draws.rectangular(2, 5), 3.5, 9 / 12.0);
    moments(draws -> draws.normal(-3, 0.5), -3, 0.25);
    // (a + b + c) / 3 and (a^2 + b^2 + c^2 - ab - ac - bc) / 18.
    moments(draws -> draws.triangular(0, 1, 5), 2, 21 / 18.0);
    moments(draws -> draws.triangular(1, 1, 2), 4 / 3.0, 1 / 18.0);
    moments(draws -> draws.triangular(1, 2, 2), 5 / 3.0, 1 / 18.0);
  }

  private static void moments(Simulations.Trial trial, double mean, double variance) {
    Simulated run = SIMULATIONS.run(trial, Aim.trials(3, 400_000));

    assertEquals(mean, run.mean(), 4 * run.standardError());
    assertEquals(variance, run.standardDeviation() * run.standardDeviation(), 0.01 * variance);
  }

  @Test
  void boundedFiguresStayWithinTheirEnds() {
    SIMULATIONS.run(draws -> within(2, 5, draws.rectangular(2, 5)), Aim.trials(4, 10_000));
    SIMULATIONS.run(draws -> within(-1, 5, draws.triangular(-1, 1, 5)), Aim.trials(4, 10_000));
    SIMULATIONS.run(draws -> within(1, 2, draws.triangular(1, 1, 2)), Aim.trials(4, 10_000));
    SIMULATIONS.run(draws -> within(1, 2, draws.triangular(1, 2, 2)), Aim.trials(4, 10_000));
  }

  private static double within(double low, double high, double figure) {
    assertTrue(figure >= low && figure <= high, figure + " outside " + low + " to " + high);
    return figure;
  }

  @Test
  void aTriangleWithoutItsPeakInsideIsRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> SIMULATIONS.run(draws -> draws.triangular(0, 3, 2), Aim.trials(1, 10)));
  }

  @Test
  void theSameSeedGivesTheSameAnswerAndAnotherAnother() {
    Aim aim = Aim.trials(5, 1000);
    double mean = SIMULATIONS.run(draws -> draws.normal(0, 1), aim).mean();

    assertEquals(mean, SIMULATIONS.run(draws -> draws.normal(0, 1), aim).mean());
    assertNotEquals(mean, SIMULATIONS.run(draws -> draws.normal(0, 1), Aim.trials(6, 1000)).mean());
  }

  @Test
  void itStopsWhenTheAskedErrorIsReached() {
    Simulated run =
        SIMULATIONS.run(draws -> draws.normal(7, 2), new Aim(1, 0.01, 1_000, 10_000_000));

    assertTrue(run.reached());
    assertTrue(run.standardError() <= 0.01);
    // 4 / 0.0001 = 40 000 trials, in batches of 10 000.
    assertTrue(run.trials() >= 30_000 && run.trials() <= 60_000, "trials " + run.trials());
  }

  /** One batch of 10 000 is known to 0.01 when each trial has a deviation of 1, and not to less. */
  @Test
  void oneBatchIsEnoughWhereItReaches() {
    Simulations.Trial even = draws -> draws.rectangular(0, 1) < 0.5 ? -1 : 1;
    assertEquals(10_000, SIMULATIONS.run(even, new Aim(1, 0.0101, 1, 100_000)).trials());
    assertEquals(20_000, SIMULATIONS.run(even, new Aim(1, 0.0099, 1, 100_000)).trials());
    assertEquals(30_000, SIMULATIONS.run(even, new Aim(1, 1, 20_001, 100_000)).trials());
    assertEquals(20_000, SIMULATIONS.run(even, new Aim(1, 1, 20_000, 100_000)).trials());
    Simulations.Attempt often = draws -> draws.rectangular(0, 1) < 0.5;
    assertEquals(10_000, SIMULATIONS.chance(often, new Aim(1, 0.00501, 1, 100_000)).trials());
    assertEquals(20_000, SIMULATIONS.chance(often, new Aim(1, 0.00499, 1, 100_000)).trials());
    assertEquals(30_000, SIMULATIONS.chance(often, new Aim(1, 1, 20_001, 100_000)).trials());
    assertEquals(20_000, SIMULATIONS.chance(often, new Aim(1, 1, 20_000, 100_000)).trials());
    assertEquals(25_000, SIMULATIONS.chance(often, new Aim(1, 1e-9, 1, 25_000)).trials());
  }

  @Test
  void aTrialWithoutAResultIsNamed() {
    IllegalArgumentException none =
        assertThrows(
            IllegalArgumentException.class,
            () -> SIMULATIONS.run(draws -> Double.NaN, Aim.trials(1, 10)));
    assertEquals("trial 1 gave NaN", none.getMessage());
  }

  @Test
  void itStopsAtTheMostTrialsAndSaysThatItDidNotReach() {
    Simulated run = SIMULATIONS.run(draws -> draws.normal(0, 1), new Aim(1, 1e-9, 10, 25_000));

    assertEquals(25_000, run.trials());
    assertFalse(run.reached());
    assertEquals(12, SIMULATIONS.run(draws -> draws.normal(0, 1), Aim.trials(1, 12)).trials());
  }

  @ParameterizedTest
  @CsvSource({"0.5,0.001", "0.03,0.001", "0.999,0.0005"})
  void aChanceIsKnownAsWellAsItSays(double share, double asked) {
    int within = 0;
    for (int seed = 0; seed < 60; seed++) {
      Chance chance =
          SIMULATIONS.chance(
              draws -> draws.rectangular(0, 1) < share, new Aim(seed, 4 * asked, 1_000, 1_000_000));
      assertTrue(chance.standardError() <= 4 * asked);
      within += Math.abs(chance.value() - share) <= 2 * chance.standardError() ? 1 : 0;
    }
    // 95 per cent of 60 is 57; fewer than 51 would be a chance in a thousand.
    assertTrue(within >= 51, within + " of 60");
  }

  @Test
  void aChanceThatAlwaysComesOffStillHasAnError() {
    Chance sure = SIMULATIONS.chance(draws -> true, Aim.trials(1, 10_000));

    assertEquals(1, sure.value());
    assertEquals(10_000, sure.trials());
    assertTrue(sure.standardError() > 1e-4 && sure.standardError() < 2e-4);
    assertEquals(0, SIMULATIONS.chance(draws -> false, Aim.trials(1, 10_000)).value());
  }

  @Test
  void quantilesLieBetweenNeighboursInProportion() {
    Simulated four = new Simulated(new double[] {4, 1, 2, 3}, 1);

    assertEquals(1, four.quantile(0));
    assertEquals(2.5, four.quantile(0.5));
    assertEquals(4, four.quantile(1));
    assertEquals(2.5, four.mean());
    assertEquals(Math.sqrt(5 / 3.0), four.standardDeviation(), 1e-15);
    assertEquals(Math.sqrt(5 / 12.0), four.standardError(), 1e-15);
    assertTrue(four.reached());
    assertThrows(IllegalArgumentException.class, () -> four.quantile(Double.NaN));
  }

  @Test
  void whatCannotBeSimulatedIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Aim(1, 0, 1, 2));
    assertThrows(IllegalArgumentException.class, () -> new Aim(1, Double.NaN, 1, 2));
    assertThrows(IllegalArgumentException.class, () -> new Aim(1, 1, 3, 2));
    assertThrows(IllegalArgumentException.class, () -> new Aim(1, 1, 1, 10_000_001));
    assertThrows(
        IllegalArgumentException.class,
        () -> SIMULATIONS.run(draws -> Double.NaN, Aim.trials(1, 10)));
    assertThrows(
        IllegalArgumentException.class, () -> SIMULATIONS.run(draws -> 1, Aim.trials(1, 1)));
    assertThrows(
        IllegalArgumentException.class,
        () -> new Simulated(new double[] {1, Double.POSITIVE_INFINITY}, 1));
  }
}
