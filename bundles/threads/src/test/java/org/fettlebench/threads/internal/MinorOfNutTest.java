package org.fettlebench.threads.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Standing;
import org.fettlebench.threads.DiameterLimits;
import org.fettlebench.threads.ScrewThread;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the hole for a tap is held against; printed rows are in the tests of published limits. */
@TestInstance(Lifecycle.PER_CLASS)
class MinorOfNutTest {
  private final ThreadRegistry threads = OurThreads.fresh();

  private DiameterLimits limits(String designation) {
    ScrewThread thread = threads.find(designation).orElseThrow();
    return threads.minorOfNut(thread).orElseThrow();
  }

  /** BS 93: +0.375 p; BS 84: 0.2 p and 0.004, 0.005 or 0.007 in; worked by hand. */
  @ParameterizedTest
  @CsvSource({
    "2 BA, 3.73, 4.03375",
    "16 BA, 0.56, 0.63125",
    "1/4 x 40 ME, 5.536785, 5.765385",
    "1/4 BSF, 5.098900, 5.395884",
    "5/16 BSF, 6.458927, 6.816836",
    "3/16 BSW, 3.407141, 3.745808",
    "1/4 BSW, 4.723569, 5.155369"
  })
  void britishStandards(String designation, double leastMm, double mostMm) {
    assertEquals(leastMm, limits(designation).least().millimetres(), 2e-6);
    assertEquals(mostMm, limits(designation).most().millimetres(), 2e-6);
  }

  @Test
  void saysWhatRestsOnMemory() {
    assertEquals(Standing.FROM_MEMORY, limits("1/4 BSW").source().standing());
    assertEquals(Standing.PUBLISHED, limits("M3").source().standing());
  }

  @Test
  void allowsTheLimitsThemselves() {
    DiameterLimits limits = limits("M6");
    assertTrue(limits.allow(limits.least()) && limits.allow(limits.most()));
    assertEquals(false, limits.allow(limits.most().plus(Length.ofNanometres(1))));
    assertEquals(false, limits.allow(limits.least().minus(Length.ofNanometres(1))));
  }

  @Test
  void knowsNoLimitsWhereTheRuleHasNone() {
    ScrewThread m6 = threads.find("M6").orElseThrow();
    ScrewThread odd =
        new ScrewThread(
            "M",
            "M6 odd",
            "M6 odd",
            m6.form(),
            m6.major(),
            Length.ofNanometres(900_000),
            Optional.empty(),
            m6.effective(),
            m6.minorInternal(),
            m6.minorExternal(),
            m6.source());
    assertEquals(Optional.empty(), threads.minorOfNut(odd));
  }
}
