package org.fettlebench.holes.patterns;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.fettlebench.holes.chance.Chance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Counts of trials by hand. */
class PlayNeededTest {
  private static final double[] NEEDS = {0.3, 0.1, 0.2, 0.4};

  @ParameterizedTest
  @CsvSource({"0.05, 0", "0.1, 0.25", "0.2, 0.5", "0.25, 0.5", "0.35, 0.75", "0.4, 1", "9, 1"})
  void chanceIsTheShareThatNeedsNoMore(double play, double chance) {
    assertEquals(chance, PlayNeeded.of(NEEDS).chanceAt(play).value());
  }

  @ParameterizedTest
  @CsvSource({"0.01, 0.1", "0.25, 0.1", "0.26, 0.2", "0.5, 0.2", "0.75, 0.3", "0.99, 0.4"})
  void playIsTheLeastThatSoManyDoWith(double chance, double play) {
    assertEquals(play, PlayNeeded.of(NEEDS).playFor(chance));
    assertArrayEquals(new double[] {0.3, 0.1, 0.2, 0.4}, NEEDS);
    assertEquals(4, PlayNeeded.of(NEEDS).trials());
  }

  /** Laplace: (k + 1) / (n + 2), and its standard error by the binomial law. */
  @Test
  void aCountIsNeverCertain() {
    Chance none = PlayNeeded.counted(0, 8);
    assertEquals(0, none.value());
    assertEquals(Math.sqrt(0.1 * 0.9 / 8), none.standardError(), 1e-15);
    Chance some = PlayNeeded.counted(3, 8);
    assertEquals(0.375, some.value());
    assertEquals(Math.sqrt(0.4 * 0.6 / 8), some.standardError(), 1e-15);
    assertEquals(8, some.trials());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1, Double.NaN})
  void chancesOutsideAreRefused(double chance) {
    PlayNeeded needs = PlayNeeded.of(NEEDS);
    assertThrows(IllegalArgumentException.class, () -> needs.playFor(chance));
    assertThrows(IllegalArgumentException.class, () -> PlayNeeded.of(new double[0]));
  }
}
