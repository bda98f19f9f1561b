package org.fettlebench.desktop.threads.internal.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.fettlebench.desktop.threads.internal.Bench;
import org.fettlebench.drawing.Drawing;
import org.fettlebench.drawing.Item;
import org.fettlebench.drawing.LineKind;
import org.fettlebench.drawing.Tone;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.testkit.trade.RealTrade;
import org.fettlebench.threads.ScrewThread;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against plain arithmetic on the published pitches and diameters. */
class CrossingTest {
  private static final CrossingBook BOOK = Bench.crossings();

  private static ScrewThread thread(String name) {
    return RealTrade.THREADS.find(name).orElseThrow();
  }

  private static Crossing crossing(String screw, String nut) {
    return BOOK.crossing(thread(screw), thread(nut));
  }

  @Test
  void pitchesRunApartThreadByThread() {
    // 2 BA has 0.81 mm (BS 93), 10-32 has 25.4 / 32 = 0.79375 mm.
    Crossing crossing = crossing("2 BA", "10-32 UNF");
    assertEquals(-0.01625, crossing.driftPerThreadMm(), 1e-9);
    assertEquals(6 * 0.01625, crossing.apartMm(6), 1e-9);
    assertEquals(0.79375 / 2 / 0.01625, crossing.threadsToHalf().orElseThrow(), 1e-6);
    // 4.826 - 4.700 mm.
    assertEquals(-0.126, crossing.largerMm(), 1e-9);
  }

  @Test
  void theLoosestPlayBindsAfterItsShareOfTheDrift() {
    // BS 93 normal: screw's effective least 4.084 mm; ASME B1.1 2B #10-32: most 0.1736 in.
    Crossing crossing = crossing("2 BA", "10-32 UNF");
    double play = (0.1736 * 25.4 - 4.084) * Math.tan(Math.toRadians(30));
    assertEquals(play, crossing.loosest().orElseThrow(), 0.00005 * 25.4);
    assertEquals(play / 0.01625, crossing.bindsAfter().orElseThrow(), 0.1);
  }

  @ParameterizedTest
  @CsvSource({
    "M6, M6, the same thread under two names",
    "M6, M5, too large to go in",
    "M4, M6, slips through and holds nothing",
    "0 BA, M6, 'one pitch, so it goes on all the way'",
  })
  void theAnswerSaysWhatHappens(String screw, String nut, String words) {
    assertTrue(CrossingWords.answer(crossing(screw, nut), 3).endsWith(words));
  }

  @ParameterizedTest
  @CsvSource({
    "0.5, half a pitch",
    "0.49, half a pitch",
    "0.25, a quarter of a pitch",
    "0.1, a tenth of a pitch",
    "0.42, 0.42 of a pitch",
    "1.4, 1.40 pitches"
  })
  void sharesAreSaidInWordsWhereOneIsNear(double share, String words) {
    assertEquals(words, CrossingWords.share(share));
  }

  @Test
  void halfAPitchIsReachedWhereTheDrawingEnds() {
    // 1/4-20 (1.27 mm) in M6 (1 mm): half of 1 mm over 0.27 mm is 1.85 threads.
    Crossing crossing = crossing("M6", "1/4-20 UNC");
    assertEquals(0.5 / 0.27, crossing.threadsToHalf().orElseThrow(), 1e-9);
    assertEquals(2, crossing.usualThreads());
    assertTrue(
        CrossingWords.answer(crossing, 2)
            .endsWith("after 2 threads the crests are 0.54 of a pitch apart"));
  }

  @Test
  void aThreadInItselfClaimsNoRoomTwice() {
    for (String name : List.of("2 BA", "1/4 BSW", "1/4 x 40 ME")) {
      assertEquals(0, CrossingDrawing.deepestMm(crossing(name, name), 5), 1e-6, name);
    }
  }

  @Test
  void theOverlapGrowsWithEachThread() {
    Crossing crossing = crossing("2 BA", "10-32 UNF");
    double before = 0;
    for (int threads : new int[] {3, 6, 9, 12}) {
      double now = CrossingDrawing.deepestMm(crossing, threads);
      assertTrue(now > before, threads + " threads: " + now);
      before = now;
    }
  }

  @Test
  void theDrawingHasBothLinesToScaleOnOneAxis() {
    Drawing drawing = CrossingDrawing.of(crossing("2 BA", "10-32 UNF"), 6, LengthUnit.MILLIMETRE);
    double screwTop = top(drawing, LineKind.OUTLINE);
    double nutTop = top(drawing, LineKind.HIDDEN);
    assertEquals(0, screwTop, 1e-9);
    assertEquals(0.126 / 2, nutTop, 1e-9);
    assertTrue(
        drawing.items().stream()
            .anyMatch(item -> item instanceof Item.Area area && area.tone() == Tone.WALL),
        "what both claim is hatched");
    assertTrue(
        drawing.items().stream()
            .anyMatch(i -> i instanceof Item.Dimension d && d.words().equals("0.098 mm")));
  }

  @Test
  void theEndStandsBelowOnceMoreAndLarger() {
    Crossing crossing = crossing("2 BA", "10-32 UNF");
    Drawing whole = CrossingDrawing.of(crossing, 6, LengthUnit.MILLIMETRE);
    Drawing drawing = CrossingDrawing.withDetail(crossing, 6, LengthUnit.MILLIMETRE);
    double deep = CrossingDrawing.deepestMm(crossing, 6);
    assertTrue(drawing.frame().minYMm() < whole.frame().minYMm() - crossing.finerMm());
    Item.Dimension across =
        drawing.items().stream()
            .filter(i -> i instanceof Item.Dimension d && d.words().equals("0.166 mm"))
            .map(Item.Dimension.class::cast)
            .findFirst()
            .orElseThrow();
    // The overlap as the table tells it, as many times larger as the words below say.
    double factor = (across.to().yMm() - across.from().yMm()) / deep;
    assertTrue(
        drawing.items().stream()
            .anyMatch(
                i ->
                    i instanceof Item.Label l
                        && l.words()
                            .equals(
                                String.format(
                                    java.util.Locale.ROOT, "A, %.1f times larger", factor))),
        "factor " + factor);
    assertEquals(
        CrossingDrawing.of(crossing, 1, LengthUnit.MILLIMETRE).items().size(),
        CrossingDrawing.withDetail(crossing, 1, LengthUnit.MILLIMETRE).items().size(),
        "one thread is large enough as it is");
  }

  private static double top(Drawing drawing, LineKind kind) {
    return drawing.items().stream()
        .flatMap(i -> i instanceof Item.Path path && path.line() == kind ? Stream.of(path) : null)
        .flatMap(path -> path.points().stream())
        .mapToDouble(point -> point.yMm())
        .max()
        .orElseThrow();
  }

  @Test
  void theTableHasBothUnits() {
    String text =
        CrossingTable.of(crossing("2 BA", "10-32 UNF"), 6, LengthUnit.MILLIMETRE).asText();
    assertTrue(text.contains("major\t4.700\t4.826\t0.126"), text);
    assertTrue(text.contains("major\t0.1850\t0.1900\t0.0050"), text);
    assertTrue(text.contains("angle\t47.5\u00b0\t60\u00b0"), text);
  }

  @Test
  void pairsOfAThreadLeaveItsOtherNamesOut() {
    assertFalse(BOOK.pairsOf(thread("2 BA")).isEmpty());
    assertTrue(
        BOOK.pairsOf(thread("2 BA")).stream()
            .allMatch(pair -> pair.first().designation().equals("2 BA")));
  }
}
