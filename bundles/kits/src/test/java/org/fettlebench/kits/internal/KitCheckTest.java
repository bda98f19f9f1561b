package org.fettlebench.kits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.club.Loan;
import org.fettlebench.club.StockLine;
import org.fettlebench.fits.Verdict;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.Finding.Weight;
import org.fettlebench.kits.Holdings;
import org.fettlebench.kits.JointCase;
import org.fettlebench.kits.JointReport;
import org.fettlebench.kits.JointReport.Fetch;
import org.fettlebench.kits.JointReport.Supply;
import org.fettlebench.kits.JointRule;
import org.fettlebench.kits.Kit;
import org.fettlebench.kits.KitReport;
import org.junit.jupiter.api.Test;

/** Cases worked by hand. */
class KitCheckTest {
  private static final String HEAD = "[kit]\nname = \"Trial\"\n";

  /** A boss 3/8 in square, the hole in its middle. */
  private static final String BOSS =
      """
      [[seat]]
      name = "boss"
      outline = [["0 in", "0 in"], ["3/8", "0 in"], ["3/8", "3/8"], ["0 in", "3/8"]]
      centre = ["3/16", "3/16"]
      """;

  private static final String STOCK =
      "kind,thread,style,diameter,length,material,place,condition,quantity\n";

  private static String joint(String name, String rest) {
    return "[[joint]]\nname = \"" + name + "\"\n" + rest + "\n";
  }

  private static String plain(String name, int count, String fastener) {
    return joint(
        name,
        "count = " + count + "\nfastener = \"" + fastener + "\"\nclearance = { fit = \"medium\" }");
  }

  private static String onBoss(String name, int count, String fastener, String method) {
    return plain(name, count, fastener) + "seat = \"boss\"\nmethod = \"" + method + "\"\n";
  }

  private static JointReport only(KitReport report) {
    assertEquals(1, report.joints().size());
    return report.joints().get(0);
  }

  private static Finding finding(JointReport joint, String rule) {
    return joint.findings().stream()
        .filter(each -> each.rule().equals(rule))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no finding " + rule + " in " + joint.findings()));
  }

  @Test
  void twoBaOnAThreeEighthsBossIsTightByLessThanAThou() {
    // Across flats 0.324 in (BS 57, from memory): across corners 0.324 / cos 30 = 0.37412 in; half
    // of what 0.375 in leaves is 0.00044 in = 0.0112 mm.
    JointReport joint =
        only(
            Bench.check(
                HEAD + BOSS + onBoss("gland", 2, "2 BA hexagon x 1/2 in", "centre-drill-by-eye"),
                ""));
    assertEquals(Optional.of(Verdict.TIGHT), joint.verdict());
    assertEquals(0.0112, joint.seat().orElseThrow().allowanceAtIntendedMm(), 0.0005);
    Finding seat = finding(joint, "seat");
    assertEquals(Weight.CAUTION, seat.weight());
    assertEquals("from memory", seat.standing());
    assertTrue(seat.sentence().contains("2 BA hexagon is tight"), seat.sentence());
    assertTrue(seat.sentence().contains("0.4 thou"), seat.sentence());
    assertFalse(joint.cures().isEmpty());
  }

  @Test
  void theSmallerHexagonFromStockIsBetter() {
    String stock =
        STOCK
            + "fastener,2 BA,hexagon,,1/2,steel,Drawer 1,good,9\n"
            + "fastener,2 BA,small-hexagon,,1/2,steel,Drawer 2,good,4\n";
    JointReport joint =
        only(
            Bench.check(
                HEAD
                    + BOSS
                    + onBoss("gland", 4, "2 BA hexagon x 1/2 in steel", "centre-drill-by-eye"),
                stock));
    assertEquals(Supply.BETTER_FROM_STOCK, joint.supply());
    JointReport.Substitute first = joint.substitutes().get(0);
    assertEquals("small-hexagon", first.fastener().style());
    // Across flats 0.282 in: (9.525 - 7.1628 / cos 30) / 2 = 0.627 mm, above the 0.490 expected.
    assertEquals(0.627, first.after().orElseThrow().allowanceAtIntendedMm(), 0.0005);
    assertEquals(Verdict.CLEARS, first.after().orElseThrow().verdict());
    Fetch fetch = joint.fetch().get(0);
    assertEquals("Drawer 2", fetch.from());
    assertEquals(4, fetch.count());
  }

