package org.fettlebench.fits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.fettlebench.fits.ErrorLaw;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.fits.PositionLaw;
import org.fettlebench.fits.SeatException;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
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

  /**
   * What a shop guide prints for holes marked out, punched and drilled by hand is a zone of 0.080
   * in in diameter (engineersedge.com, drill mechanical tolerances), and for jig boring a position
   * within 0.003 mm (fobproto.com, drilling and reaming tolerances): careful work lies between.
   */
  @Test
  void shippedFiguresLieBetweenThePublishedExtremes() {
    for (HoleMethod method : table(SHIPPED).methods()) {
      double zone = 2 * method.errorRadiusMm(0.95);
      assertTrue(zone < 0.080 * 25.4 && zone > 2 * 0.003, method.id() + " " + zone);
    }
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

  @Test
  void stepsMayHaveLawsAndStandingsOfTheirOwn() throws IOException {
    HoleMethod method =
        club("id,title,steps,laws_mm,standings,sigma_mm\n"
                + "mill,club mill,set the vice | find edges | drill,"
                + "none | bounded 0.03 x 0.06 | normal 0.02,"
                + "\"from memory | published | measured by the club\",0.03\n")
            .find("mill")
            .orElseThrow();

    assertEquals(List.of(), faults);
    assertEquals(
        List.of(new ErrorLaw.Bounded(0.03, 0.06), ErrorLaw.Normal.round(0.02)),
        method.law().parts().stream().map(PositionLaw.Part::law).toList());
    assertEquals("find edges", method.law().parts().get(0).cause());
    assertEquals(Standing.PUBLISHED, method.law().parts().get(0).source().standing());
    assertEquals(Standing.MEASURED, method.law().parts().get(1).source().standing());
    // Variances add: (0.03^2 + 0.06^2) / 6 + 0.02^2 = 0.00115.
    assertEquals(Math.sqrt(0.00115), method.sigmaPerAxisMm(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "normal 0.1 | none; ; 2 parts for 1 steps",
        "guess 0.1; ; \"guess 0.1\" is no law",
        "normal -0.1; ; \"normal -0.1\" is no law",
        "normal 1.2.3; ; \"1.2.3\" in \"normal 1.2.3\" is no number",
        "circle 0.1 x 0.2; ; \"circle 0.1 x 0.2\" is no law",
        "bounded 0; ; bound 0 mm is no error",
        "none; ; no step has a law of error",
        "normal 0.1; 0.12; 0.12 mm is not what the laws add up to, 0.1000 mm",
      })
  void aLawThatCannotBeIsReportedWithItsLine(String laws, String sigma, String wrong)
      throws IOException {
    club("id,title,steps,laws_mm,sigma_mm\nbad,bad,drill," + laws + "," + or(sigma) + "\n")
        .methods();

    assertEquals(1, faults.size());
    assertTrue(faults.get(0).contains("line 7: column"), faults.get(0));
    assertTrue(faults.get(0).contains(wrong), faults.get(0));
  }

  private static String or(String text) {
    return text == null ? "" : text;
  }

  private HoleMethodTable club(String rows) throws IOException {
    String head =
        "# kind: hole-methods\n# id: club\n# title: Club\n# source: club\n"
            + "# standing: measured by the club\n";
    return table(List.of(TableFile.read("club.csv", "club", new StringReader(head + rows))));
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
