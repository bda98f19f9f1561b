package org.fettlebench.fasteners.scale;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.fettlebench.fasteners.Head;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadForm;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Hexagons to scale, by hand from printed across-flats. */
class ScaleLookTest {
  // BS 1083:1965 table 1, largest across flats: 1/4 in 0.445, 3/4 in 1.200, 1 in 1.480.
  private static final Head QUARTER = hexagon("1/4 BSW", 0.445);
  private static final Head THREE_QUARTERS = hexagon("3/4 BSW", 1.2);
  private static final Head INCH = hexagon("1 BSW", 1.48);
  // 8 BA 0.152 and the next smaller hexagon 0.131 in: from memory, as the table of heads says.
  private static final Head BA8 = hexagon("8 BA", 0.152);
  private static final Head BA8_SMALL = hexagon("8 BA", 0.131);
  private static final Head ROUND =
      new Head(
          "round",
          "8 BA round head",
          "8 BA",
          Optional.empty(),
          inches(0.15),
          Optional.empty(),
          Optional.empty(),
          new Source("a test", Standing.PUBLISHED),
          "");

  private static Length inches(double inches) {
    return Length.ofMillimetres(inches * 25.4);
  }

  private static Head hexagon(String thread, double flatsIn) {
    return new Head(
        "hexagon",
        thread + " hexagon",
        thread,
        Optional.of(inches(flatsIn)),
        inches(flatsIn / Math.cos(Math.PI / 6)),
        Optional.empty(),
        Optional.empty(),
        new Source("a test", Standing.PUBLISHED),
        "");
  }

  private static ScrewThread thread(String name, double majorIn) {
    return new ScrewThread(
        "T",
        name,
        name,
        ThreadForm.WHITWORTH,
        inches(majorIn),
        inches(majorIn / 10),
        Optional.empty(),
        inches(majorIn * 0.93),
        inches(majorIn * 0.87),
        inches(majorIn * 0.87),
        new Source("a test", Standing.PUBLISHED));
  }

  /** 1:12 of 1.480 in is 0.12333 in: 0.152 is 23.24 per cent over, and stands for 1.824 in. */
  @Test
  void aHexagonIsHeldAgainstTheFullSizeOne() {
    ScaleLook look = ScaleLook.of(BA8, INCH, 12);
    assertEquals(1.824, look.standsFor().inches(), 1e-6);
    assertEquals(1.48 / 12, look.scaled().inches(), 1e-6);
    assertEquals(100 * (0.152 * 12 / 1.48 - 1), look.overPercent(), 1e-9);
    assertEquals(23.24, look.overPercent(), 0.005);
    // 1:8 of 1.200 in is 0.150 in: 0.131 is 12.67 per cent under.
    assertEquals(-12.67, ScaleLook.of(BA8_SMALL, THREE_QUARTERS, 8).overPercent(), 0.005);
    assertEquals(0, ScaleLook.of(INCH, INCH, 1).overPercent(), 1e-12);
  }

  @Test
  void theNearestToScaleComesFirstBeItOverOrUnder() {
    List<ScaleLook> ranked =
        ScaleLook.ranked(List.of(QUARTER, BA8, ROUND, BA8_SMALL), THREE_QUARTERS, 8);
    // Of 0.150 in: 0.152 is 1.3 over, 0.131 12.7 under, 0.445 far over; a round head has no flats.
    assertEquals(List.of(BA8, BA8_SMALL, QUARTER), ranked.stream().map(ScaleLook::head).toList());
  }

  @Test
  void theFullSizeThreadIsTheNearestThatHasAHead() {
    ScrewThread model = thread("8 BA", 0.0866);
    List<ScrewThread> series =
        List.of(thread("3/4 BSW", 0.75), thread("1 BSW", 1), thread("9/8 BSW", 1.125));
    // 0.0866 x 12 is 1.039 in.
    assertEquals(
        Optional.of(INCH),
        ScaleLook.fullSize(model, 12, series, each -> Optional.of(INCH).filter(h -> is(each, h))));
    // Without a head for that size the next nearest is taken: 0.75 in, as 9/8 in has a round one.
    assertEquals(
        Optional.of(THREE_QUARTERS),
        ScaleLook.fullSize(
            model,
            12,
            series,
            each ->
                switch (each.designation()) {
                  case "3/4 BSW" -> Optional.of(THREE_QUARTERS);
                  case "9/8 BSW" -> Optional.of(ROUND);
                  default -> Optional.empty();
                }));
    assertTrue(ScaleLook.fullSize(model, 12, List.of(), each -> Optional.of(INCH)).isEmpty());
  }

  private static boolean is(ScrewThread thread, Head head) {
    return head.thread().equals(thread.designation());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -12, 0.99, 1000.1, Double.NaN, Double.POSITIVE_INFINITY})
  void scalesThatCannotBeAreRefused(double oneTo) {
    MeasureException refused =
        assertThrows(MeasureException.class, () -> ScaleLook.of(BA8, INCH, oneTo));
    assertTrue(refused.getMessage().endsWith("is outside 1:1 to 1:1000"), refused.getMessage());
  }

  @Test
  void aHeadWithoutFlatsIsRefused() {
    for (MeasureException refused :
        List.of(
            assertThrows(MeasureException.class, () -> ScaleLook.of(ROUND, INCH, 12)),
            assertThrows(MeasureException.class, () -> ScaleLook.of(BA8, ROUND, 12)))) {
      assertEquals("8 BA round head has no flats to compare", refused.getMessage());
    }
  }
}
