package org.fettlebench.fasteners.grip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import org.fettlebench.fasteners.grip.Into.Kind;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadForm;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Screws in their places, by hand. */
class ScrewReachTest {
  /**
   * M6 by ISO 261 and ISO 724: pitch 1, effective 5.350, minor 4.917; the nut of ISO 4032 is 5.2.
   */
  private static final ScrewThread M6 =
      new ScrewThread(
          "M",
          "M6",
          "M6",
          ThreadForm.ISO,
          mm(6),
          mm(1),
          Optional.empty(),
          mm(5.35),
          mm(4.917),
          mm(4.773),
          new Source("ISO 724", Standing.PUBLISHED));

  private static final double NUT = 5.2;

  private static Length mm(double mm) {
    return Length.ofMillimetres(mm);
  }

  private static ScrewReach reach(double length, double passed, Kind kind, double thread) {
    return ScrewReach.of(M6, mm(length), mm(passed), new Into(kind, mm(thread)));
  }

  // Reach is length less what is passed; beyond is reach less full thread.
  @ParameterizedTest
  @CsvSource({
    "20, 8, BLIND, 12, 12, 12, 0, GOOD",
    "20, 8, BLIND, 11.999999, 12, 11.999999, 0.000001, BOTTOMS",
    "20, 8, BLIND, 10, 12, 10, 2, BOTTOMS",
    "20, 8, THROUGH, 10, 12, 10, 2, GOOD",
    "14, 8, BLIND, 12, 6, 6, -6, GOOD",
    "13.99, 8, BLIND, 12, 5.99, 5.99, -6.01, SHALLOW",
    "9, 8, BLIND, 12, 1, 1, -11, SHALLOW",
    "8.999999, 8, BLIND, 12, 0.999999, 0.999999, -11.000001, DOES_NOT_HOLD",
    "6, 8, THROUGH, 12, -2, 0, -14, DOES_NOT_HOLD",
    "16, 0, THROUGH, 4, 16, 4, 12, SHALLOW",
    "20, 8, NUT, 5.2, 12, 5.2, 6.8, GOOD",
    "13.2, 8, NUT, 5.2, 5.2, 5.2, 0, GOOD",
    "13.1, 8, NUT, 5.2, 5.1, 5.1, -0.1, SHALLOW",
    "8, 8, NUT, 5.2, 0, 0, -5.2, DOES_NOT_HOLD",
  })
  void aScrewReachesEngagesAndStandsOut(
      double length,
      double passed,
      Kind kind,
      double thread,
      double reach,
      double engaged,
      double beyond,
      ScrewReach.Verdict verdict) {
    ScrewReach found = reach(length, passed, kind, thread);
    assertEquals(mm(length), found.length());
    assertEquals(mm(passed), found.passed());
    assertEquals(mm(reach), found.reach());
    assertEquals(mm(engaged), found.engaged());
    assertEquals(mm(beyond), found.beyond());
    assertEquals(engaged / 6, found.engagedDiameters(), 1e-12);
    assertEquals(verdict, found.verdict());
  }

  // One diameter is 6; a shallower thread and a nut are wanted whole.
  @ParameterizedTest
  @CsvSource({
    "BLIND, 12, 8, 14, 20",
    "BLIND, 6, 8, 14, 14",
    "BLIND, 4, 8, 12, 12",
    "THROUGH, 12, 8, 14,",
    "THROUGH, 4, 0, 4,",
    "NUT, 5.2, 8, 13.2,",
    "NUT, 10, 8, 18,",
  })
  void lengthsThatWillDo(Kind kind, double thread, double passed, double least, Double most) {
    LengthWanted wanted = LengthWanted.of(M6, mm(passed), new Into(kind, mm(thread)));
    assertEquals(mm(least), wanted.least());
    assertEquals(Optional.ofNullable(most).map(ScrewReachTest::mm), wanted.most());
  }

  /** What is wanted is judged to be good at both its ends, and not a hair outside them. */
  @Test
  void whatIsWantedIsWhatIsGood() {
    for (Kind kind : Kind.values()) {
      double thread = kind == Kind.NUT ? NUT : 9;
      LengthWanted wanted = LengthWanted.of(M6, mm(3), new Into(kind, mm(thread)));
      double least = wanted.least().millimetres();
      assertEquals(ScrewReach.Verdict.GOOD, reach(least, 3, kind, thread).verdict());
      assertEquals(ScrewReach.Verdict.SHALLOW, reach(least - 1e-6, 3, kind, thread).verdict());
      wanted
          .most()
          .map(Length::millimetres)
          .ifPresent(
              most -> {
                assertEquals(ScrewReach.Verdict.GOOD, reach(most, 3, kind, thread).verdict());
                assertEquals(
                    ScrewReach.Verdict.BOTTOMS, reach(most + 1e-6, 3, kind, thread).verdict());
              });
    }
  }

  @Test
  void whatCannotBeIsRefused() {
    refused("length of the screw 0 mm is not above 0 mm", () -> reach(0, 8, Kind.BLIND, 9));
    refused("thickness passed -1 mm is below 0 mm", () -> reach(9, -1, Kind.BLIND, 9));
    refused("depth of full thread 0 mm is not above 0 mm", () -> reach(9, 1, Kind.BLIND, 0));
    refused("depth of full thread -2 mm is not above 0 mm", () -> reach(9, 1, Kind.NUT, -2));
    Into into = new Into(Kind.THROUGH, mm(9));
    refused("thickness passed -1 mm is below 0 mm", () -> LengthWanted.of(M6, mm(-1), into));
  }

  private static void refused(String words, org.junit.jupiter.api.function.Executable asked) {
    assertEquals(words, assertThrows(MeasureException.class, asked).getMessage());
  }
}
