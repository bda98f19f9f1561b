package org.fettlebench.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthFormatTest {
  @ParameterizedTest
  @CsvSource({
    "3968750, 3.97 mm, 0.156 in",
    "3175000, 3.18 mm, 0.125 in",
    "-3175000, -3.18 mm, -0.125 in",
    "0, 0.00 mm, 0.000 in",
    "-1, 0.00 mm, 0.000 in",
    "-4999, 0.00 mm, 0.000 in",
    "1234567890, 1234.57 mm, 48.605 in"
  })
  void showsASizeInEitherUnit(long nanometres, String metric, String inch) {
    Length length = Length.ofNanometres(nanometres);
    assertEquals(metric, LengthFormat.show(length, LengthUnit.MILLIMETRE));
    assertEquals(inch, LengthFormat.show(length, LengthUnit.INCH));
    assertEquals(metric + " (" + inch + ")", LengthFormat.showBoth(length, LengthUnit.MILLIMETRE));
    assertEquals(inch + " (" + metric + ")", LengthFormat.showBoth(length, LengthUnit.INCH));
  }

  @ParameterizedTest
  @CsvSource({
    "240000, 0.24 mm, 0.009 in",
    "11000, 0.011 mm, 0.4 thou",
    "-11000, -0.011 mm, -0.4 thou",
    "-304800, -0.30 mm, -0.012 in",
    "25400, 0.025 mm, 0.001 in",
    "100000, 0.10 mm, 0.004 in",
    "-1, 0.000 mm, 0.0 thou",
    "0, 0.00 mm, 0.000 in"
  })
  void saysAnAllowanceAsTheTradeDoes(long nanometres, String metric, String inch) {
    Length length = Length.ofNanometres(nanometres);
    assertEquals(metric, LengthFormat.allowance(length, LengthUnit.MILLIMETRE));
    assertEquals(inch, LengthFormat.allowance(length, LengthUnit.INCH));
    assertEquals(inch + " (" + metric + ")", LengthFormat.allowanceBoth(length, LengthUnit.INCH));
  }

  @ParameterizedTest
  @CsvSource({
    "3968750, 5/32",
    "396875, 1/64",
    "34925000, 1 3/8",
    "-34925000, -1 3/8",
    "50800000, 2",
    "0, 0"
  })
  void givesTheInchFraction(long nanometres, String fraction) {
    assertEquals(fraction, LengthFormat.fraction(Length.ofNanometres(nanometres)).orElseThrow());
  }

  @Test
  void givesNoFractionForWhatIsNone() {
    assertTrue(LengthFormat.fraction(Length.ofNanometres(3_968_751)).isEmpty());
    assertTrue(LengthFormat.fraction(Length.ofMillimetres(4)).isEmpty());
  }

  /** Drill lists print the fractional sizes in inches; half a unit of their last digit. */
  @ParameterizedTest
  @CsvFileSource(resources = "/expected/fractional-drills.csv", numLinesToSkip = 1)
  void agreesWithPublishedFractionalDrills(String fraction, String inches, String millimetres) {
    Length size = LengthReader.read(fraction);
    assertEquals(Double.parseDouble(inches), size.inches(), 0.00005 + 1e-12);
    assertEquals(Double.parseDouble(millimetres), size.millimetres(), halfUnit(millimetres));
    assertEquals(fraction, LengthFormat.fraction(size).orElseThrow());
  }

  private static double halfUnit(String printed) {
    int decimals = printed.length() - printed.indexOf('.') - 1;
    return 0.5 * Math.pow(10, -decimals) + 1e-12;
  }

  @Test
  void writesAPointInEveryLanguage() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertEquals("3.97 mm", LengthFormat.show(Length.ofMillimetres(3.97), LengthUnit.MILLIMETRE));
      assertEquals(12.5, LengthReader.read("12.5 mm").millimetres());
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void refusesSenselessDecimals() {
    assertThrows(MeasureException.class, () -> LengthFormat.show(Length.ZERO, LengthUnit.INCH, -1));
    assertThrows(MeasureException.class, () -> LengthFormat.show(Length.ZERO, LengthUnit.INCH, 10));
  }

  @Test
  void turnsLengthsInASentence() {
    String millimetres =
        "it lacks 0.83 mm (0.033 in), not -0.011 mm (-0.4 thou); an M6 x 12 mm (long) 7 mm screw";
    String inches =
        "it lacks 0.033 in (0.83 mm), not -0.4 thou (-0.011 mm); an M6 x 12 mm (long) 7 mm screw";
    assertEquals(inches, LengthFormat.turned(millimetres, LengthUnit.INCH));
    assertEquals(millimetres, LengthFormat.turned(inches, LengthUnit.MILLIMETRE));
    assertEquals(millimetres, LengthFormat.turned(millimetres, LengthUnit.MILLIMETRE));
  }

  @ParameterizedTest
  @ValueSource(longs = {0, 1, -300, 12_345, -25_400_000, 96_045_250, 3_968_750})
  void turnsWhatItWrites(long nanometres) {
    Length length = Length.ofNanometres(nanometres);
    assertEquals(
        LengthFormat.showBoth(length, LengthUnit.INCH),
        LengthFormat.turned(LengthFormat.showBoth(length, LengthUnit.MILLIMETRE), LengthUnit.INCH));
    assertEquals(
        LengthFormat.allowanceBoth(length, LengthUnit.INCH),
        LengthFormat.turned(
            LengthFormat.allowanceBoth(length, LengthUnit.MILLIMETRE), LengthUnit.INCH));
  }
}