  @Test
  void tooFewOfTheSmallerHexagonAreNotBetter() {
    String stock =
        STOCK
            + "fastener,2 BA,hexagon,,1/2,steel,Drawer 1,good,9\n"
            + "fastener,2 BA,small-hexagon,,1/2,steel,Drawer 2,good,3\n";
    JointReport joint =
        only(
            Bench.check(
                HEAD
                    + BOSS
                    + onBoss("gland", 4, "2 BA hexagon x 1/2 in steel", "centre-drill-by-eye"),
                stock));
    assertEquals(Supply.COMPLETE, joint.supply());
    assertEquals(3, joint.substitutes().get(0).present());
  }

  @Test
  void aDrawerServesTwoJointsOnlyOnce() {
    String stock = STOCK + "fastener,2 BA,hexagon,,1/2,steel,Drawer 1,good,5\n";
    KitReport report =
        Bench.check(
            HEAD
                + plain("first", 3, "2 BA hexagon x 1/2 in steel")
                + plain("second", 3, "2 BA hexagon x 1/2 in steel"),
            stock);
    assertEquals(Supply.COMPLETE, report.joints().get(0).supply());
    assertEquals(Supply.SHORT, report.joints().get(1).supply());
    KitReport.Shortage shortage = report.shortages().get(0);
    assertEquals(6, shortage.needed());
    assertEquals(5, shortage.present());
    assertEquals(List.of("second"), shortage.joints());
  }

  @Test
  void theBagComesBeforeTheDrawerAndWhatWasCountedCounts() {
    String bag = "[[bag]]\nfastener = \"2 BA hexagon x 1/2 in steel\"\nlisted = 4\ncounted = 3\n";
    JointReport joint =
        only(
            Bench.check(
                HEAD + plain("gland", 4, "2 BA hexagon x 1/2 in steel") + bag,
                STOCK + "fastener,2 BA,hexagon,,1/2,steel,Drawer 1,good,5\n"));
    assertEquals(Supply.COMPLETE, joint.supply());
    assertEquals(
        List.of(Fetch.State.IN_BAG, Fetch.State.IN),
        joint.fetch().stream().limit(2).map(Fetch::state).toList());
    assertEquals(List.of(3, 1), joint.fetch().stream().limit(2).map(Fetch::count).toList());
    assertTrue(finding(joint, "bag").sentence().contains("promises 4, 3 were counted"));
  }

  @Test
  void wornOnesNeverCount() {
    JointReport joint =
        only(
            Bench.check(
                HEAD + plain("gland", 2, "2 BA hexagon x 1/2 in steel"),
                STOCK + "fastener,2 BA,hexagon,,1/2,steel,Drawer 1,worn,5\n"));
    assertEquals(Supply.SHORT, joint.supply());
    assertEquals(Fetch.State.WORN, joint.fetch().get(0).state());
  }

  @Test
  void whatIsWrongInTheBagIsWrong() {
    String bag = "[[bag]]\nfastener = \"0 BA hexagon x 1/2 in steel\"\nlisted = 2\n";
    JointReport joint =
        only(
            Bench.check(
                HEAD + BOSS + onBoss("gland", 2, "0 BA hexagon x 1/2 in steel", "jig") + bag, ""));
    assertEquals(Optional.of(Verdict.FOULS), joint.verdict());
    assertEquals(Supply.WRONG, joint.supply());
    assertTrue(joint.fails());
  }

