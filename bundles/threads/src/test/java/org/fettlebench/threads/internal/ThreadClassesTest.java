package org.fettlebench.threads.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.Standing;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadCall;
import org.fettlebench.threads.ThreadSeries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Classes as they are written, refused and ordered; Whitworth limits worked by hand. */
@TestInstance(Lifecycle.PER_CLASS)
class ThreadClassesTest {
  private final ThreadRegistry threads = OurThreads.fresh();

  private List<LimitsOfThread> limits(String designation, String threadClass) {
    return threads.limits(thread(designation), threadClass);
  }

  private ScrewThread thread(String designation) {
    return threads.find(designation).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "M6x0.75-6g, M6 x 0.75, 6g",
    "m6 x 0.75 - 6G, M6 x 0.75, 6G",
    "M10 4g6g, M10, 4g6g",
    "M10-6H/6g, M10, 6H/6g",
    "M6 - 6H / 5g6g, M6, 6H/5g6g",
    "1/4-20 UNC-2B, 1/4-20 UNC, 2B",
    "1/4-20unc 2a, 1/4-20 UNC, 2A",
    "#10-32 UNF-2B/2A, #10-32 UNF, 2B/2A",
    "15/16-12 UN-3A, 15/16-12 UN, 3A",
    "#10-28 UNS-2A, #10-28 UNS, 2A",
    "1 1/8-10 UNS 2A, 1 1/8-10 UNS, 2A",
    "G1/4 A, G 1/4, A",
    "G 1/2B, G 1/2, B",
    "1/4 BSW medium, 1/4 BSW, medium",
    "1/4 BSF - Close fit, 1/4 BSF, close",
    "2 BA normal, 2 BA, normal",
    "2BA, 2 BA, ",
    "M6, M6, "
  })
  void readsTheClassBehindADesignation(String written, String designation, String threadClass) {
    ThreadCall call = threads.read(written).orElseThrow();
    assertEquals(designation, call.thread().designation());
    assertEquals(Optional.ofNullable(threadClass), call.threadClass());
  }

  @ParameterizedTest
  @CsvSource({"15/16-13 UN", "#13-40 UNS", "1/0-20 UNS", "7-20 UNS", "1/4-90 UNS", "M6.3-6g"})
  void makesUpNoThread(String written) {
    assertEquals(Optional.empty(), threads.read(written));
  }

  @ParameterizedTest
  @CsvSource({
    "M6, 2B",
    "M6, 6z",
    "M6, 9H",
    "M6, 3H",
    "M6, 6g6h",
    "M3, 8g",
    "M1, 6e",
    "1/4-20 UNC, 6H",
    "1/4-20 UNC, 4A",
    "1/4 BSW, 2A",
    "2 BA, free",
    "G 1/4, C",
    "M6, ''",
    "M6, 6g/"
  })
  void refusesAClassThatThereIsNot(String designation, String threadClass) {
    ScrewThread thread = thread(designation);
    MeasureException refused =
        assertThrows(MeasureException.class, () -> threads.limits(thread, threadClass));
    assertTrue(refused.getMessage().contains(":"), refused.getMessage());
  }

  @Test
  void putsTheScrewFirstAndTheNutOnce() {
    assertEquals(
        List.of("ISO 965-1 6g", "ISO 965-1 6H"),
        limits("M6", "6H/6g").stream().map(LimitsOfThread::threadClass).toList());
    assertEquals(3, limits("2 BA", "close/normal").size());
  }

  /** T for 1/4 BSW over one diameter: 0.00126 + 0.0015 + 0.001118 = 0.003878 in. */
  @ParameterizedTest
  @CsvSource({
    "close, 0.2452, 0.2154, 0.1805",
    "medium, 0.2439, 0.2141, 0.1776",
    "free, 0.2419, 0.2122, 0.1757"
  })
  void whitworthScrew(String threadClass, double major, double effective, double minor) {
    LimitsOfThread screw = limits("1/4 BSW", threadClass).get(0);
    assertEquals(major, screw.major().least().orElseThrow().inches(), 1e-7);
    assertEquals(effective, screw.effective().least().orElseThrow().inches(), 1e-7);
    assertEquals(minor, screw.minor().least().orElseThrow().inches(), 1e-7);
    assertEquals(0.25, screw.major().most().orElseThrow().inches(), 1e-7);
    assertEquals(Standing.FROM_MEMORY, screw.effective().source().standing());
  }

  @ParameterizedTest
  @CsvSource({"medium, 0.2219, 0.2030", "normal, 0.2238, 0.2030"})
  void whitworthNut(String threadClass, double effective, double minor) {
    List<LimitsOfThread> both = limits("1/4 BSW", threadClass);
    LimitsOfThread nut = both.get(both.size() - 1);
    assertEquals(effective, nut.effective().most().orElseThrow().inches(), 1e-7);
    assertEquals(minor, nut.minor().most().orElseThrow().inches(), 1e-7);
    assertEquals(Optional.empty(), nut.major().most());
  }

  /** 0.0015 x (0.63 + 1) + 0.0020358 = 0.0044808 at 1 in engaged, times 1.3: 0.0058. */
  @Test
  void letsALongerEngagementIntoUnifiedTolerances() {
    ScrewThread thread = thread("1/4-20 UNC");
    LimitsOfThread nut = threads.limits(thread, "2B", Length.ofInchFraction(1, 1)).get(0);
    assertEquals(0.2233, nut.effective().most().orElseThrow().inches(), 1e-9);
    ScrewThread metric = thread("M6");
    assertThrows(
        MeasureException.class, () -> threads.limits(metric, "6H", Length.ofMillimetres(6)));
    assertThrows(MeasureException.class, () -> threads.limits(thread, "2B", Length.ZERO));
  }

  @Test
  void saysWhatIsPrintedAndWhatRemembered() {
    LimitsOfThread usual = limits("M6", "6g").get(0);
    assertEquals(Standing.PUBLISHED, usual.major().source().standing());
    LimitsOfThread rare = limits("M6", "8g6g").get(0);
    assertEquals(Standing.FROM_MEMORY, rare.effective().source().standing());
    LimitsOfThread byRule = limits("M1", "6H").get(0);
    assertEquals(Standing.RULE, byRule.effective().source().standing());
    assertTrue(byRule.notes().toString().contains("coarsest, grade 5"), byRule.notes().toString());
  }

  /** Every class in usual use of every thread that is shipped has limits, the right way round. */
  @Test
  void hasLimitsForAllThreadsAndUsualClasses() {
    for (ThreadSeries series : threads.series()) {
      for (ScrewThread thread : series.threads()) {
        List<String> classes = threads.classes(thread);
        assertFalse(classes.isEmpty(), thread.designation());
        for (LimitsOfThread limits : threads.limits(thread, classes.get(0))) {
          checkSense(limits);
        }
      }
    }
  }

  private void checkSense(LimitsOfThread limits) {
    String name = limits.thread().designation() + " " + limits.threadClass();
    boolean screw = limits.side() == org.fettlebench.threads.ThreadSide.EXTERNAL;
    Length effective =
        (screw ? limits.effective().most() : limits.effective().least()).orElseThrow();
    // Metric and Unified sizes are rounded before they are shown: by 0.0013 mm at most.
    long over = effective.minus(limits.thread().effective()).nanometres();
    assertTrue(screw ? over <= 1300 : over >= -1300, name);
    assertTrue(limits.effective().allows(effective), name);
    assertFalse(
        limits.effective().allows(effective.plus(Length.ofMillimetres(screw ? 0.001 : -0.001))),
        name);
  }
}
