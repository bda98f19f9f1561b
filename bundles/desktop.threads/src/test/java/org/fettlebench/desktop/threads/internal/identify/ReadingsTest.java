package org.fettlebench.desktop.threads.internal.identify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.fettlebench.desktop.threads.internal.Bench;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.testkit.trade.RealTrade;
import org.fettlebench.threads.ThreadSide;
import org.fettlebench.threads.identify.Measured;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReadingsTest {
  private static Readings of(String diameter, String pitch) {
    return new Readings(diameter, "", pitch, "", "", "", "", false);
  }

  @ParameterizedTest
  @CsvSource({
    "32 tpi, MILLIMETRE, 0.79375",
    "32, MILLIMETRE, 0.79375",
    "31.5 per inch, INCH, 0.806349",
    "0.81, MILLIMETRE, 0.81",
    "0.81 mm, INCH, 0.81",
    "0.032, INCH, 0.8128",
    "4, MILLIMETRE, 4"
  })
  void aPitchIsTypedAsSuchOrAsThreadsPerInch(String typed, LengthUnit unit, double mm) {
    assertEquals(mm, Readings.pitch(typed, unit).millimetres(), 1e-6);
  }

  @Test
  void whatIsNotSaidOfUncertaintyIsAsUsual() {
    Measured measured = of("4.68", "0.81").measured(LengthUnit.MILLIMETRE);
    assertEquals(0.02, measured.diameter().orElseThrow().uncertainty().millimetres(), 1e-9);
    assertEquals(0.0081, measured.pitch().orElseThrow().uncertainty().millimetres(), 1e-9);
    assertEquals(Length.ZERO, measured.wear());
  }

  @ParameterizedTest
  @CsvSource({"x, 0.81, diameter", "4.68, about 1, pitch", "4.68, 900 tpi, 500", "-3, 1, above 0"})
  void whatIsNoFigureIsRefusedByItsName(String diameter, String pitch, String told) {
    MeasureException refused =
        assertThrows(
            MeasureException.class, () -> of(diameter, pitch).measured(LengthUnit.MILLIMETRE));
    assertTrue(refused.getMessage().contains(told), refused.getMessage());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "4.68 x 0.81",
        "4.68 mm 0.81 mm",
        "0.186 in 31 tpi",
        "0.186in x 31.5 tpi hex 0.324 in nut",
        "3/16 x 32 tpi",
        "bore 3.8 mm 0.8 mm"
      })
  void oneLineOfMeasurementsIsUnderstood(String line) {
    assertTrue(MeasuredLine.isOne(line, LengthUnit.MILLIMETRE));
  }

  @ParameterizedTest
  @ValueSource(strings = {"2 BX", "M6", "", "4.68", "x", "hello 1 2", "0 x 0"})
  void whatIsNoMeasurementIsLeftAlone(String line) {
    assertFalse(MeasuredLine.isOne(line, LengthUnit.MILLIMETRE));
  }

  @Test
  void aLineTellsHexagonAndNut() {
    Readings read =
        MeasuredLine.read("0.147 in x 31 tpi hex 0.324 in nut", LengthUnit.INCH).orElseThrow();
    Measured measured = read.measured(LengthUnit.INCH);
    assertEquals(ThreadSide.INTERNAL, measured.side());
    assertEquals(0.324, measured.hexagon().orElseThrow().value().inches(), 1e-9);
  }

  @Test
  void whatWasTypedIsRememberedWhole() {
    Readings typed = new Readings("4.68", "0.01", "31 tpi", "", "", "", "0.05", true);
    assertEquals(typed, ReadingFields.again(ReadingFields.kept(typed)));
    assertEquals(Readings.NONE, ReadingFields.again("of another shape"));
  }

  @Test
  void theLikeliestIsNamedAndTheOneItIsCrossedWithIsEasilyTakenForIt() {
    Identified found =
        Identified.by(RealTrade.IDENTIFIER, of("4.66", "31.5").measured(LengthUnit.MILLIMETRE));
    assertTrue(found.answer().startsWith("Likely 2 BA"), found.answer());
    assertEquals(
        "3/16 x 32 ME",
        found
            .crossedWith(found.candidates().get(0).thread(), Bench.crossings())
            .orElseThrow()
            .designation());
    assertTrue(
        found
            .understood(of("4.66", "31.5"), LengthUnit.MILLIMETRE)
            .contains("diameter 4.660 \u00b1 0.020 mm as usual"));
  }

  @Test
  void nothingThatAgreesIsSaidSo() {
    Identified found =
        Identified.by(RealTrade.IDENTIFIER, of("5.5", "3.1").measured(LengthUnit.MILLIMETRE));
    assertFalse(found.agrees());
    assertTrue(found.answer().startsWith("No listed thread agrees"), found.answer());
  }
}
