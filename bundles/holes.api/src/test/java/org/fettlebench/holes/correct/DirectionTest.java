package org.fettlebench.holes.correct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Directions against the circle and the face of a clock: 30 degrees to the hour. */
class DirectionTest {
  @ParameterizedTest
  @CsvSource({"1, 0, 0", "3, 3, 45", "0, 2, 90", "-1, 0, 180", "0, -1, 270", "1, -1e-20, 0"})
  void ofAStep(double dx, double dy, double degrees) {
    assertEquals(degrees, Direction.of(dx, dy).degrees(), 1e-12);
  }

  @Test
  void leadsAsFarAsItsCosineAndSineSay() {
    assertEquals(Math.sqrt(3) / 2, new Direction(30).dx(), 1e-15);
    assertEquals(0.5, new Direction(30).dy(), 1e-15);
    assertEquals(210, new Direction(30).opposite().degrees());
    assertEquals(30, new Direction(210).opposite().degrees());
    assertEquals(0, new Direction(180).opposite().degrees());
  }

  @ParameterizedTest
  @CsvSource({
    "0, 3 o'clock",
    "90, 12 o'clock",
    "97, 12 o'clock",
    "98, half past 11",
    "105, half past 11",
    "180, 9 o'clock",
    "270, 6 o'clock",
    "330, 4 o'clock",
    "45, half past 1",
    "75, half past 12"
  })
  void onTheClock(double degrees, String words) {
    assertEquals(words, new Direction(degrees).clock());
  }

  @ParameterizedTest
  @CsvSource({
    "22, right",
    "23, right and away",
    "90, away",
    "135, left and away",
    "180, left",
    "225, left and near",
    "270, near",
    "337, right and near",
    "338, right"
  })
  void byEighthsOfATurn(double degrees, String words) {
    Direction direction = new Direction(degrees);
    assertEquals(words, direction.words());
    assertEquals(direction.clock() + " (" + words + ")", direction.toString());
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.1, 360, Double.NaN})
  void isRefusedBeyondATurn(double degrees) {
    assertThrows(HoleException.class, () -> new Direction(degrees));
  }
}
