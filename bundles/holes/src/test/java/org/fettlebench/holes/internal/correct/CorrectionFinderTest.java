package org.fettlebench.holes.internal.correct;

import static org.fettlebench.holes.internal.correct.Lug.RULES;
import static org.fettlebench.holes.internal.correct.Lug.TARGET;
import static org.fettlebench.holes.internal.correct.Lug.TOOLS;
import static org.fettlebench.holes.internal.correct.Lug.ask;
import static org.fettlebench.holes.internal.correct.Lug.seat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.stream.IntStream;
import org.fettlebench.drawing.Item;
import org.fettlebench.fits.Verdict;
import org.fettlebench.fits.internal.SeatChecker;
import org.fettlebench.holes.correct.CorrectionAnswer;
import org.fettlebench.holes.correct.CorrectionAnswer.Filing;
import org.fettlebench.holes.correct.CorrectionAnswer.Outcome;
import org.fettlebench.holes.correct.CorrectionQuestion;
import org.fettlebench.holes.correct.CorrectionQuestion.Around;
import org.fettlebench.holes.correct.CorrectionQuestion.Found;
import org.fettlebench.holes.correct.CorrectionQuestion.Rules;
import org.fettlebench.holes.correct.HoleException;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Which side to file, how much, and whether that is enough. */
class CorrectionFinderTest {
  private static final double EXACT = 1e-9;
  private final CorrectionFinder finder = new CorrectionFinder(new SeatChecker());

  private CorrectionAnswer alone(double dx, double dy) {
    return finder.correct(ask(dx, dy, 0.02, Around.NOTHING));
  }

