package org.fettlebench.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTest {
  private static final long SEED = 7L;

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 1e300})
  void refusesWhatCannotBeHeld(double value) {
    assertThrows(MeasureException.class, () -> Length.ofMillimetres(value));
    assertThrows(MeasureException.class, () -> Length.ofInches(value));
    if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
      assertThrows(MeasureException.class, () -> new Point(value, 0));
      assertThrows(MeasureException.class, () -> new Point(0, value));
    }
  }

  static IntStream thousandths() {
    return new Random(SEED).ints(100, -20_000, 20_000);
  }

  @ParameterizedTest(name = "seed " + SEED + ": {0}")
  @MethodSource("thousandths")
  void comesBackThroughTheOtherUnitExactly(int thousandths) {
    Length inch = Length.ofInches(thousandths / 1000.0);
    assertEquals(25_400L * thousandths, inch.nanometres());
    assertEquals(inch, Length.ofMillimetres(inch.millimetres()));
    assertEquals(inch, Length.ofInches(inch.inches()));
  }

  @Test
  void addsAndComparesExactly() {
    Length sixtyFourth = Length.ofInchFraction(1, 64);
    assertEquals(Length.ofInchFraction(1, 1), sixtyFourth.times(64));
    assertEquals(Length.ZERO, sixtyFourth.minus(sixtyFourth));
    assertTrue(sixtyFourth.plus(sixtyFourth).compareTo(sixtyFourth) > 0);
    assertFalse(Length.ZERO.isPositive());
    assertEquals("0.396875 mm", sixtyFourth.toString());
  }

  @Test
  void geometrySlackIsOneStepOfALength() {
    assertEquals(1, Length.ofMillimetres(Tolerances.GEOMETRY_SLACK_MM).nanometres());
    assertTrue(Tolerances.sameMm(1, 1 + 0.9e-6));
    assertFalse(Tolerances.sameMm(1, 1 + 1.1e-6));
    assertFalse(Tolerances.sameMm(Double.NaN, Double.NaN));
  }
}
