package org.fettlebench.holes.internal.correct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.fettlebench.holes.correct.CleanUp;
import org.fettlebench.holes.correct.Cutter;
import org.fettlebench.holes.correct.ExpectedError;
import org.fettlebench.holes.correct.HoleException;
import org.fettlebench.holes.correct.PilotAnswer;
import org.fettlebench.holes.correct.PilotAnswer.Remedy;
import org.fettlebench.holes.correct.PilotQuestion;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class PilotChooserTest {
  private final PilotChooser chooser = new PilotChooser();

  private static List<Cutter> drills(double... diameters) {
    return Arrays.stream(diameters).mapToObj(d -> new Cutter(d + " mm", d)).toList();
  }

  private static PilotQuestion ask(double finish, double cleanUp, double error, double... held) {
    return new PilotQuestion(
        finish,
        new CleanUp(cleanUp, "a test"),
        new ExpectedError("by eye", error, "a test"),
        drills(held),
        drills(1, 2, 3, 4, 4.5, 5),
        List.of(
            new ExpectedError("with a rule", 0.9, "a test"),
            new ExpectedError("co-ordinates", 0.2, "a test"),
            new ExpectedError("in a jig", 0.1, "a test")));
  }

  @Test
  void takesTheLargestHeldPilotThatStillCoversTheMethod() {
    // (6 - 4.8) / 2 - 0.1 = 0.5, just the error; (6 - 4.9) / 2 - 0.1 = 0.45.
    PilotAnswer answer = chooser.choose(ask(6, 0.1, 0.5, 3, 4.8, 6, 4.9, 8));
    assertEquals(4.8, answer.choice().orElseThrow().drill().diameterMm());
    assertEquals(0.5, answer.choice().orElseThrow().curableMm(), 1e-12);
    assertEquals(
        List.of(4.9, 4.8, 3.0),
        answer.ladder().stream().map(rung -> rung.drill().diameterMm()).toList());
    assertEquals(
        List.of(false, true, true),
        answer.ladder().stream().map(PilotAnswer.Rung::covers).toList());
    assertTrue(answer.finishHeld());
    assertTrue(answer.remedies().isEmpty());
  }

  @Test
  void saysWhichMethodAndWhichPilotToBuyWhenNoneDoes() {
    PilotAnswer answer = chooser.choose(ask(6, 0.1, 0.5, 5, 5.5));
    assertTrue(answer.choice().isEmpty());
    assertFalse(answer.finishHeld());
    assertEquals(
        List.of(Remedy.Kind.CAREFUL_METHOD, Remedy.Kind.BUY_PILOT),
        answer.remedies().stream().map(Remedy::kind).toList());
    Remedy careful = answer.remedies().get(0);
    assertEquals(5, careful.pilot().drill().diameterMm());
    assertEquals(0.4, careful.pilot().curableMm(), 1e-12);
    assertEquals(
        "place the hole by co-ordinates, within 0.20 mm (0.008 in) (a test): then 5.0 mm will do,"
            + " it leaves 0.40 mm (0.016 in) that can be cured",
        careful.sentence());
    assertEquals(
        "get a pilot of 4.5 mm or smaller: it leaves 0.65 mm (0.026 in) that can be cured",
        answer.remedies().get(1).sentence());
    assertEquals(4.5, answer.remedies().get(1).pilot().drill().diameterMm());
  }

  @Test
  void offersNothingWhenNothingHelps() {
    // Not even 1 mm leaves 1.4 mm on each side of 3 mm.
    PilotAnswer answer = chooser.choose(ask(3, 0.5, 1, 2.9));
    assertTrue(answer.choice().isEmpty());
    assertTrue(answer.remedies().isEmpty());
    assertEquals(-0.45, answer.ladder().get(0).curableMm(), 1e-12);
  }

  static IntStream seeds() {
    return IntStream.range(0, 100);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void noHeldDrillBetweenChoiceAndFinishCovers(int seed) {
    Random random = new Random(seed);
    double finish = 3 + 10 * random.nextDouble();
    double cleanUp = 0.2 * random.nextDouble();
    double error = random.nextDouble();
    double[] held = random.doubles(12, 0.5, 14).toArray();
    PilotAnswer answer = chooser.choose(ask(finish, cleanUp, error, held));
    double least = finish - 2 * (cleanUp + error);
    double expected = Arrays.stream(held).filter(d -> d <= least).max().orElse(0);
    assertEquals(
        expected, answer.choice().map(rung -> rung.drill().diameterMm()).orElse(0.0), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY, 1e6})
  void refusesSizesThatCannotBe(double bad) {
    assertThrows(HoleException.class, () -> ask(bad, 0.1, 0.5, 3));
    assertThrows(HoleException.class, () -> new Cutter("drill", bad));
    if (bad != 0) {
      assertThrows(HoleException.class, () -> ask(6, bad, 0.5, 3));
      assertThrows(HoleException.class, () -> ask(6, 0.1, bad, 3));
    }
  }
}
