package org.fettlebench.threads.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadSeries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Kinds of thread by the designations of their standards, which each answer names. */
class OtherThreadsTest {
  private final ThreadRegistry threads = OurThreads.fresh();

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "R 1/4 | taper | G 1/4",
        "Rc1/8 | taper | G 1/8",
        "R 1 1/4 | taper | G 1 1/4",
        "1/8 BSPT | taper | G 1/8",
        "BSPT 1/8 | taper | G 1/8",
        "1/8 BSP taper | taper | G 1/8",
        "Rp 1/2 | ISO 7-1 | G 1/2",
        "1/8-27 NPT | NPT | American",
        "NPTF 1/4 | NPT | American",
        "MJ6x1 | ISO 5855 | M6 x 1",
        "MJ 6 x 1 - 4h6h | ISO 5855 | M6 x 1",
        "1/4-28 UNJF-3A | UNJ | B1.15",
        "UNJC #10-24 | UNJ | B1.15",
        "Tr 10 x 2 | ISO 2904 | trapezoidal",
        "1/2-10 Acme | B1.5 | Acme",
        "Pg 7 | Pg | conduit",
        "1/4 CEI | BS 811 | cycle",
        "26 tpi cycle | BS 811 | cycle"
      })
  void saysWhichKindItIs(String typed, String words, String others) {
    assertEquals(Optional.empty(), threads.find(typed));
    String refusal = threads.refusal(typed).orElseThrow();
    assertTrue(refusal.contains(words) && refusal.contains(others), refusal);
  }

  @ParameterizedTest
  @CsvSource({"M6-9z, M6, 9z, 6g", "1/4-20 UNC-9Z, 1/4-20 UNC, 9Z, 2A", "M6 10g, M6, 10g, 6H"})
  void saysWhatIsNoClass(String typed, String thread, String behind, String known) {
    String refusal = threads.refusal(typed).orElseThrow();
    assertTrue(refusal.startsWith(thread + " is a thread, but \"" + behind + "\""), refusal);
    assertTrue(refusal.contains(known), refusal);
  }

  @Test
  void isSilentAboutThreadsThatAreCarriedAndAboutSlips() {
    for (ThreadSeries series : threads.series()) {
      for (ScrewThread thread : series.threads()) {
        assertEquals(Optional.empty(), threads.refusal(thread.designation()));
      }
    }
    assertEquals(Optional.empty(), threads.refusal("26 BA"));
    assertEquals(Optional.empty(), threads.refusal("M6 x"));
  }
}
