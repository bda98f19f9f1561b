package org.fettlebench.holes.internal.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import org.fettlebench.holes.patterns.EdgeRule;
import org.fettlebench.holes.patterns.EdgeRules.Listed;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.LengthReader;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EdgeRuleTablesTest {
  private static final List<Table> SHIPPED =
      FixedTables.fromResources(
              EdgeRuleTables.class,
              "/FETTLEBENCH/tables/edge-distances.csv",
              "/FETTLEBENCH/tables/edge-distance-aisc-in.csv",
              "/FETTLEBENCH/tables/edge-distance-aisc-mm.csv")
          .all();

  private final List<String> faults = new ArrayList<>();

  private EdgeRuleTables of(List<Table> tables) {
    return new EdgeRuleTables(
        FixedTables.of(tables), (table, fault) -> faults.add(fault.getMessage()));
  }

  private EdgeRule rule(String id) {
    return of(SHIPPED).rules().stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/expected/edge-distance-aisc.csv", numLinesToSkip = 1)
  void listsWhatTheStandardPrints(String source, String bolt, String units, String least) {
    double fastener = millimetres(bolt, units);
    Listed row =
        of(SHIPPED).listed().stream()
            .filter(each -> Math.abs(each.fastenerMm() - fastener) < 1e-6)
            .findFirst()
            .orElseThrow();
    assertEquals(millimetres(least, units), row.leastMm(), 1e-6);
    assertTrue(row.source().citation().contains("AISC"), source);
  }

  private static double millimetres(String size, String units) {
    String whole = size.replace('-', ' ');
    Length length = LengthReader.read(whole + " " + units);
    return length.millimetres();
  }

  /** The worked example of the rule's page: 4-40 (0.112 in) wants 0.131 in. */
  @Test
  void aTappedHoleWantsThreePitchesAndHalfTheMajor() {
    assertEquals(0.131, rule("tapped").leastMm(0.112 * 25.4, 1, 25.4 / 40) / 25.4, 0.0005);
  }

  /** Each rule as its source words it, for a fastener of 4 mm in a hole of 5 mm, pitch 0.7 mm. */
  @ParameterizedTest
  @CsvSource({
    "tapped, 3 pitches and half the major diameter, 4.1",
    "tapped-usual, 1.5 bolt diameters, 6",
    "tapped-heavy, 2 d if heavily loaded, 8",
    "structural-never-below, never below 1 d, 4",
    "structural-large, 1.25 d over 1 1/4 in, 5",
    "aluminium, 2.5 bolt diameters centre to edge, 10",
    "steel-tension, 1 bolt diameter centre to edge, 4",
    "gb-pitch, pitch 3 d0, 15",
    "gb-end, end 2 d0, 10",
    "gb-edge, edge 1.2 d0 bearing, 6",
    "gb-edge-preloaded, 1.5 d0 preloaded, 7.5",
    "is-machined, machine-cut edge 1.5 d0, 7.5",
    "is-hand, hand-cut edge 1.7 d0, 8.5",
    "is-pitch, pitch 2.5 d, 10",
  })
  void rulesAreThoseOfTheirSources(String id, String wording, double leastMm) {
    assertEquals(leastMm, rule(id).leastMm(4, 5, 0.7), 1e-12, wording);
  }

  @Test
  void holeAndFastenerAreNotMixedUp() {
    assertEquals(3 * 5, rule("gb-pitch").leastMm(4, 5, 1), 1e-12);
    assertEquals(2.5 * 4, rule("is-pitch").leastMm(4, 5, 1), 1e-12);
    assertEquals(EdgeRule.To.NEXT_HOLE, rule("gb-pitch").to());
    assertEquals(EdgeRule.To.END, rule("gb-end").to());
    assertEquals("edge", rule("tapped").to().word());
  }

  @Test
  void theRuleForLargeBoltsHoldsForThemOnly() {
    EdgeRule large = rule("structural-large");
    assertFalse(large.holdsFor(1.25 * 25.4));
    assertTrue(large.holdsFor(1.25 * 25.4 + 0.001));
    assertTrue(rule("tapped").holdsFor(1));
    assertEquals(1.25 * 40, large.leastMm(40, 42, 4), 1e-12);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a,a,edge,,,",
        "a,a,edge,-1,2,",
        "a,a,sideways,1,,",
        "a,a,edge,x,,",
        "a,,edge,1,,"
      })
  void aBadTableIsReportedAndTheOthersStand(String row) throws IOException {
    String text =
        "# kind: edge-distances\n# id: club\n# title: Club\n# source: club\n"
            + "# standing: measured by the club\n"
            + "id,what,to,fastener_diameters,hole_diameters,thread_pitches\n"
            + row
            + "\n";
    List<Table> tables = new ArrayList<>(SHIPPED);
    tables.add(TableFile.read("club.csv", "club", new StringReader(text)));
    assertEquals(14, of(tables).rules().size());
    assertEquals(1, faults.size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"0,1", "1,0", "1,"})
  void aBadSizeIsReported(String row) throws IOException {
    String text =
        "# kind: edge-distance-sizes\n# id: club\n# title: Club\n# source: club\n"
            + "# standing: measured by the club\nfastener_mm,least_mm\n"
            + row
            + "\n";
    List<Table> tables = List.of(TableFile.read("club.csv", "club", new StringReader(text)));
    assertEquals(0, of(tables).listed().size());
    assertEquals(1, faults.size());
  }

  @Test
  void refusesSizesThatCannotBe() {
    for (double bad : new double[] {0, -1, Double.NaN}) {
      assertThrows(IllegalArgumentException.class, () -> rule("tapped").leastMm(bad, 1, 1));
      assertThrows(IllegalArgumentException.class, () -> rule("tapped").leastMm(1, bad, 1));
    }
    assertThrows(IllegalArgumentException.class, () -> rule("tapped").leastMm(1, 1, -1));
  }
}
