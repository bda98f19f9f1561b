package org.fettlebench.desktop.widgets;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScaleBarTest {
  @ParameterizedTest
  @CsvSource({"7.3,5,5", "4.99,2,2", "1.2,1,1", "0.031,0.02,0.02", "640,500,500"})
  void theBarHasARoundLength(double longest, double length, String words) {
    assertEquals(length, ScaleBar.round(longest), 1e-12);
    assertEquals(words, ScaleBar.words(ScaleBar.round(longest)));
  }
}
