package org.fettlebench.desktop.threads.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.fettlebench.desktop.threads.internal.ThreadAnswer.Tapping;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.testkit.trade.RealTrade;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.TapLead;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ThreadsBookTest {
  private final ThreadsBook book = Bench.book();

  private static ScrewThread thread(String designation) {
    return RealTrade.THREADS.find(designation).orElseThrow();
  }

  private static Length mm(double value) {
    return Length.ofMillimetres(value);
  }

  private ThreadAnswer answer(String designation) {
    return book.answer(ThreadQuestion.of(thread(designation)), Bench.rack());
  }

  @Test
  void choicesAreHeldAndTheRuleShowsTheOthersToo() {
    ThreadAnswer answer = answer("2 BA");
    assertTrue(answer.choices().stream().allMatch(Tapping::held));
    assertTrue(answer.rule().stream().anyMatch(t -> !t.held()));
    assertTrue(
        answer.chosen().orElseThrow().ready(), "one that is in comes before one that is out");
  }

  /** What a table prints as 2 BA: 4.70 mm, 0.81 mm, minor 3.73 mm (BS 93). */
  @Test
  void perCentOfThreadIsAgainstTheDepthOfTheForm() {
    DrillSize fourMm = RealTrade.DRILLS.find("4.0 mm").orElseThrow();
    ThreadQuestion asked = ThreadQuestion.of(thread("2 BA")).choosing(Optional.of(fourMm));
    Tapping chosen = book.answer(asked, Bench.rack()).chosen().orElseThrow();
    assertEquals(100 * (4.7 - 4.0) / (2 * 0.6 * 0.81), chosen.choice().percentOfThread(), 0.05);
  }

  @Test
  void aDrillThatIsOutOrWornSaysSo() {
    HeldDrills held = HeldDrills.of(Bench.rack(), RealTrade.DRILLS);
    DrillSize out = RealTrade.DRILLS.find("No 24").orElseThrow();
    DrillSize worn = RealTrade.DRILLS.find("No 25").orElseThrow();
    DrillSize none = RealTrade.DRILLS.find("No 21").orElseThrow();
    assertEquals(Optional.of("out with Grace Webb"), held.where(out));
    assertEquals(Optional.of("worn, Drill stand / Number"), held.where(worn));
    assertFalse(held.ready(out) || held.ready(worn));
    assertEquals(Optional.empty(), held.where(none));
  }

  @Test
  void aBlindHoleNeedsADrillAndBothLengths() {
    ThreadQuestion.Blind blind = new ThreadQuestion.Blind(mm(8), mm(20), TapLead.SECOND);
    ThreadQuestion asked =
        new ThreadQuestion(
            thread("2 BA"), Optional.empty(), "", false, Optional.empty(), Optional.of(blind));
    ThreadAnswer.Blind deep = book.answer(asked, Bench.rack()).blind().orElseThrow();
    Drawing drawing = BlindHoleDrawing.of(deep.asked(), deep.hole(), LengthUnit.MILLIMETRE);
    assertTrue(drawing.title().contains("full thread 8.00 mm"), drawing.title());
    assertEquals(-20, drawing.frame().minYMm(), 1e-9);
    double lowest =
        drawing.items().stream()
            .filter(Item.Area.class::isInstance)
            .map(Item.Area.class::cast)
            .filter(area -> area.tone() == org.fettlebench.drawing.Tone.EMPTY)
            .flatMap(area -> area.shell().stream())
            .mapToDouble(p -> p.yMm())
            .min()
            .orElseThrow();
    assertEquals(-deep.hole().drillTip().millimetres(), lowest, 1e-9);
  }

  @Test
  void theProfileIsDrawnWithTheHoleAtItsPlace() {
    DrillSize drill = RealTrade.DRILLS.find("No 24").orElseThrow();
    Drawing drawing = ProfileDrawing.of(thread("2 BA"), Optional.of(drill), LengthUnit.MILLIMETRE);
    double level =
        drawing.items().stream()
            .filter(Item.Path.class::isInstance)
            .map(Item.Path.class::cast)
            .filter(p -> p.line() == org.fettlebench.drawing.LineKind.GOVERNING)
            .findFirst()
            .orElseThrow()
            .points()
            .get(0)
            .yMm();
    assertEquals(-(4.7 - drill.diameter().millimetres()) / 2, level, 1e-6);
    assertTrue(drawing.title().contains("No 24"));
  }

  @ParameterizedTest
  @CsvSource({"70, 70", "67.5 %, 67.5", "100, 100"})
  void perCentIsReadAsTyped(String typed, double percent) {
    assertEquals(Optional.of(percent), HoleWishes.percent(typed));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "101", "-5", "most", "NaN"})
  void perCentOutsideItsRangeIsRefused(String typed) {
    assertThrows(IllegalArgumentException.class, () -> HoleWishes.percent(typed));
  }

  @Test
  void namesOnTheRuleDoNotRunIntoEachOther() {
    ThreadAnswer answer = answer("2 BA");
    RuleScale scale = new RuleScale(answer.rule(), 40, 600);
    Optional<DrillSize> chosen = answer.chosen().map(Tapping::drill);
    List<RuleScale.Name> names = scale.names(chosen, RuleScale.LEVELS, t -> 40);
    assertTrue(names.stream().anyMatch(n -> chosen.equals(Optional.of(n.drill().drill()))));
    for (RuleScale.Name one : names) {
      for (RuleScale.Name other : names) {
        boolean apart = Math.abs(one.middle() - other.middle()) >= 48;
        assertTrue(one == other || one.level() != other.level() || apart, one + " " + other);
      }
    }
  }

  @Test
  void theRuleIsWalkedFromEndToEnd() {
    ThreadAnswer answer = answer("M6");
    RuleScale scale = new RuleScale(answer.rule(), 0, 500);
    DrillSize first = answer.rule().get(0).drill();
    DrillSize last = answer.rule().get(answer.rule().size() - 1).drill();
    assertEquals(first, scale.beside(first, -1).orElseThrow().drill());
    assertEquals(answer.rule().get(1).drill(), scale.beside(first, 1).orElseThrow().drill());
    assertEquals(last, scale.beside(last, 1).orElseThrow().drill());
    assertEquals(0, scale.x(first.diameter()));
    assertEquals(500, scale.x(last.diameter()));
  }
}
