package org.fettlebench.desktop.threads.internal.folds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.testkit.trade.RealTrade;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadSide;
import org.fettlebench.threads.internal.wires.WireService;
import org.fettlebench.threads.wires.OverWires;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FoldBooksTest {
  private final LimitsBook book = new LimitsBook(RealTrade.THREAD_CLASSES);

  private static ScrewThread thread(String name) {
    return RealTrade.THREADS.find(name).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "M6, 6g 4h 6e 8g, 6H 5H 6G 7H",
    "1/4-20 UNC, 2A 3A 1A, 2B 3B 1B",
    "1/4 BSW, medium close free, medium normal",
    "2 BA, normal close, normal",
    "G1/4, A B, A"
  })
  void eachSideIsOfferedItsOwnClasses(String name, String screw, String nut) {
    List<String> ofScrew = book.offered(thread(name), ThreadSide.EXTERNAL);
    List<String> ofNut = book.offered(thread(name), ThreadSide.INTERNAL);
    assertTrue(ofScrew.containsAll(List.of(screw.split(" "))), ofScrew.toString());
    assertTrue(ofNut.containsAll(List.of(nut.split(" "))), ofNut.toString());
    assertEquals(screw.split(" ")[0], ofScrew.get(0), "the usual one first");
    assertEquals(nut.split(" ")[0], ofNut.get(0), "the usual one first");
  }

  @Test
  void aClassOfTheOtherSideIsRefusedWithThoseThereAre() {
    MeasureException refused =
        assertThrows(
            MeasureException.class, () -> book.asked(thread("M6"), "6H", ThreadSide.EXTERNAL));
    assertTrue(refused.getMessage().contains("6g"), refused.getMessage());
  }

  @Test
  void zonesLieWhereTheLimitsAre() {
    ScrewThread m6 = thread("M6");
    LimitsOfThread screw = book.asked(m6, "6g", ThreadSide.EXTERNAL);
    Drawing drawing = ZoneDrawing.of(m6, Optional.of(screw), Optional.empty());
    Item.Area zone =
        drawing.items().stream()
            .filter(Item.Area.class::isInstance)
            .map(Item.Area.class::cast)
            .findFirst()
            .orElseThrow();
    // ISO 965-1, M6 6g: major 5.974 at most, so the highest is 0.013 mm below 6 mm on the radius.
    assertEquals(
        -0.013, zone.shell().stream().mapToDouble(p -> p.yMm()).max().orElseThrow(), 0.00026);
  }

  @Test
  void wiresRestOnTheFlanks() {
    ScrewThread m6 = thread("M6");
    WireService wires = new WireService();
    Length best = wires.sizes(m6.form(), m6.pitch()).best();
    OverWires over = wires.over(m6, best, m6.effective());
    Drawing drawing = WiresDrawing.of(m6, over, LengthUnit.MILLIMETRE);
    Item.Circle wire =
        drawing.items().stream()
            .filter(Item.Circle.class::isInstance)
            .map(Item.Circle.class::cast)
            .findFirst()
            .orElseThrow();
    // The best wire touches at the effective diameter: its centre is a quarter of the pitch times
    // the tangent of half the angle above it, but for the helix correction.
    double effective = over.effective().minus(m6.major()).millimetres() / 2;
    double above = wire.centre().yMm() - effective;
    assertEquals(0.25 * Math.tan(Math.toRadians(30)), above, 0.003);
  }

  @ParameterizedTest
  @CsvSource({"60 to 2500, 60, 2500", "350-1200 rpm, 350, 1200", "'1200, 350 600', 350, 1200"})
  void aMachineIsTypedAsARangeOrItsSteps(String typed, double least, double most) {
    assertEquals(least, MachineLine.read(typed).orElseThrow().leastRpm());
    assertEquals(most, MachineLine.read(typed).orElseThrow().mostRpm());
  }

  @ParameterizedTest
  @ValueSource(strings = {"fast", "2500 to 60", "0 to 10", "60 to", "-5"})
  void whatTellsNoSpeedsIsRefused(String typed) {
    assertThrows(MeasureException.class, () -> MachineLine.read(typed));
  }

  @ParameterizedTest
  @CsvSource({"1683.4, 1700", "842, 840", "95.5, 96", "12345, 12000", "7.25, 7.3"})
  void speedsAreSaidToTwoFigures(double turns, String words) {
    assertEquals(words, SpeedFold.rounded(turns));
  }
}
