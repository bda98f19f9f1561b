package org.fettlebench.holes.internal.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.fettlebench.fits.ErrorLaw;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.PositionLaw;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatAnswer.Region;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.holes.chance.Aim;
import org.fettlebench.holes.chance.Chance;
import org.fettlebench.holes.chance.Chances;
import org.fettlebench.holes.chance.MethodChance;
import org.fettlebench.measure.Point;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ChanceServiceTest {
  private static final Chances CHANCES = new ChanceService();
  private static final Source SOURCE = new Source("a test", Standing.COMMON_PRACTICE);

  private static HoleMethod method(String id, double sigma) {
    return new HoleMethod(id, id, List.of("drill"), sigma, SOURCE);
  }

  private static List<Region> square(double half) {
    return List.of(
        new Region(
            List.of(
                new Point(-half, -half),
                new Point(half, -half),
                new Point(half, half),
                new Point(-half, half)),
            List.of()));
  }

  /** Allowed is a square of 1 mm about the origin; the hole is intended half way to its side. */
  private static SeatAnswer answer(List<Region> allowed) {
    SeatedHead head =
        new SeatedHead(
            "head", 8, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), "");
    Seat seat =
        new Seat(
            "seat",
            Outline.of(
                List.of(new Point(-5, -5), new Point(5, -5), new Point(5, 5), new Point(-5, 5))),
            Optional.empty(),
            List.of(),
            List.of(),
            List.of(),
            new Point(0.25, 0),
            0);
    SeatQuestion question = new SeatQuestion(seat, head, 4, 0.1, "");
    SeatAnswer answer = mock(SeatAnswer.class);
    when(answer.question()).thenReturn(question);
    when(answer.allowed()).thenReturn(allowed);
    when(answer.best()).thenReturn(new Point(0, 0));
    return answer;
  }

  @Test
  void integrationAndSimulationAgreeForEveryLaw() {
    Random random = new Random(9);
    for (int round = 0; round < 24; round++) {
      List<Region> region = region(random);
      Point aimed = new Point(random.nextDouble() - 0.5, random.nextDouble() - 0.5);
      PositionLaw law = law(random, round);

      Chance exact = CHANCES.within(region, aimed, law);
      Chance thrown = CHANCES.simulated(region, aimed, law, new Aim(round, 1e-3, 1, 300_000));

      double off = Math.abs(exact.value() - thrown.value());
      assertTrue(
          off <= 4 * thrown.standardError() + exact.standardError(),
          "round " + round + ": " + exact + " and " + thrown);
      assertEquals(0, exact.trials());
    }
  }

  /** A star with a hole in it, and a part of its own beside it. */
  private static List<Region> region(Random random) {
    List<Point> star = new ArrayList<>();
    List<Point> hole = new ArrayList<>();
    for (int i = 0; i < 11; i++) {
      double angle = 2 * Math.PI * i / 11;
      double radius = 0.4 + 0.6 * random.nextDouble();
      star.add(new Point(radius * Math.cos(angle), radius * Math.sin(angle)));
      hole.add(new Point(0.2 * Math.cos(-angle), 0.2 * Math.sin(-angle)));
    }
    List<Point> apart =
        List.of(new Point(1.2, -1), new Point(1.2, 1), new Point(1.5, random.nextDouble()));
    return List.of(new Region(star, List.of(hole)), new Region(apart, List.of()));
  }

  private static PositionLaw law(Random random, int round) {
    List<ErrorLaw> laws =
        List.of(
            new ErrorLaw.Normal(0.05 + random.nextDouble(), 0.05 + random.nextDouble()),
            new ErrorLaw.Bounded(random.nextDouble(), random.nextDouble()),
            new ErrorLaw.Circle(0.1 + random.nextDouble()));
    List<PositionLaw.Part> parts = new ArrayList<>();
    for (int i = 0; i < laws.size(); i++) {
      // Each of the seven mixtures in turn.
      if ((round % 7 + 1 >> i & 1) == 1) {
        parts.add(new PositionLaw.Part("step", laws.get(i), SOURCE));
      }
    }
    return new PositionLaw(0.1 * random.nextGaussian(), 0.1 * random.nextGaussian(), parts);
  }

  @Test
  void eachMethodHasItsChanceAtTheIntendedAndAtTheBestCentre() {
    List<HoleMethod> methods = List.of(method("rough", 0.5), method("fine", 0.1));

    List<MethodChance> chances = CHANCES.each(answer(square(0.5)), methods);

    assertEquals(List.of("rough", "fine"), chances.stream().map(c -> c.method().id()).toList());
    // Normal distribution, printed tables: within 1 sigma 0.6827, squared for both axes.
    assertEquals(0.6827 * 0.6827, chances.get(0).atBest().value(), 0.0001);
    // From 7.5 sigma to the left to 2.5 sigma to the right: 0.99379.
    assertEquals(0.99379, chances.get(1).atIntended().value(), 0.00001);
    assertEquals(List.of(), CHANCES.each(answer(square(0.5)), List.of()));
  }

  @Test
  void nowhereAllowedHasNoChance() {
    MethodChance none = CHANCES.each(answer(List.of()), List.of(method("fine", 0.1))).get(0);

    assertEquals(new Chance(0, 0, 0), none.atIntended());
    assertEquals(new Chance(0, 0, 0), none.atBest());
    assertEquals(
        0,
        CHANCES
            .simulated(List.of(), new Point(0, 0), method("m", 1).law(), Aim.trials(1, 100))
            .value());
  }

  @Test
  void theLeastCarefulMethodThatReachesTheAskedChanceIsFound() {
    List<HoleMethod> methods =
        List.of(method("fine", 0.05), method("rough", 0.5), method("fair", 0.1));
    List<MethodChance> chances = CHANCES.each(answer(square(0.5)), methods);

    assertEquals("fair", CHANCES.leastCareful(chances, 0.99).orElseThrow().method().id());
    assertEquals("fine", CHANCES.leastCareful(chances, 0.999).orElseThrow().method().id());
    assertEquals("rough", CHANCES.leastCareful(chances, 0.1).orElseThrow().method().id());
    assertEquals(Optional.empty(), CHANCES.leastCareful(chances, 0.9999999));
    // What just reaches it will do.
    double just = chances.get(2).atIntended().value();
    assertEquals("fair", CHANCES.leastCareful(chances, just).orElseThrow().method().id());
    assertEquals(Optional.empty(), CHANCES.leastCareful(List.of(), 0.5));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1, 95, Double.NaN})
  void anAskedChanceOutsideNoughtToOneIsRefused(double asked) {
    assertThrows(IllegalArgumentException.class, () -> CHANCES.leastCareful(List.of(), asked));
  }

  @Test
  void whatIsNoChanceIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Chance(1.1, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> new Chance(Double.NaN, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> new Chance(0.5, -1, 0));
  }
}
