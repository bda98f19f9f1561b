package org.fettlebench.fits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordsTest {
  /** A part that would read 0.00 mm is not told, nor is one length told twice. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2.78 | 0      | move the hole 2.78 mm (0.109 in) right",
        "2.78 | 0.0049 | move the hole 2.78 mm (0.109 in) right",
        "0    | -1.5   | move the hole 1.50 mm (0.059 in) near",
        "0.3  | -0.4   | move the hole 0.50 mm (0.020 in) right and near: 0.30 mm (0.012 in) right,"
            + " 0.40 mm (0.016 in) near",
        "2.78 | 0.31   | move the hole 2.80 mm (0.110 in) right: 2.78 mm (0.109 in) right,"
            + " 0.31 mm (0.012 in) away"
      })
  void saysAMoveOnce(double dx, double dy, String words) {
    assertEquals(words, Words.move(dx, dy));
  }
}
