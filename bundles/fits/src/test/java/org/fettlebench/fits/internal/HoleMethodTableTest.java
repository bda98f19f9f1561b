package org.fettlebench.fits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.SeatException;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class HoleMethodTableTest {
  private static final List<Table> SHIPPED =
      FixedTables.fromResources(HoleMethodTable.class, "/FETTLEBENCH/tables/hole-methods.csv")
          .all();

  private final List<String> faults = new ArrayList<>();

  @ParameterizedTest
  @CsvFileSource(resources = "/expected/chi-square-2.csv", numLinesToSkip = 1)
  void errorRadiusIsTheRootOfThePublishedQuantile(double confidence, double chiSquare) {
    HoleMethod method = method(1);

    double radius = method.errorRadiusMm(confidence);

    assertEquals(chiSquare, radius * radius, 0.0005);
    assertEquals(0.15 * radius, method(0.15).errorRadiusMm(confidence), 1e-12);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1, -0.1, 95, Double.NaN})
  void confidenceOutsideNoughtToOneIsRefused(double confidence) {
    assertThrows(SeatException.class, () -> method(0.1).errorRadiusMm(confidence));
  }

  @Test
  void shippedMethodsStandLeastCarefulFirstAndSayThatTheyHaveNoSource() {
    List<HoleMethod> methods = table(SHIPPED).methods();

    assertEquals(
        List.of(
            "centre-drill-by-eye",
            "scribe-and-dot",
            "spot-through",
            "bush",
            "jig",
            "coordinate-table"),
        methods.stream().map(HoleMethod::id).toList());
    assertTrue(methods.stream().allMatch(m -> m.source().standing() == Standing.COMMON_PRACTICE));
    assertEquals(4, table(SHIPPED).find("scribe-and-dot").orElseThrow().steps().size());
    assertEquals(
        methods,
        methods.stream()
            .sorted(Comparator.comparingDouble(HoleMethod::sigmaPerAxisMm).reversed())
            .toList());
  }

  @Test
  void aBadTableIsReportedAndTheOthersStand() throws IOException {
    String text =
        "# kind: hole-methods\n# id: club\n# title: Club\n# source: club\n"
            + "# standing: measured by the club\nid,title,steps,sigma_mm\nguess,guess,drill,0\n";
    List<Table> tables = new ArrayList<>(SHIPPED);
    tables.add(TableFile.read("club.csv", "club", new StringReader(text)));

    assertEquals(6, table(tables).methods().size());
    assertEquals(1, faults.size());
    assertTrue(faults.get(0).contains("line 7: column sigma_mm: 0 mm is not above 0"));
  }

  private HoleMethodTable table(List<Table> tables) {
    return new HoleMethodTable(
        FixedTables.of(tables), (table, fault) -> faults.add(fault.getMessage()));
  }

  private static HoleMethod method(double sigma) {
    Source source = new Source("a test", Standing.COMMON_PRACTICE);
    return new HoleMethod("test", "test", List.of("drill"), sigma, source);
  }
}
