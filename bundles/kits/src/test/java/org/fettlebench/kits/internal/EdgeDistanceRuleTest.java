package org.fettlebench.kits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fettlebench.holes.internal.chance.ChanceService;
import org.fettlebench.holes.internal.chance.EstimateService;
import org.fettlebench.holes.internal.patterns.EdgeRuleTables;
import org.fettlebench.holes.patterns.EdgeRules;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.Holdings;
import org.fettlebench.kits.Kit;
import org.fettlebench.kits.KitReport;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * AISC A360-16 Table J3.4: a bolt never nearer to an edge than its own diameter without approval. 2
 * BA is 4.7 mm (BS 93).
 */
class EdgeDistanceRuleTest {
  private static Kit kit(double fromEdge) {
    return Bench.FILES.readKit(
        "a.kit.toml",
        String.format(
            Locale.ROOT,
            """
            [kit]
            name = "edge"
            unit = "mm"
            [[seat]]
            name = "lug"
            outline = [[0, 0], [30, 0], [30, 30], [0, 30]]
            centre = [%.3f, 15]
            [[joint]]
            name = "gland"
            count = 1
            fastener = "2 BA hexagon x 1/2 in"
            clearance = { fit = "medium" }
            seat = "lug"
            method = "centre-drill-by-eye"
            """,
            fromEdge));
  }

  private static Optional<Finding> found(KitReport report) {
    return report.joints().get(0).findings().stream()
        .filter(finding -> finding.rule().equals(EdgeDistanceRule.NAME))
        .findFirst();
  }

  private static Optional<Finding> found(double fromEdge) {
    return found(
        Bench.check((contribution, doing, cause) -> {}).check(kit(fromEdge), Holdings.none()));
  }

  @ParameterizedTest
  @CsvSource({"4.700, false", "4.699, true", "3.000, true", "15, false"})
  void cautionsBelowOneDiameterOnly(double fromEdge, boolean told) {
    assertEquals(told, found(fromEdge).isPresent());
  }

  @Test
  void tellsDistanceDiametersAndSource() {
    // By hand: 3.0 / 4.7 is 0.638.
    assertEquals(
        "The hole's centre is 3.00 mm (0.118 in) from the edge, only 0.64 diameters (AISC A360-16"
            + " Table J3.4, for structural bolts, never to be less without approval).",
        found(3).orElseThrow().sentence());
  }

  @Test
  void goesByTheTableAndStandsAsideWithoutOne() throws IOException {
    String head =
        "# kind: edge-distances\n# id: club\n# title: t\n# source: a club\n# standing: from memory\n";
    String columns =
        "id,what,to,fastener_diameters,hole_diameters,thread_pitches,above_in,source,standing\n";
    EdgeRules strict =
        rules(head + columns + "structural-never-below,any bolt,edge,2,,,,a club,\n");
    EdgeRules none = rules(head + columns + "other,any bolt,edge,2,,,,a club,\n");
    assertEquals(true, found(with(strict).check(kit(9.3), Holdings.none())).isPresent());
    assertEquals(false, found(with(strict).check(kit(9.5), Holdings.none())).isPresent());
    assertEquals(false, found(with(none).check(kit(3), Holdings.none())).isPresent());
  }

  private static EdgeRules rules(String table) throws IOException {
    Table read = TableFile.read("club.csv", "org.example", new StringReader(table));
    return new EdgeRuleTables(
        FixedTables.of(List.of(read)),
        (faulty, fault) -> {
          throw fault;
        });
  }

  private static KitCheckService with(EdgeRules rules) {
    KitCheckService check =
        new KitCheckService(
            Bench.TRADE.threads(),
            Bench.TRADE.heads(),
            Bench.TRADE.drills(),
            Bench.TRADE.holes(),
            Bench.TRADE.methods(),
            Bench.TRADE.seats(),
            new ChanceService(),
            new EstimateService(),
            (contribution, doing, cause) -> {
              throw new AssertionError(doing, cause);
            });
    check.addRule(new EdgeDistanceRule(rules));
    return check;
  }
}