  @Test
  void aHoleThatIsOutToTheRightIsFiledOnTheLeft() {
    CorrectionAnswer answer = alone(0.4, 0);
    assertEquals(Outcome.FILE, answer.outcome());
    assertEquals(0.4, answer.errorMm(), EXACT);
    assertEquals("3 o'clock (right)", answer.error().orElseThrow().toString());
    Filing filing = answer.filing().orElseThrow();
    assertEquals("9 o'clock (left)", filing.towards().toString());
    assertEquals(0.8, filing.deepestMm(), EXACT);
    assertEquals(4.8, filing.filedDiameterMm(), EXACT);
    // (6 - 4) / 2 - 0.4
    assertEquals(0.6, filing.lastCutMm(), EXACT);
    assertEquals(0.9, answer.curableMm(), EXACT);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0.4, 12 o'clock (away), 6 o'clock (near)",
    "-0.4, 0, 9 o'clock (left), 3 o'clock (right)",
    "0, -0.4, 6 o'clock (near), 12 o'clock (away)",
    "0.3, -0.4, 5 o'clock (right and near), 11 o'clock (left and away)",
    "-0.3, 0.3, half past 10 (left and away), half past 4 (right and near)",
  })
  void theSideToFileIsOppositeTheError(double dx, double dy, String error, String side) {
    CorrectionAnswer answer = alone(dx, dy);
    assertEquals(error, answer.error().orElseThrow().toString());
    assertEquals(side, answer.filing().orElseThrow().towards().toString());
  }

  static IntStream seeds() {
    return IntStream.range(0, 100);
  }

  /**
   * The proof by points: take the metal that is told off the drilled rim, and every point of the
   * rim stands as far from the target, though metal was nowhere put on.
   */
  @ParameterizedTest
  @MethodSource("seeds")
  void theFiledHoleIsRoundAboutTheTarget(int seed) {
    Random random = new Random(seed);
    double error = 0.05 + 0.8 * random.nextDouble();
    double way = 2 * Math.PI * random.nextDouble();
    CorrectionAnswer answer = alone(error * Math.cos(way), error * Math.sin(way));
    Filing filing = answer.filing().orElseThrow();
    Point found = answer.question().found().centre();
    double side = Math.toRadians(filing.towards().degrees());
    double nearest = reach(found, 2, side);
    assertEquals(nearest + filing.deepestMm(), filing.filedDiameterMm() / 2, EXACT);
    assertEquals(
        reach(found, 2, side + Math.PI), filing.filedDiameterMm() / 2, EXACT, "nothing comes off");
    for (double quarter : new double[] {side - Math.PI / 2, side + Math.PI / 2}) {
      assertEquals(
          reach(found, 2, quarter) + filing.quartersMm(), filing.filedDiameterMm() / 2, EXACT);
    }
    for (int i = 0; i < 360; i++) {
      double reach = reach(found, 2, Math.toRadians(i));
      assertTrue(reach <= filing.filedDiameterMm() / 2 + EXACT, "metal would have to be put on");
    }
    assertEquals(
        (answer.question().finishDiameterMm() - filing.filedDiameterMm()) / 2,
        filing.lastCutMm(),
        EXACT);
  }

  /** Returns how far the rim of a hole stands from the target in a direction. */
  private static double reach(Point centre, double radius, double way) {
    double dx = centre.xMm() - TARGET.xMm();
    double dy = centre.yMm() - TARGET.yMm();
    double along = dx * Math.cos(way) + dy * Math.sin(way);
    double across = dx * Math.sin(way) - dy * Math.cos(way);
    return along + Math.sqrt(radius * radius - across * across);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void mirroringThePartMirrorsTheSide(int seed) {
    Random random = new Random(seed);
    double dx = 0.5 * random.nextGaussian();
    double dy = 0.5 * random.nextGaussian();
    double plain = alone(dx, dy).error().orElseThrow().degrees();
    double mirrored = alone(-dx, dy).error().orElseThrow().degrees();
    assertEquals(Math.cos(Math.toRadians(plain)), -Math.cos(Math.toRadians(mirrored)), EXACT);
    assertEquals(Math.sin(Math.toRadians(plain)), Math.sin(Math.toRadians(mirrored)), EXACT);
  }

  @Test
  void theEdgesOfCure() {
    // (6 - 4) / 2 - 0.1 = 0.9 is curable; measured within 0.02.
    assertEquals(Outcome.FILE, alone(0.88, 0).outcome());
    assertEquals(Outcome.FILE_IN_DOUBT, alone(0.89, 0).outcome());
    assertEquals(Outcome.FILE_IN_DOUBT, alone(0.9, 0).outcome());
    assertEquals(Outcome.PAST_CURE, alone(0.91, 0).outcome());
    assertEquals(Outcome.ON_TARGET, alone(0.02, 0).outcome());
    assertEquals(Outcome.ON_TARGET, alone(0, 0).outcome());
    assertTrue(alone(0, 0).error().isEmpty());
    assertTrue(alone(0, 0).filing().isEmpty());
    assertTrue(alone(0.91, 0).filing().isEmpty());
    assertEquals(0.1, alone(0.9, 0).filing().orElseThrow().lastCutMm(), EXACT);
  }

  @Test
  void namesTheFileAndTheDrills() {
    Filing filing = alone(0.3, 0).filing().orElseThrow();
    assertEquals(3.5, filing.file().orElseThrow().diameterMm(), "4 mm does not go into 4 mm");
    // At least 4.6 + 2 x 0.1, and with 0.05 left to cure after it: 4.8 to 5.7.
    assertEquals(5, filing.between().orElseThrow().diameterMm());
    assertEquals(6, filing.finish().orElseThrow().diameterMm());
    Filing deep = alone(0.7, 0).filing().orElseThrow();
    // 5.4 + 0.2 and above, but 6 leaves nothing.
    assertTrue(deep.between().isEmpty());
  }

  @Test
  void leavesItWhereTheSeatHasRoom() {
    // The right edge is 10 from the target, the head 7: 3 of room less 0.5.
    CorrectionAnswer answer = finder.correct(ask(0.5, 0, 0.02, seat(20, 14, false)));
    assertEquals(Outcome.LEAVE, answer.outcome());
    assertEquals(Verdict.CLEARS, answer.asIs().orElseThrow().verdict());
    assertEquals(1, answer.asIs().orElseThrow().allowanceAtIntendedMm(), 1e-6);
    assertEquals("edge from corner 4 to corner 1", answer.filing().orElseThrow().edge());
    assertTrue(answer.waysOut().isEmpty());
  }

  @Test
  void filesWhereItFoulsAndChecksTheSeatAgain() {
    // Now 0.3 of room to the right at the target; 0.5 is too much.
    CorrectionAnswer answer = finder.correct(ask(0.5, 0, 0.02, seat(17.3, 14, true)));
    assertEquals(Outcome.FILE, answer.outcome());
    Filing filing = answer.filing().orElseThrow();
    assertEquals(Verdict.CLEARS, filing.after().orElseThrow().verdict());
    assertEquals(0.3, filing.after().orElseThrow().allowanceAtIntendedMm(), 1e-6);
    assertEquals(
        Math.hypot(0.02, 0.05), filing.after().orElseThrow().question().expectedErrorMm(), EXACT);
    assertTrue(answer.waysOut().isEmpty(), "the mating hole cannot help a head that fouls");
  }

  @Test
  void drawsTheArrowToTheSideToFile() {
    CorrectionAnswer answer = finder.correct(ask(0.5, 0, 0.02, seat(17.3, 14, true)));
    Item.Label label =
        finder.drawFace(answer, LengthUnit.MILLIMETRE).items().stream()
            .filter(Item.Label.class::isInstance)
            .map(Item.Label.class::cast)
            .filter(item -> item.words().startsWith("file"))
            .findFirst()
            .orElseThrow();
    assertEquals("file 1.00 mm here", label.words());
    assertTrue(label.at().xMm() < TARGET.xMm(), "out to the right, so filed on the left");
    Item.Dimension depth =
        finder.drawHole(answer, LengthUnit.MILLIMETRE).items().stream()
            .filter(Item.Dimension.class::isInstance)
            .map(Item.Dimension.class::cast)
            .filter(Item.Dimension::strong)
            .findFirst()
            .orElseThrow();
    assertEquals("file 1.00 mm", depth.words());
    assertEquals(1, depth.from().distanceMm(depth.to()), EXACT);
    assertEquals(10.5 - 3, depth.from().xMm(), EXACT);
    assertEquals(10.5 - 2, depth.to().xMm(), EXACT);
  }

  @Test
  void refusesAHoleThatWouldHaveToShrink() {
    HoleException wrong =
        assertThrows(
            HoleException.class,
            () ->
                new CorrectionQuestion(
                    TARGET, new Found(TARGET, 6.1, 0), 6, RULES, TOOLS, Around.NOTHING));
    assertTrue(wrong.getMessage().contains("does not grow smaller"), wrong.getMessage());
    assertThrows(HoleException.class, () -> new Found(TARGET, 0, 0));
    assertThrows(HoleException.class, () -> new Found(TARGET, 4, Double.NaN));
    assertThrows(
        HoleException.class, () -> new Rules(RULES.cleanUp(), RULES.filing(), 0, "no wall"));
  }
}
