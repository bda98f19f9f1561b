package org.fettlebench.desktop.widgets;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FiguresTest {
  @ParameterizedTest
  @CsvSource({
    "0.42,2,0.42",
    "-0.42,2,\u22120.42",
    "-0.004,2,0.00",
    "7,0,7",
    "-1234.5,1,\u22121234.5"
  })
  void figuresHaveATrueMinusAndNoMinusNought(double value, int decimals, String shown) {
    assertEquals(shown, Figures.show(value, decimals));
  }

  @Test
  void whatIsNoNumberShowsNothing() {
    assertEquals("", Figures.show(Double.NaN, 2));
  }

  @Test
  void lengthsHaveHundredthsOfAMillimetreOrThou() {
    Length length = Length.ofInchFraction(5, 32);
    assertEquals("3.97", Figures.figure(length, LengthUnit.MILLIMETRE));
    assertEquals("0.156", Figures.figure(length, LengthUnit.INCH));
    assertEquals("0.039 in", Figures.length(1, LengthUnit.INCH));
  }

  @ParameterizedTest
  @CsvSource({
    "M4,M10,-1",
    "2 BA,12 BA,-1",
    "2 BA,2 ba,0",
    "B,a,1",
    "M3,M3 x 10,-1",
    "007,7,0",
    "9,10 BA,-1"
  })
  void namesAreOrderedAsAPersonWould(String left, String right, int sign) {
    assertEquals(sign, Integer.signum(Figures.compareNaturally(left, right)));
    assertEquals(-sign, Integer.signum(Figures.compareNaturally(right, left)));
  }

  @Test
  void countsTakeTheirWord() {
    assertEquals("1 joint", Figures.count(1, "joint", "joints"));
    assertEquals("0 joints", Figures.count(0, "joint", "joints"));
  }
}
