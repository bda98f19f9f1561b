package org.fettlebench.holes.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChanceTest {
  @ParameterizedTest
  @CsvSource({
    "0, 0 %",
    "1e-10, 0 %",
    "1e-8, under 0.1 %",
    "0.0009, under 0.1 %",
    "0.001, 0.1 %",
    "0.1, 10 %",
    "0.9734, 97.3 %",
    "0.999, 99.9 %",
    "0.9991, over 99.9 %",
    "0.99999999, over 99.9 %",
    "0.9999999999, 100 %",
    "1, 100 %"
  })
  void isNeverRoundedToCertainty(double value, String words) {
    assertEquals(words, new Chance(value, 0, 0).percent());
  }

  @ParameterizedTest
  @CsvSource({"-0.1, 0, 1", "1.1, 0, 1", "NaN, 0, 1", "0.5, -0.1, 1", "0.5, 1.1, 1", "0.5, 0, -1"})
  void isRefusedOutsideItsRange(double value, double error, long trials) {
    assertThrows(IllegalArgumentException.class, () -> new Chance(value, error, trials));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 1, 1",
    "Infinity, 1, 1",
    "NaN, 1, 1",
    "0.1, 0, 1",
    "0.1, 3, 2",
    "0.1, 1, 10000001"
  })
  void anAimMustBeAbleToStop(double error, long least, long most) {
    assertThrows(IllegalArgumentException.class, () -> new Aim(1, error, least, most));
  }

  @Test
  void anAimOfACountMakesThatCount() {
    Aim aim = Aim.trials(5, 10_000_000);
    assertEquals(10_000_000, aim.least());
    assertEquals(10_000_000, aim.most());
    assertEquals(5, aim.seed());
    assertEquals(1, Aim.trials(5, 1).most());
  }
}
