package org.fettlebench.threads.internal.wires;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.fettlebench.measure.Length;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.internal.OurThreads;
import org.fettlebench.threads.internal.ThreadRegistry;
import org.fettlebench.threads.wires.WireGive;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The give of wires against closed forms of Hertz's theory. */
@TestInstance(Lifecycle.PER_CLASS)
class HertzContactTest {
  private final ThreadRegistry threads = OurThreads.fresh();

  /** E / (2 (1 - nu^2)) of steel, in newtons per square millimetre. */
  private static final double STEEL = 207_000 / (2 * 0.91);

  /** Crossed bars of one radius touch in a circle, as a ball of that radius on a flat. */
  @ParameterizedTest
  @CsvSource({"1, 0.5", "10, 0.5", "2.5, 3"})
  void equalBarsAreABallOnAFlat(double force, double radius) {
    double ball = Math.cbrt(9 * force * force / (16 * radius * STEEL * STEEL));
    assertEquals(ball, HertzContact.approachMm(force, radius, radius, STEEL), 1e-7 * ball);
  }

  /** By similitude: the approach goes with the force to the power 2/3, radius to the power -1/3. */
  @Test
  void growsAsHertzSays() {
    double one = HertzContact.approachMm(1, 0.3, 6, STEEL);
    assertEquals(4 * one, HertzContact.approachMm(8, 0.3, 6, STEEL), 1e-9 * one);
    assertEquals(one / 2, HertzContact.approachMm(1, 2.4, 48, STEEL), 1e-9 * one);
    assertEquals(one, HertzContact.approachMm(1, 6, 0.3, STEEL), 1e-12 * one);
  }

  /**
   * The mean of the radii leads by itself to within a tenth even at 1 to 20 (Hertz's correction
   * factor there is known to be a little below one).
   */
  @Test
  void isALittleBelowTheBallOfTheMeanRadius() {
    double ball = Math.cbrt(9 / (16 * Math.sqrt(0.3 * 6) * STEEL * STEEL));
    double bars = HertzContact.approachMm(1, 0.3, 6, STEEL);
    assertTrue(bars < ball && bars > 0.85 * ball, bars + " against " + ball);
  }

  @Test
  void threeWiresGiveAsTheWedgeAndTheFlanksSay() {
    ScrewThread thread = threads.find("M6").orElseThrow();
    WireGive give = OurWires.WIRES.give(thread, Length.ofMillimetres(0.577), 10, 207);
    // Half angle 30 degrees: sine 1/2, so 10 N and 5 N on the flanks and twice the approach.
    double flank = thread.effective().millimetres();
    double expected =
        2 * HertzContact.approachMm(10, 0.2885, flank, STEEL)
            + 2 * HertzContact.approachMm(5, 0.2885, flank, STEEL);
    assertEquals(expected, give.overWires().millimetres(), 1e-6);
    assertTrue(expected > 0.001 && expected < 0.005, "microns: " + expected * 1000);
  }

  @ParameterizedTest
  @CsvSource({"0, 207", "101, 207", "NaN, 207", "10, 9", "10, 701", "10, NaN"})
  void refusesWhatNoAnvilDoes(double force, double modulus) {
    ScrewThread thread = threads.find("M6").orElseThrow();
    org.junit.jupiter.api.Assertions.assertThrows(
        org.fettlebench.measure.MeasureException.class,
        () -> OurWires.WIRES.give(thread, Length.ofMillimetres(0.577), force, modulus));
  }

  /** The service as it is shipped. */
  private static final class OurWires {
    static final WireService WIRES = new WireService();
  }
}