  @Test
  void aTapOnLoanSaysWithWhom() {
    String kit =
        HEAD
            + joint(
                "plug",
                "count = 1\nfastener = \"2 BA stud x 1/2 in\"\n"
                    + "tapped = { material = \"brass\", full-thread = \"8 mm\" }");
    Holdings held =
        Bench.holdings(
            STOCK
                + "tap,2 BA,taper,,,,Box,good,1\n"
                + "tap,2 BA,second,,,,Box,good,1\n"
                + "drill,,,4.0 mm,,,Stand,good,1\n");
    List<StockLine> lines = new ArrayList<>(held.lines());
    StockLine tap = lines.get(1);
    lines.set(
        1,
        new StockLine(
            tap.id(),
            tap.goods(),
            tap.place(),
            tap.condition(),
            1,
            List.of(new Loan("Member 12", 1, Optional.empty())),
            Optional.empty()));
    KitReport report =
        Bench.check((c, d, t) -> {}).check(Bench.FILES.readKit("a", kit), new Holdings(lines));
    List<Fetch> taps =
        only(report).fetch().stream().filter(fetch -> fetch.role() == Fetch.Role.TAP).toList();
    assertEquals(
        List.of(Fetch.State.IN, Fetch.State.OUT), taps.stream().map(Fetch::state).toList());
    assertEquals("with Member 12", taps.get(1).from());
    assertTrue(report.shortages().stream().anyMatch(each -> each.what().equals("2 BA second tap")));
    Fetch drill =
        only(report).fetch().stream()
            .filter(fetch -> fetch.role() == Fetch.Role.TAPPING_DRILL)
            .findFirst()
            .orElseThrow();
    // 100 (4.7 - 4.0) / (2 x 0.6 x 0.81) = 72 %.
    assertEquals("72 % of thread", drill.figures());
    assertEquals(Fetch.State.IN, drill.state());
  }

  @Test
  void aBlindHoleThatBreaksThroughIsAFault() {
    JointReport joint =
        only(
            Bench.check(
                HEAD
                    + joint(
                        "plug",
                        "count = 1\nfastener = \"2 BA stud x 1/2 in\"\ntapped = { material ="
                            + " \"brass\", full-thread = \"8 mm\", metal = \"9 mm\", lead ="
                            + " \"bottoming\" }"),
                ""));
    // The full thread alone leaves 1 mm; one pitch of chip room and the point are more than that.
    assertEquals(Weight.FAULT, finding(joint, "blind hole").weight());
    assertTrue(joint.fails());
  }

  @Test
  void aScrewThatBottomsIsAFaultAndOneThatHardlyReachesACaution() {
    String tapped =
        "clearance = { fit = \"medium\", depth = \"3 mm\" }\n"
            + "tapped = { material = \"brass\", full-thread = \"6 mm\", metal = \"20 mm\", lead ="
            + " \"second\" }";
    KitReport report =
        Bench.check(
            HEAD
                + joint("long", "count = 1\nfastener = \"M4 socket-cap x 12 mm\"\n" + tapped)
                + joint("right", "count = 1\nfastener = \"M4 socket-cap x 8 mm\"\n" + tapped)
                + joint("brief", "count = 1\nfastener = \"M4 socket-cap x 6 mm\"\n" + tapped)
                + joint("none", "count = 1\nfastener = \"M4 socket-cap x 3 mm\"\n" + tapped),
            "");
    // Reach 9, 5, 3 and 0 mm into 6 mm of full thread; one diameter is 4 mm.
    assertEquals(
        List.of(Weight.FAULT, Weight.NOTE, Weight.CAUTION, Weight.FAULT),
        report.joints().stream().map(each -> finding(each, "length").weight()).toList());
  }

  @Test
  void holesAlreadyDrilledAreJudged() {
    KitReport report =
        Bench.check(
            HEAD
                + joint(
                    "small",
                    "count = 1\nfastener = \"M4 socket-cap x 8 mm\"\n"
                        + "clearance = { fit = \"medium\", drilled = \"3.9 mm\" }")
                + joint(
                    "wide",
                    "count = 1\nfastener = \"M4 socket-cap x 8 mm\"\n"
                        + "tapped = { material = \"brass\", full-thread = \"6 mm\", drilled ="
                        + " \"3.8 mm\" }"),
            "");
    assertEquals(Weight.FAULT, finding(report.joints().get(0), "clearance").weight());
    // 100 (4 - 3.8) / (2 x 0.6495 x 0.7) = 22 %.
    Finding wide = finding(report.joints().get(1), "tapping");
    assertEquals(Weight.FAULT, wide.weight());
    assertTrue(wide.sentence().contains("22 % of thread"), wide.sentence());
    assertTrue(
        report.joints().stream()
            .flatMap(each -> each.fetch().stream())
            .noneMatch(fetch -> fetch.role() == Fetch.Role.TAPPING_DRILL));
  }

