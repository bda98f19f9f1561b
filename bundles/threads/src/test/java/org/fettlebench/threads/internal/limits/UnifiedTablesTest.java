package org.fettlebench.threads.internal.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.fettlebench.measure.Length;
import org.fettlebench.threads.LimitsOfThread;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.internal.OurThreads;
import org.fettlebench.threads.internal.ThreadRegistry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Limits of common Unified threads as the tables of ASME B1.1 print them, remembered. */
@TestInstance(Lifecycle.PER_CLASS)
class UnifiedTablesTest {
  private final ThreadRegistry threads = OurThreads.fresh();

  private LimitsOfThread limits(String designation, String threadClass) {
    return threads.limits(threads.find(designation).orElseThrow(), threadClass).get(0);
  }

  @ParameterizedTest
  @CsvSource({
    "1/4-20 UNC, 1A, 0.2489, 0.2367, 0.2164, 0.2108",
    "1/4-20 UNC, 2A, 0.2489, 0.2408, 0.2164, 0.2127",
    "1/4-20 UNC, 3A, 0.2500, 0.2419, 0.2175, 0.2147",
    "1/4-28 UNF, 2A, 0.2490, 0.2425, 0.2258, 0.2225",
    "5/16-18 UNC, 2A, 0.3113, 0.3026, 0.2752, 0.2712",
    "3/8-24 UNF, 2A, 0.3739, 0.3667, 0.3468, 0.3430",
    "1/2-13 UNC, 1A, 0.4985, 0.4822, 0.4485, 0.4411",
    "1/2-13 UNC, 2A, 0.4985, 0.4876, 0.4485, 0.4435",
    "3/4-10 UNC, 2A, 0.7482, 0.7353, 0.6832, 0.6773",
    "1-8 UNC, 2A, 0.9980, 0.9830, 0.9168, 0.9100",
    "#10-32 UNF, 2A, 0.1891, 0.1831, 0.1688, 0.1658"
  })
  void screws(
      String designation,
      String threadClass,
      double majorMost,
      double majorLeast,
      double effectiveMost,
      double effectiveLeast) {
    LimitsOfThread screw = limits(designation, threadClass);
    assertEquals("ASME B1.1 " + threadClass, screw.threadClass());
    assertEquals(majorMost, screw.major().most().orElseThrow().inches(), 1e-6);
    assertEquals(majorLeast, screw.major().least().orElseThrow().inches(), 1e-6);
    assertEquals(effectiveMost, screw.effective().most().orElseThrow().inches(), 1e-6);
    assertEquals(effectiveLeast, screw.effective().least().orElseThrow().inches(), 1e-6);
  }

  @ParameterizedTest
  @CsvSource({
    "1/4-20 UNC, 1B, 0.196, 0.207, 0.2248",
    "1/4-20 UNC, 2B, 0.196, 0.207, 0.2224",
    "1/4-20 UNC, 3B, 0.1960, 0.2067, 0.2211",
    "1/4-28 UNF, 2B, 0.211, 0.220, 0.2311",
    "5/16-18 UNC, 2B, 0.252, 0.265, 0.2817",
    "3/8-16 UNC, 3B, 0.3070, 0.3182, 0.3387",
    "3/8-24 UNF, 2B, 0.330, 0.340, 0.3528",
    "1/2-13 UNC, 2B, 0.417, 0.434, 0.4565",
    "1/2-13 UNC, 3B, 0.4170, 0.4284, 0.4548",
    "5/8-11 UNC, 3B, 0.5270, 0.5391, 0.5714",
    "3/4-10 UNC, 2B, 0.642, 0.663, 0.6927",
    "1-8 UNC, 3B, 0.8650, 0.8797, 0.9254",
    "1 3/4-5 UNC, 2B, 1.534, 1.568, 1.6317",
    "2-4.5 UNC, 2B, 1.759, 1.795, 1.8681",
    "#10-24 UNC, 2B, 0.145, 0.156, 0.1672",
    "#10-32 UNF, 2B, 0.156, 0.164, 0.1736",
    "#10-32 UNF, 3B, 0.1560, 0.1641, 0.1726",
    "#12-24 UNC, 2B, 0.171, 0.181, 0.1933"
  })
  void nuts(
      String designation, String threadClass, double least, double most, double effectiveMost) {
    LimitsOfThread nut = limits(designation, threadClass);
    assertEquals(least, nut.minor().least().orElseThrow().inches(), 1e-6);
    assertEquals(most, nut.minor().most().orElseThrow().inches(), 1e-6);
    assertEquals(effectiveMost, nut.effective().most().orElseThrow().inches(), 1e-6);
  }

  @Test
  void saysForWhichLengthOfEngagement() {
    assertEquals(
        List.of("for a length of engagement of one diameter"), limits("1/4-20 UNC", "2A").notes());
    assertEquals(
        List.of("for a length of engagement of nine pitches"), limits("1/4-32 UNEF", "2B").notes());
    // Of constant pitches 4, 6 and 8 engage over one diameter, the finer ones over nine pitches.
    assertEquals(
        List.of("for a length of engagement of one diameter"), limits("1 1/4-8 UN", "2A").notes());
    assertEquals(
        List.of("for a length of engagement of nine pitches"), limits("1 1/4-16 UN", "2A").notes());
    ScrewThread quarter = threads.find("1/4-20 UNC").orElseThrow();
    assertEquals(
        List.of("for a length of engagement of 0.5 in"),
        threads.limits(quarter, "2A", Length.ofInches(0.5)).get(0).notes());
    assertTrue(
        limits("15/16-12 UN", "2A").notes().get(1).startsWith("the printed effective limit"),
        limits("15/16-12 UN", "2A").notes().toString());
    ScrewThread departing = threads.find("15/16-12 UN").orElseThrow();
    assertEquals(1, threads.limits(departing, "2A", Length.ofInches(1)).get(0).notes().size());
  }
}
