package org.fettlebench.threads.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Standing;
import org.fettlebench.threads.DiameterLimits;
import org.fettlebench.threads.ScrewThread;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Limits of the nut's minor diameter against printed ones. */
class PublishedLimitsTest {
  private static DiameterLimits limits(String designation) {
    ScrewThread thread = OurThreads.THREADS.find(designation).orElseThrow();
    return OurThreads.THREADS.minorOfNut(thread).orElseThrow();
  }

  static List<Published> metric() throws IOException {
    return Published.rows("metric-limits.csv").stream()
        .filter(row -> row.has("int_minor_max_mm"))
        // No grade 6 exists for these pitches, and the M1.4 row belongs to a finer pitch.
        .filter(row -> !row.wrong("off: TD1") && !row.wrong("off: D1min"))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("metric")
  void metric6H(Published row) {
    DiameterLimits limits = limits(row.cell("designation"));
    assertEquals("ISO 965-1 6H", limits.threadClass());
    row.checkWithin("int_minor_min_mm", limits.least().millimetres(), 0.001);
    row.checkWithin("int_minor_max_mm", limits.most().millimetres(), 0.001);
  }

  static List<Published> unified() throws IOException {
    return Published.rows("unified-limits.csv").stream()
        .filter(row -> row.has("int_minor_max_in"))
        .filter(row -> row.cell("class").endsWith("2B"))
        // UN and UNS sizes are in no series here.
        .filter(row -> row.cell("series").matches("UNC|UNF|UNEF"))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("unified")
  void unified2B(Published row) {
    DiameterLimits limits =
        limits(row.cell("size") + "-" + row.cell("tpi") + " " + row.cell("series"));
    row.checkWithin("int_minor_min_in", limits.least().inches(), rounding(row, "int_minor_min_in"));
    row.checkWithin("int_minor_max_in", limits.most().inches(), rounding(row, "int_minor_max_in"));
  }

  /** From #6 up the standard prints to 0.001 in; some lists put a nought behind. */
  private static double rounding(Published row, String column) {
    return row.cell(column).matches("0\\.\\d{3}0?") ? 5.5e-4 : 5.5e-5;
  }

  static List<Published> pipe() throws IOException {
    return Published.rows("bsp-g-iso228.csv");
  }

  @ParameterizedTest
  @MethodSource("pipe")
  void parallelPipe(Published row) {
    DiameterLimits limits = limits("G " + row.cell("size"));
    row.checkWithin("TD1_mm", limits.most().minus(limits.least()).millimetres(), 5e-4);
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
    ScrewThread m6 = OurThreads.THREADS.find("M6").orElseThrow();
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
    assertEquals(Optional.empty(), OurThreads.THREADS.minorOfNut(odd));
  }
}
