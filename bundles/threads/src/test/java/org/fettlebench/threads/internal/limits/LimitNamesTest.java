package org.fettlebench.threads.internal.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadSide;
import org.fettlebench.threads.internal.OurThreads;
import org.fettlebench.threads.internal.ThreadRegistry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What limits are called, what is noted beside them, and how a wrong class is refused. */
@TestInstance(Lifecycle.PER_CLASS)
class LimitNamesTest {
  private final ThreadRegistry threads = OurThreads.fresh();

  private ScrewThread thread(String designation) {
    return threads.find(designation).orElseThrow();
  }

  private String refusal(String designation, String threadClass) {
    ScrewThread thread = thread(designation);
    return assertThrows(MeasureException.class, () -> threads.limits(thread, threadClass))
        .getMessage();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "M6|2B|ISO 965-1 has no class '2B' for M6: say a grade and a position, such as 6g",
        "M6|6g4h|ISO 965-1 has no class '6g4h' for M6: both diameters have the same position",
        "M3|8g|ISO 965-1 has no class '8g' for M3: the crest has grades 4 and 6",
        "1/4-20 UNC|4A|ASME B1.1 has no class '4A' for 1/4-20 UNC: say 1A, 2A or 3A",
        "1/4 BSW|tight|BS 84 has no class 'tight' for 1/4 BSW: say close, medium or free",
        "2 BA|free|BS 93 has no class 'free' for 2 BA: say close or normal",
        "G 1/4|C|ISO 228-1 has no class 'C' for G 1/4: say A or B",
        "M1|6e|ISO 965-1 has no position e for a pitch of 0.25 mm: take g or h"
      })
  void refusals(String designation, String threadClass, String begins) {
    String refusal = refusal(designation, threadClass);
    assertTrue(refusal.startsWith(begins), refusal);
  }

  @Test
  void standardsWithoutALengthOfEngagementRefuseOne() {
    for (String designation : List.of("2 BA", "M6", "G 1/4")) {
      ScrewThread thread = thread(designation);
      String usual = threads.classes(thread).get(0);
      String said =
          assertThrows(
                  MeasureException.class,
                  () -> threads.limits(thread, usual, Length.ofMillimetres(6)))
              .getMessage();
      assertTrue(said.contains("without a length of engagement: leave 6 mm out"), said);
    }
  }

  @Test
  void usualClasses() {
    assertEquals(List.of("6H/6g", "5H/4h", "6G/6e", "7H/8g"), threads.classes(thread("M6")));
    assertEquals(List.of("2B/2A", "3B/3A", "1B/1A"), threads.classes(thread("1/4-20 UNC")));
    assertEquals(List.of("medium", "close", "free", "normal"), threads.classes(thread("1/4 BSW")));
    assertEquals(List.of("normal", "close"), threads.classes(thread("2 BA")));
    assertEquals(List.of("A", "B"), threads.classes(thread("G 1/4")));
  }

  @Test
  void notesOfBritishLimits() {
    assertEquals(List.of(), threads.limits(thread("16 BA"), "close").get(0).notes());
    for (LimitsOfThread limits : threads.limits(thread("17 BA"), "close")) {
      assertEquals(List.of("BS 93 ends at No 16; its rule is carried on"), limits.notes());
    }
    assertEquals(
        List.of("for a length of engagement of one diameter"),
        threads.limits(thread("1/4 BSW"), "close").get(0).notes());
    assertEquals(
        List.of("for a length of engagement of 12 mm"),
        threads.limits(thread("1/4 BSW"), "medium", Length.ofMillimetres(12)).get(1).notes());
  }

  /** T = 0.002 x 0.63 + 0.003 x 1 + 0.005 x 0.2236 = 0.005378 in at 1 in engaged. */
  @Test
  void aLongerEngagementWidensWhitworthTolerances() {
    LimitsOfThread screw = threads.limits(thread("1/4 BSW"), "medium", Length.ofInches(1)).get(0);
    assertEquals(0.2180 - 0.0054, screw.effective().least().orElseThrow().inches(), 1e-7);
  }

  /** BS 93, from No 11 up: no allowance, crest 0.25 p; 11 BA normal: 1.5 - 0.0775. */
  @Test
  void smallAssociationScrewsHaveNoAllowance() {
    LimitsOfThread ten = threads.limits(thread("10 BA"), "normal").get(0);
    LimitsOfThread eleven = threads.limits(thread("11 BA"), "normal").get(0);
    assertEquals(1.7 - 0.025, ten.major().most().orElseThrow().millimetres(), 1e-9);
    assertEquals(1.7 - 0.025 - 0.07, ten.major().least().orElseThrow().millimetres(), 1e-9);
    assertEquals(1.5, eleven.major().most().orElseThrow().millimetres(), 1e-9);
    assertEquals(1.5 - 0.0775, eleven.major().least().orElseThrow().millimetres(), 1e-9);
  }

  /** ISO 228-1: B has twice the tolerance of A; above 2 in the tolerance is 0.217 mm. */
  @Test
  void pipeThreads() {
    List<LimitsOfThread> b = threads.limits(thread("G 1/4"), "B");
    assertEquals("ISO 228-1 B", b.get(0).threadClass());
    assertEquals(ThreadSide.INTERNAL, b.get(1).side());
    assertEquals("ISO 228-1", b.get(1).threadClass());
    assertEquals(Optional.empty(), b.get(0).minor().least());
    assertEquals(thread("G 1/4").minorExternal(), b.get(0).minor().most().orElseThrow());
    double two = tolerance("G 2");
    double twoAndAQuarter = tolerance("G 2 1/4");
    assertEquals(0.180, two, 1e-9);
    assertEquals(0.217, twoAndAQuarter, 1e-9);
  }

  private double tolerance(String designation) {
    var effective = threads.limits(thread(designation), "A").get(0).effective();
    return effective.most().orElseThrow().minus(effective.least().orElseThrow()).millimetres();
  }

  @Test
  void positionGIsNotMeasuredFromTheBasicMajorDiameter() {
    LimitsOfThread free = threads.limits(thread("M6"), "6G").get(0);
    assertEquals(6.026, free.major().least().orElseThrow().millimetres(), 1e-9);
    // 5.350481 + 0.026 + 0.150 + 0.793857.
    assertEquals(6.3203, free.major().most().orElseThrow().millimetres(), 5e-5);
    assertTrue(free.major().source().citation().startsWith("ASME B1.13M"));
    LimitsOfThread usual = threads.limits(thread("M6"), "6H").get(0);
    assertTrue(usual.major().source().citation().startsWith("ISO 724 basic size; ASME B1.13M"));
  }

  @Test
  void theWeakerSourceStands() {
    Tolerance rule = new Tolerance(1, new Source("rule", Standing.RULE));
    Tolerance printed = new Tolerance(1, new Source("print", Standing.PUBLISHED));
    Tolerance memory = new Tolerance(1, new Source("memory", Standing.FROM_MEMORY));
    assertEquals("rule", printed.weaker(rule).citation());
    assertEquals("rule", rule.weaker(printed).citation());
    assertEquals("memory", memory.weaker(rule).citation());
    assertEquals("memory", rule.weaker(memory).citation());
    Tolerance other = new Tolerance(2, new Source("other rule", Standing.RULE));
    assertEquals("other rule", rule.weaker(other).citation());
  }
}
