package org.fettlebench.tooling.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.tables.Standing;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFile;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.drilled.DrilledHole;
import org.fettlebench.tooling.drilled.ReamingChoice;
import org.fettlebench.tooling.internal.drilled.DrilledHoleService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Tables of a club about drilled holes go before the suite's; faulty ones are told. */
@ExtendWith(OurTooling.Fresh.class)
class DrilledHoleTablesTest {
  private final List<String> faults = new ArrayList<>();

  private DrilledHoleService with(String kind, String rows) throws IOException {
    String head =
        "# kind: %s\n# id: club\n# title: t\n# source: s\n# standing: measured by the club\n"
            .formatted(kind);
    List<Table> tables = new ArrayList<>(OurTooling.TABLES.all());
    tables.add(TableFile.read("club.csv", "org.example.club", new StringReader(head + rows)));
    return new DrilledHoleService(
        FixedTables.of(tables), (table, fault) -> faults.add(fault.getMessage()));
  }

  private static DrillSize mm(String size) {
    return OurTooling.mm(size);
  }

  @Test
  void aClubsToleranceGoesFirstWhereItReaches() throws IOException {
    DrilledHoleService holes =
        with("drill-tolerances", "from_mm,to_mm,above_mm,below_mm\n1,2,0.05,0.01\n3,4,0.08,0.02\n");
    DrilledHole.Tolerance own = holes.expected(mm("1.5")).tolerance().orElseThrow();
    assertEquals(0.05, own.above().millimetres(), 1e-9);
    assertEquals(0.01, own.below().millimetres(), 1e-9);
    assertEquals(Standing.MEASURED, own.source().standing());
    // Between its rows the next row's, at their ends their own; beyond them the suite's.
    assertEquals(0.08, above(holes, "2.5"));
    assertEquals(0.05, above(holes, "2"));
    assertEquals(0.08, above(holes, "3"));
    assertEquals(0.006 * 25.4, above(holes, "8"), 1e-9);
    assertEquals(0.004 * 25.4, above(holes, "0.9"), 1e-9);
  }

  private static double above(DrilledHoleService holes, String drill) {
    return holes.expected(mm(drill)).tolerance().orElseThrow().above().millimetres();
  }

  @Test
  void aClubsUndersizesGoFirst() throws IOException {
    DrilledHoleService holes =
        with(
            "reaming",
            "over_mm,to_mm,materials,undersize_least_mm,undersize_most_mm,drill_oversize_mm\n"
                + "5,8,brass bronze,0.1,0.12,0.02\n");
    ReamingChoice brass =
        holes
            .beforeReaming(
                Length.ofMillimetres(8),
                Optional.of(OurTooling.material("brass")),
                List.of(mm("7.86"), mm("7.88"), mm("7.87"), mm("7.89")))
            .orElseThrow();
    // 8 - 0.12 - 0.02 to 8 - 0.1 - 0.02, both ends within, the middle first.
    assertEquals(List.of(mm("7.87"), mm("7.86"), mm("7.88")), brass.drills());
    ReamingChoice steel =
        holes
            .beforeReaming(
                Length.ofMillimetres(8), Optional.of(OurTooling.material("mild steel")), List.of())
            .orElseThrow();
    assertEquals(0.2, steel.undersizeLeast().millimetres(), 1e-9);
    assertThrows(
        MeasureException.class,
        () -> holes.beforeReaming(Length.ZERO, Optional.empty(), List.of()));
  }

  /** 0.2 mm for the reamer and 0.05 mm for the drill leave nothing of 0.25 mm. */
  @Test
  void refusesASizeOfWhichNothingWouldBeLeft() {
    MeasureException refused =
        assertThrows(
            MeasureException.class,
            () ->
                OurTooling.drilled()
                    .beforeReaming(Length.ofMillimetres(0.25), Optional.empty(), List.of()));
    assertTrue(refused.getMessage().startsWith("reamed size 0.25 mm is too small"));
    assertTrue(
        OurTooling.drilled()
            .beforeReaming(Length.ofMillimetres(0.251), Optional.empty(), List.of())
            .isPresent());
  }

  @Test
  void tellsEveryFaultOfATable() throws IOException {
    with("drill-tolerances", "from_mm,to_mm,above_mm,below_mm\n2,1,0.05,0.01\n1,,0.1,0.1\n")
        .expected(mm("1.5"));
    assertEquals(1, faults.size());
    assertTrue(faults.get(0).contains("line 7: from 2 mm is above to 1 mm"), faults.get(0));
    assertTrue(faults.get(0).contains("line 8: to_mm or to_in is missing"), faults.get(0));
    faults.clear();
    with(
            "reaming",
            "over_mm,to_mm,materials,undersize_least_mm,undersize_most_mm,drill_oversize_mm\n"
                + ",5,,0.3,0.2,0.05\n,5,,0,0.2,0.05\n")
        .beforeReaming(Length.ofMillimetres(4), Optional.empty(), List.of());
    assertTrue(
        faults.get(0).contains("line 7: least undersize 0.3 mm is above the most, 0.2 mm"),
        faults.get(0));
    assertTrue(faults.get(0).contains("line 8: undersize_least 0 mm"), faults.get(0));
  }

  /** An oversize that has no least and most still has its mean; between rows in proportion. */
  @Test
  void oversizeWithAMeanAlone() throws IOException {
    DrilledHoleService holes =
        with("drill-oversize", "diameter_mm,oversize_mean_mm\n1,0.02\n3,0.06\n");
    DrilledHole.Oversize half = holes.expected(mm("2")).oversize().orElseThrow();
    assertEquals(0.04, half.mean().millimetres(), 1e-9);
    assertEquals(Optional.empty(), half.least());
    assertEquals(Optional.empty(), half.most());
    DrilledHole.Oversize shipped = holes.expected(mm("4.7625")).oversize().orElseThrow();
    // 3/16 in lies halfway between 1/8 and 1/4 in: 0.00175, 0.0035 and 0.0055 in.
    assertEquals(0.00175, shipped.least().orElseThrow().inches(), 1e-7);
    assertEquals(0.0035, shipped.mean().inches(), 1e-7);
    assertEquals(0.0055, shipped.most().orElseThrow().inches(), 1e-7);
    assertEquals(Optional.empty(), holes.expected(mm("0.9")).oversize());
    assertEquals(Optional.empty(), holes.expected(mm("25.5")).oversize());
  }
}