  @Test
  void substitutesAreRankedByWhatTheyChange() {
    String stock =
        STOCK
            + "fastener,1 BA,hexagon,,3/8,steel,Drawer 1,good,9\n"
            + "fastener,3 BA,hexagon,,3/8,steel,Drawer 2,good,9\n"
            + "fastener,2 BA,hexagon,,1/2,steel,Drawer 3,good,9\n"
            + "fastener,2 BA,round,,3/8,steel,Drawer 4,good,9\n"
            + "fastener,2 BA,hexagon,,3/8,brass,Drawer 5,good,9\n"
            + "fastener,2 BA,small-hexagon,,3/8,steel,Drawer 6,good,9\n"
            + "fastener,2 BA,hexagon,,3/4,steel,Drawer 7,good,9\n"
            + "fastener,2 BA,hexagon-nut,,,steel,Drawer 8,good,9\n";
    JointReport joint =
        only(
            Bench.check(
                HEAD
                    + joint(
                        "gland",
                        "count = 2\nfastener = \"2 BA hexagon x 3/8 in steel\"\n"
                            + "clearance = { fit = \"medium\", depth = \"3 mm\" }\n"
                            + "tapped = { material = \"brass\", full-thread = \"12 mm\", metal ="
                            + " \"30 mm\", lead = \"second\" }"),
                stock));
    assertEquals(Supply.SHORT, joint.supply());
    // 3/4 in would reach 16 mm into 12 mm of thread; 1 BA and 3 BA differ by 12.8 per cent of 2 BA.
    assertEquals(
        List.of("Drawer 6", "Drawer 5", "Drawer 4", "Drawer 3"),
        joint.substitutes().stream().map(JointReport.Substitute::place).toList());
    assertEquals(
        List.of(
            "a hexagon one size smaller",
            "brass in place of steel",
            "round in place of hexagon",
            "1/2 in long in place of 3/8 in"),
        joint.substitutes().stream().map(JointReport.Substitute::change).toList());
  }

  @Test
  void anotherThreadSaysWhatMustBeDrilledAnew() {
    JointReport joint =
        only(
            Bench.check(
                HEAD
                    + joint(
                        "gland",
                        "count = 2\nfastener = \"2 BA hexagon x 12 mm steel\"\n"
                            + "clearance = { fit = \"medium\", depth = \"3 mm\", drilled = \"4.8"
                            + " mm\" }\n"
                            + "tapped = { material = \"brass\", full-thread = \"12 mm\" }"),
                STOCK + "fastener,M5,hexagon,,12 mm,steel,Drawer 1,good,9\n"));
    assertEquals(
        List.of(
            "M5 in place of 2 BA, tap it M5 throughout, open the hole of 4.80 mm (0.189 in) out, it"
                + " does not pass"),
        joint.substitutes().stream().map(JointReport.Substitute::change).toList());
    assertEquals(Supply.SHORT, joint.supply());
  }

  @Test
  void aDrillThatIsTooSmallForTheFitIsNotTaken() {
    JointReport joint =
        only(
            Bench.check(
                HEAD
                    + joint(
                        "clamp",
                        "count = 1\nfastener = \"M6 socket-cap x 20 mm\"\n"
                            + "clearance = { fit = \"free\" }"),
                STOCK + "drill,,,6.5 mm,,,Stand,good,1\ndrill,,,9 mm,,,Stand,good,1\n"));
    // ISO 273 gives 7 mm for M6 coarse: 6.5 mm is below it and 9 mm far above.
    Fetch drill = joint.fetch().get(joint.fetch().size() - 1);
    assertEquals(Fetch.Role.CLEARANCE_DRILL, drill.role());
    assertEquals(Fetch.State.NOT_HELD, drill.state());
    assertEquals("7.0 mm drill", drill.what());
    assertEquals(Weight.CAUTION, finding(joint, "clearance").weight());
  }

