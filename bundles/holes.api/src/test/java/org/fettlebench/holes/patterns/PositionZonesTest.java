package org.fettlebench.holes.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Zones against published examples: tolerance half a unit of the last printed digit. */
class PositionZonesTest {
  @ParameterizedTest
  @CsvFileSource(resources = "position-examples.csv", numLinesToSkip = 1)
  void meetsThePublishedExamples(ArgumentsAccessor row) {
    String printed = row.getString(11);
    double result = row.getDouble(11);
    double got =
        switch (row.getString(2)) {
          case "fixed, equal" -> PositionZones.fixedEachMm(row.getDouble(4), row.getDouble(3), 1);
          case "largest clearance hole under head" ->
              // The page gives neither screw nor head; a 1/4 in screw of 0.424 in across flats
              // does.
              PositionZones.largestUnderHeadMm(0.25, 0.424);
          default -> throw new IllegalArgumentException(row.getString(2));
        };
    assertEquals(result, got, half(printed));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "position-mmc-examples.csv", numLinesToSkip = 1)
  void meetsThePublishedBonuses(ArgumentsAccessor row) {
    double got =
        switch (row.getString(2)) {
          case "hole at MMC callout" ->
              row.getDouble(5) + PositionZones.bonusMm(row.getDouble(3), row.getDouble(4), 0);
          case "hole out of square, bonus uses the actual mating envelope" -> {
            double bonus =
                PositionZones.bonusMm(row.getDouble(3), row.getDouble(4), row.getDouble(6));
            // The page's frame gives 0.015 at maximum material.
            yield row.getString(8).startsWith("bonus") ? bonus : 0.015 + bonus;
          }
          case "square zone to round zone" -> PositionZones.roundAboutSquareMm(0.020);
          default -> throw new IllegalArgumentException(row.getString(2));
        };
    assertEquals(row.getDouble(9), got, half(row.getString(9)));
  }

  private static double half(String printed) {
    int places = printed.contains(".") ? printed.length() - printed.indexOf('.') - 1 : 0;
    return 0.5 * Math.pow(10, -places) + 1e-12;
  }

  /** H = F + T1 + T2 (1 + 2P/D), ASME Y14.5 appendix, read every way round. */
  @ParameterizedTest
  @CsvSource({"6, 6.44, 8, 12", "10, 10.5, 0, 15", "3, 3.3, 20, 5"})
  void everyFormOfTheRuleAgrees(double fastener, double hole, double passed, double engaged) {
    double leaning = PositionZones.leaning(passed, engaged);
    assertEquals((engaged + 2 * passed) / engaged, leaning, 1e-12);
    double each = PositionZones.fixedEachMm(hole, fastener, leaning);
    assertEquals(hole, PositionZones.holeMm(fastener, each, each, leaning), 1e-12);
    assertEquals(each, PositionZones.fixedClearanceMm(hole, fastener, each, leaning), 1e-12);
    assertEquals(each, PositionZones.fixedTappedMm(hole, fastener, each, leaning), 1e-12);
    double left = PositionZones.fixedClearanceMm(hole, fastener, 0.01, leaning);
    assertEquals(hole, PositionZones.holeMm(fastener, left, 0.01, leaning), 1e-12);
    assertEquals(
        hole,
        PositionZones.holeMm(fastener, PositionZones.floatingMm(hole, fastener), 0, 1),
        1e-12);
  }

  /** A tapped hole with zone T leans at most T over its depth D, so P beyond it T / 2 + T P / D. */
  @Test
  void withoutAProjectedZoneTheFastenerLeansAway() {
    double zone = 0.2;
    double radiusAtTheFarEnd = zone / 2 + zone * 9 / 6;
    assertEquals(radiusAtTheFarEnd, zone / 2 * PositionZones.leaning(9, 6), 1e-12);
  }

  @Test
  void aZoneIsTwiceTheRadiusOfError() {
    assertEquals(1.0, PositionZones.zoneOfErrorMm(0.3, -0.4), 1e-12);
  }

  @Test
  void aHoleThatIsTooSmallLeavesLessThanNothingAndNoBonus() {
    assertTrue(PositionZones.floatingMm(4.9, 5) < 0);
    assertEquals(0, PositionZones.bonusMm(5, 4.9, 0));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY, 1e6})
  void refusesWhatIsNoSize(double bad) {
    assertThrows(IllegalArgumentException.class, () -> PositionZones.floatingMm(bad, 5));
    assertThrows(IllegalArgumentException.class, () -> PositionZones.floatingMm(5, bad));
    assertThrows(IllegalArgumentException.class, () -> PositionZones.leaning(5, bad));
    assertThrows(IllegalArgumentException.class, () -> PositionZones.bonusMm(bad, 5, 0));
    assertThrows(IllegalArgumentException.class, () -> PositionZones.bonusMm(5, bad, 0));
    assertThrows(IllegalArgumentException.class, () -> PositionZones.largestUnderHeadMm(bad, 5));
    assertThrows(IllegalArgumentException.class, () -> PositionZones.largestUnderHeadMm(5, bad));
    assertThrows(IllegalArgumentException.class, () -> PositionZones.holeMm(bad, 1, 1, 1));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.1, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesWhatIsNoZone(double bad) {
    assertThrows(IllegalArgumentException.class, () -> PositionZones.holeMm(5, bad, 1, 1));
    assertThrows(IllegalArgumentException.class, () -> PositionZones.holeMm(5, 1, bad, 1));
    assertThrows(IllegalArgumentException.class, () -> PositionZones.holeMm(5, 1, 1, bad));
    assertThrows(IllegalArgumentException.class, () -> PositionZones.leaning(bad, 5));
    assertThrows(
        IllegalArgumentException.class, () -> PositionZones.fixedClearanceMm(6, 5, bad, 1));
    assertThrows(IllegalArgumentException.class, () -> PositionZones.fixedTappedMm(6, 5, bad, 1));
    assertThrows(IllegalArgumentException.class, () -> PositionZones.bonusMm(5, 5, bad));
    assertThrows(IllegalArgumentException.class, () -> PositionZones.roundAboutSquareMm(bad));
  }
}
