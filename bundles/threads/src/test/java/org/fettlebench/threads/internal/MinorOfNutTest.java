package org.fettlebench.threads.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.tables.Standing;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFile;
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

  /** BS 93: +0.375 p; BS 84 medium: 0.2 p and 0.004, 0.005 or 0.007 in, each to 0.0001 in. */
  @ParameterizedTest
  @CsvSource({
    "2 BA, BS 93, 3.73, 4.03375, 1",
    "16 BA, BS 93, 0.56, 0.63125, 1",
    "1/4 x 40 ME, BS 84 medium, 0.2180, 0.2270, 25.4",
    "1/4 BSF, BS 84 medium, 0.2007, 0.2124, 25.4",
    "5/16 BSF, BS 84 medium, 0.2543, 0.2684, 25.4",
    "3/16 BSW, BS 84 medium, 0.1341, 0.1474, 25.4",
    "1/4 BSW, BS 84 medium, 0.1860, 0.2030, 25.4",
    "1/4-20 UNC, ASME B1.1 2B, 0.196, 0.207, 25.4",
    "#4-40 UNC, ASME B1.1 2B, 0.0849, 0.0939, 25.4",
    "G1/8, ISO 228-1, 8.566, 8.848, 1"
  })
  void ofTheUsualClass(String designation, String name, double least, double most, double unitMm) {
    DiameterLimits limits = limits(designation);
    assertEquals(name, limits.threadClass());
    assertEquals(least * unitMm, limits.least().millimetres(), 5e-4);
    assertEquals(most * unitMm, limits.most().millimetres(), 5e-4);
  }

  /** ISO 965-1 has no grade 6 at this pitch: the coarsest there is, 4, is +0.038 (MHB27 p1794). */
  @Test
  void takesTheCoarsestGradeWhereThereIsNoSix() {
    DiameterLimits limits = limits("M1 x 0.2");
    assertEquals(0.783, limits.least().millimetres(), 1e-9);
    assertEquals(0.821, limits.most().millimetres(), 1e-9);
  }

  /** A club's own table of tolerances by pitch: 0.1 mm above the basic size at 0.5 mm. */
  @Test
  void followsATableThatASeriesNames() throws IOException {
    String head = "# title: ours\n# source: us\n# standing: measured by the club\n";
    List<Table> tables = new ArrayList<>(OurThreads.TABLES.all());
    for (String text :
        List.of(
            "# kind: thread-limits\n# id: OURS\n"
                + head
                + "class,pitch_mm,tolerance_mm\nwide,0.4,0.2\nfit,0.5,0.1\n",
            "# kind: thread-series\n# id: OURS\n"
                + head
                + "# form: iso\n# designation: {size} OURS\n# limits: OURS\n"
                + "size,major_mm,pitch_mm\n7,7,0.5\n8,8,0.7\n")) {
      tables.add(TableFile.read("ours.csv", "org.example.club", new StringReader(text)));
    }
    ThreadRegistry club =
        new ThreadRegistry(
            FixedTables.of(tables),
            (table, fault) -> {
              throw new AssertionError(table.id(), fault);
            });
    ScrewThread seven = club.find("7 OURS").orElseThrow();
    DiameterLimits limits = club.minorOfNut(seven).orElseThrow();
    assertEquals("OURS fit", limits.threadClass());
    assertEquals(seven.minorInternal(), limits.least());
    assertEquals(Length.ofMillimetres(0.1), limits.most().minus(limits.least()));
    assertEquals(Optional.empty(), club.minorOfNut(club.find("8 OURS").orElseThrow()));
    assertEquals(List.of(), club.classes(seven));
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
