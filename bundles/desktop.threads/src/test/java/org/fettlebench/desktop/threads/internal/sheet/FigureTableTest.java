package org.fettlebench.desktop.threads.internal.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.junit.jupiter.api.Test;

class FigureTableTest {
  @Test
  void lengthsStandInBothUnitsTheAskedOneFirst() {
    FigureTable table =
        FigureTable.ofLengths(LengthUnit.INCH).length("major", Length.ofMillimetres(4.7)).made();
    assertEquals("\tin\tmm\nmajor\t0.1850\t4.700\n", table.asText());
  }

  @Test
  void anOpenEndIsADash() {
    FigureTable table =
        FigureTable.ofRanges(LengthUnit.MILLIMETRE)
            .range("major", Optional.of(Length.ofMillimetres(6)), Optional.empty())
            .made();
    assertEquals(
        "\tleast mm\tmost\tleast in\tmost\nmajor\t6.000\t\u2013\t0.2362\t\u2013\n", table.asText());
  }

  @Test
  void headsWithoutWordsAreLeftOut() {
    assertEquals("a\tb\n", FigureTable.of("").row("a", "b").made().asText());
  }
}