  @Test
  void pressureIsSaidAtTheJointAndForTheKit() {
    KitReport report =
        Bench.check(
            HEAD + plain("gland", 2, "2 BA hexagon x 1/2 in") + "holds-pressure = true\n", "");
    assertTrue(finding(only(report), "pressure").sentence().contains("boiler inspector"));
    assertEquals(
        List.of("drilling", "pressure"), report.cautions().stream().map(Finding::rule).toList());
  }

  @Test
  void theSameKitAndStockGiveTheSameReport() {
    String kit =
        HEAD
            + BOSS
            + onBoss("gland", 4, "2 BA hexagon x 1/2 in steel", "centre-drill-by-eye")
            + plain("cover", 3, "4 BA hexagon x 3/8 in");
    String stock =
        STOCK + "fastener,2 BA,round,,1/2,steel,Drawer 2,good,7\ndrill,,,No 11,,,S,good,1\n";
    assertEquals(Bench.check(kit, stock), Bench.check(kit, stock));
  }

  @Test
  void aRuleThatThrowsIsReportedAndSpoilsNothing() {
    JointRule bad =
        new JointRule() {
          @Override
          public String title() {
            throw new IllegalStateException("no title");
          }

          @Override
          public List<Finding> look(JointCase joint) {
            throw new IllegalStateException("no opinion");
          }
        };
    JointRule nothing =
        new JointRule() {
          @Override
          public String title() {
            return "returns nothing";
          }

          @Override
          public List<Finding> look(JointCase joint) {
            return null;
          }
        };
    JointRule good =
        new JointRule() {
          @Override
          public String title() {
            return "club rule";
          }

          @Override
          public List<Finding> look(JointCase joint) {
            return List.of(Finding.of(Weight.FAULT, "club rule", "Not in this club."));
          }
        };
    List<String> reported = new ArrayList<>();
    KitCheckService check =
        Bench.check(
            (contribution, doing, cause) -> reported.add(doing + ": " + cause.getMessage()));
    List.of(bad, nothing, good).forEach(check::addRule);
    Kit kit = Bench.FILES.readKit("a", HEAD + plain("gland", 2, "2 BA hexagon x 1/2 in"));
    JointReport joint = only(check.check(kit, Holdings.none()));
    assertEquals(2, reported.size(), reported.toString());
    assertTrue(reported.contains("checking joint gland: no opinion"), reported.toString());
    assertEquals("club rule", joint.findings().get(0).rule());
    assertTrue(joint.fails());
    assertTrue(
        joint.findings().stream()
            .anyMatch(f -> f.sentence().startsWith("The rule \"returns nothing\" failed")),
        "who relies on a rule sees that it did not speak: " + joint.findings());

    List.of(bad, nothing, good).forEach(check::removeRule);
    assertFalse(only(check.check(kit, Holdings.none())).fails());
  }

  @Test
  void aThreadThatIsNoLongerKnownIsAFinding() {
    Kit kit = Bench.FILES.readKit("a", HEAD + plain("gland", 2, "2 BA hexagon x 1/2 in"));
    var joint = kit.joints().get(0);
    var gone =
        new org.fettlebench.kits.Joint(
            joint.name(),
            "",
            2,
            new org.fettlebench.kits.Fastener("7 CLUB", "hexagon", Optional.empty(), ""),
            joint.clearance(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            false,
            "",
            0);
    JointReport report =
        only(
            Bench.check((c, d, t) -> {})
                .check(
                    new Kit("Trial", Optional.empty(), 0.95, List.of(gone), List.of()),
                    Holdings.none()));
    assertEquals(Weight.FAULT, finding(report, "thread").weight());
    assertEquals(Supply.SHORT, report.supply());
  }
}
