package org.fettlebench.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthReaderTest {
  private static final long SEED = 20_260_101L;

  /** Expected values by hand from 1 in = 25.4 mm exactly. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "5/32 | 3968750",
        "5/32 inch | 3968750",
        "5/32\" | 3968750",
        "5 / 32 in | 3968750",
        "1/64 | 396875",
        "1 3/8 in | 34925000",
        "1-3/8\" | 34925000",
        "-1-3/8 | -34925000",
        "0.375\" | 9525000",
        ".375 in | 9525000",
        "0.375 in. | 9525000",
        "3.97 mm | 3970000",
        "3.97mm | 3970000",
        "3,97 mm | 3970000",
        "0,375 mm | 375000",
        ",5 mm | 500000",
        "6. mm | 6000000",
        "12 MM | 12000000",
        "10 thou | 254000",
        "0.5 thou | 12700",
        "1/2 thou | 12700",
        "25 um | 25000",
        "25 µm | 25000",
        "25 μm | 25000",
        "2 microns | 2000",
        "½ | 12700000",
        "1½ in | 38100000",
        "1 ¾\" | 44450000",
        "¼ | 6350000",
        "⅛ | 3175000",
        "2⅝\" | 66675000",
        "-0.02 mm | -20000",
        "−0.02 mm | -20000",
        "+ 3 mm | 3000000",
        "1⁄4 in | 6350000",
        "3″ | 76200000",
        "3'' | 76200000",
        "1/2 mm | 500000",
        "0 mm | 0"
      })
  void readsWhatIsTypedInAWorkshop(String text, long nanometres) {
    assertEquals(nanometres, LengthReader.read(text).nanometres());
  }

  @Test
  void takesTheUnitGivenForABareNumberButNotForAFraction() {
    assertEquals(3_970_000, LengthReader.read("3.97", LengthUnit.MILLIMETRE).nanometres());
    assertEquals(25_400_000, LengthReader.read("1", LengthUnit.INCH).nanometres());
    assertEquals(25_400, LengthReader.read("1 thou", LengthUnit.MILLIMETRE).nanometres());
    assertEquals(3_968_750, LengthReader.read("5/32", LengthUnit.MILLIMETRE).nanometres());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "3.97 | '3.97' has no unit: write 3.97 mm or 3.97 in",
        "3.97 furlong | '3.97 furlong' ends in 'furlong', which is no unit of length here",
        "5/0 | '5/0' divides by nothing",
        "1 9/8 | '1 9/8' has a fraction of one or more behind its whole number",
        "1,375 mm | '1,375 mm' could mean 1.375 or 1375",
        "99999999999999999999 mm | '99999999999999999999 mm' is too large",
        "abc | 'abc' is no length",
        "1e3 mm | '1e3 mm' ends in 'e3 mm'",
      })
  void saysWhatIsWrongAndWhatWouldBeUnderstood(String text, String said) {
    var refused = assertThrows(MeasureException.class, () -> LengthReader.read(text));
    assertTrue(refused.getMessage().startsWith(said), refused.getMessage());
    assertTrue(refused.getMessage().endsWith("10 thou and 25 um"), refused.getMessage());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "  ",
        "mm",
        "/",
        "1/",
        "/2",
        "1/2/3",
        "1..2 mm",
        "1.2.3 mm",
        "1,234,567 mm",
        "1.234,5",
        "--1 mm",
        "1 2 mm",
        "NaN mm",
        "Infinity mm",
        "5/-32",
        "1.5 3/8",
        "0x10 mm",
        "⅟ in",
        "½½",
        "11111111111111111111111111111111111111111111111111111111 mm"
      })
  void refusesWhatIsNoLength(String text) {
    assertThrows(MeasureException.class, () -> LengthReader.read(text));
  }

  static LongStream lengths() {
    return new Random(SEED).longs(200, -2_000_000_000L, 2_000_000_000L);
  }

  @ParameterizedTest(name = "seed " + SEED + ": {0} nm")
  @MethodSource("lengths")
  void comesBackFromItsOwnTextExactly(long nanometres) {
    Length length = Length.ofNanometres(nanometres);
    assertEquals(length, LengthReader.read(length.toString()));
    assertEquals(length, LengthReader.read(LengthFormat.show(length, LengthUnit.MILLIMETRE, 6)));
  }

  @ParameterizedTest(name = "seed " + SEED + ": {0}")
  @MethodSource("lengths")
  void goesFromInchFractionToMillimetresAndBackExactly(long any) {
    Length sixtyFourths = Length.ofInchFraction(any % 6400, 64);
    String fraction = LengthFormat.fraction(sixtyFourths).orElseThrow();
    assertEquals(sixtyFourths, LengthReader.read(fraction + " in"));
    String millimetres = LengthFormat.show(sixtyFourths, LengthUnit.MILLIMETRE, 6);
    assertEquals(fraction, LengthFormat.fraction(LengthReader.read(millimetres)).orElseThrow());
  }
}
