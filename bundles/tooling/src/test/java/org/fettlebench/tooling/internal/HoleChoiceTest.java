package org.fettlebench.tooling.internal;

import static org.fettlebench.tooling.internal.OurTooling.drill;
import static org.fettlebench.tooling.internal.OurTooling.holes;
import static org.fettlebench.tooling.internal.OurTooling.thread;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.tables.Standing;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFile;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.tooling.BlindHole;
import org.fettlebench.tooling.ClearanceChoice;
import org.fettlebench.tooling.ClearanceFit;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.HoleChooser.BlindHoleRequest;
import org.fettlebench.tooling.HoleChooser.PercentWanted;
import org.fettlebench.tooling.TapLead;
import org.fettlebench.tooling.TappingChoice;
import org.fettlebench.tooling.ThreadDepth;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@ExtendWith(OurTooling.Fresh.class)
class HoleChoiceTest {
  private static final List<DrillSize> SIXTY_FOURTHS =
      IntStream.rangeClosed(1, 32).mapToObj(n -> drill(n + "/64")).toList();

  /** Common practice, no source: 2 BA is tapped in a hole of 5/32 in. */
  @ParameterizedTest
  @ValueSource(doubles = {60, 65, 70, 75, 80})
  void twoBaIsTappedInFiveThirtySeconds(double percent) {
    TappingChoice best = holes().tapping(thread("2 BA"), percent, SIXTY_FOURTHS).get(0);
    assertEquals("5/32 in", best.drill().name());
    assertEquals(75.23, best.percentOfThread(), 0.005);
    assertEquals(Optional.empty(), best.concern());
  }

  /** 4.9 and 5.1 mm lie alike to either side of what 5 mm leaves; the larger eases the tap. */
  @Test
  void ofTwoEquallyCloseTheLargerGoesFirst() {
    double wanted = thread("M6").percentOfThread(Length.ofMillimetres(5));
    for (List<DrillSize> held :
        List.of(
            List.of(drill("4.9 mm"), drill("5.1 mm")), List.of(drill("5.1 mm"), drill("4.9 mm")))) {
      assertEquals("5.1 mm", holes().tapping(thread("M6"), wanted, held).get(0).drill().name());
    }
  }

  @Test
  void saysWhenTheDrillIsOutsideTheLimitsOfTheClass() {
    List<TappingChoice> choices =
        holes().tapping(thread("M6"), 75, List.of(drill("4.8 mm"), drill("5 mm"), drill("5.2 mm")));
    assertEquals("5.0 mm", choices.get(0).drill().name());
    assertEquals(Optional.empty(), choices.get(0).concern());
    assertEquals(
        Optional.of(
            "minor diameter 5.200 mm (0.2047 in) is above the most 5.153 mm (0.2029 in) of ISO 965-1 6H (published)"),
        choices.get(1).concern());
    assertEquals(
        Optional.of(
            "minor diameter 4.800 mm (0.1890 in) is below the least 4.917 mm (0.1936 in) of ISO 965-1 6H (published)"),
        choices.get(2).concern());
  }

  @Test
  void withoutLimitsJudgesByTheBasicSizeAndByHabit() {
    HoleChoiceFixture none = new HoleChoiceFixture();
    ScrewThread m6 = thread("M6");
    List<TappingChoice> choices =
        none.holes.tapping(m6, 75, List.of(drill("4.8 mm"), drill("5 mm"), drill("5.5 mm")));
    assertEquals(Optional.empty(), choices.get(0).concern());
    assertEquals(
        Optional.of("minor diameter 4.800 mm (0.1890 in) is below the basic 4.917 mm (0.1936 in)"),
        choices.get(1).concern());
    assertEquals(
        Optional.of("38 per cent of thread is outside 50 to 85 (common practice, no source)"),
        choices.get(2).concern());
  }

  /** The shipped tables without any limits. */
  private static final class HoleChoiceFixture {
    final HoleChoice holes =
        new HoleChoice(OurTooling.TABLES, thread -> Optional.empty(), OurTooling.NO_FAULTS);
  }

  /** 1/4 in: 0.004 in mean oversize. 3/16 in lies midway between 1/8 (0.003) and 1/4. */
  @Test
  void expectsTheOversizeOfTheTable() {
    TappingChoice quarter = holes().tapping(thread("5/16 BSW"), 75, List.of(drill("1/4"))).get(0);
    assertEquals(0.004, quarter.oversize().orElseThrow().inches(), 1e-7);
    // 100 (0.3125 - 0.254) / (2 x 0.640327 / 18) = 82.22
    assertEquals(82.22, quarter.percentAsDrilled().orElseThrow(), 0.005);
    assertEquals(Standing.FROM_MEMORY, quarter.oversizeSource().orElseThrow().standing());
    TappingChoice between =
        holes().tapping(thread("1/4 x 26 BSF"), 75, List.of(drill("3/16"))).stream()
            .findFirst()
            .orElseGet(() -> holes().tapping(thread("1/4 BSW"), 90, List.of(drill("3/16"))).get(0));
    assertEquals(0.0035, between.oversize().orElseThrow().inches(), 1e-7);
  }

  @Test
  void expectsNoOversizeOutsideTheTable() {
    TappingChoice small = holes().tapping(thread("12 BA"), 75, List.of(drill("1.05 mm"))).get(0);
    assertEquals(Optional.empty(), small.oversize());
    assertEquals(Optional.empty(), small.percentAsDrilled());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -5, 100.5, Double.NaN})
  void refusesAPerCentOutOfRange(double percent) {
    assertThrows(
        MeasureException.class, () -> holes().tapping(thread("M6"), percent, SIXTY_FOURTHS));
  }

  static LongStream seeds() {
    return LongStream.range(1, 31);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void theRankFallsAwayFromTheAskedPerCent(long seed) {
    Random random = new Random(seed);
    List<ScrewThread> all =
        OurTooling.threads().series().stream().flatMap(s -> s.threads().stream()).toList();
    ScrewThread thread = all.get(random.nextInt(all.size()));
    double wanted = 30 + 65 * random.nextDouble();
    List<TappingChoice> choices = holes().tapping(thread, wanted, OurTooling.drills().catalogue());
    for (int i = 0; i < choices.size(); i++) {
      double percent = choices.get(i).percentOfThread();
      assertTrue(percent >= 20 && percent <= 100, "seed " + seed);
      if (i > 0) {
        double before = choices.get(i - 1).percentOfThread();
        assertTrue(Math.abs(before - wanted) <= Math.abs(percent - wanted) + 1e-9, "seed " + seed);
      }
    }
  }

  @Test
  void takesTheSmallestHeldDrillThatClears() {
    List<ClearanceChoice> choices =
        holes()
            .clearance(
                thread("M6"),
                List.of(drill("7 mm"), drill("6.5 mm"), drill("6 mm"), drill("6.4 mm")));
    assertEquals(
        List.of("CLOSE 6.4 mm", "MEDIUM 7.0 mm", "FREE 7.0 mm"),
        choices.stream().map(c -> c.fit() + " " + c.drill().name()).toList());
    assertEquals(Length.ofMillimetres(0.4), choices.get(0).clearance());
    assertEquals(
        List.of(ClearanceFit.CLOSE),
        holes().clearance(thread("M6"), List.of(drill("6.5 mm"))).stream()
            .map(ClearanceChoice::fit)
            .toList());
    assertEquals(List.of(), holes().clearance(thread("M6"), List.of(drill("6 mm"))));
  }

  @Test
  void saysWhenNoListHasTheSize() {
    ClearanceChoice only =
        holes().clearance(thread("M9"), OurTooling.drills().catalogue()).stream()
            .reduce(
                (one, two) -> {
                  throw new AssertionError("one choice");
                })
            .orElseThrow();
    assertEquals(ClearanceFit.CLOSE, only.fit());
    assertEquals(Standing.COMMON_PRACTICE, only.source().standing());
    assertTrue(only.source().citation().startsWith("no list"));
    assertTrue(only.clearance().isPositive());
  }

  @Test
  void fineThreadsShareTheListOfTheirDiameter() {
    assertEquals(
        holes().clearance(thread("M6"), OurTooling.drills().catalogue()),
        holes().clearance(thread("M6 x 0.75"), OurTooling.drills().catalogue()));
  }

  @Test
  void givesThePerCentOfAMaterialWithItsSource() {
    PercentWanted usual = holes().usualPercent("Cast Iron");
    assertEquals(67.5, usual.percent());
    assertEquals(Standing.PUBLISHED, usual.source().standing());
    assertTrue(usual.source().citation().contains("65 to 70"));
    assertEquals(65, holes().usualPercent("mild steel", ThreadDepth.DEEP).percent());
    assertEquals(80, holes().usualPercent("brass", ThreadDepth.THIN).percent());
    PercentWanted thinStainless = holes().usualPercent("stainless-steel", ThreadDepth.THIN);
    assertEquals(65, thinStainless.percent());
    assertTrue(thinStainless.source().citation().contains("no figure for thin work"));
    PercentWanted unknown = holes().usualPercent("unobtainium");
    assertEquals(65, unknown.percent());
    assertTrue(unknown.source().citation().contains("no figure for 'unobtainium'"));
  }

  /** eisc.com, minimum tap depth: 1/4-20, 3/8 in of thread, bottoming tap: drill 0.525 in. */
  @Test
  void blindHoleAsInThePublishedExample() {
    BlindHole hole =
        holes()
            .blindHole(
                new BlindHoleRequest(
                    thread("1/4-20"),
                    drill("No 7"),
                    Length.ofInchFraction(3, 8),
                    Length.ofInches(1),
                    TapLead.BOTTOMING,
                    118));
    assertEquals(0.100, hole.tapLead().inches(), 1e-7);
    assertEquals(0.050, hole.chipRoom().inches(), 1e-7);
    assertEquals(0.525, hole.shoulder().inches(), 1e-7);
    // 0.201 / 2 / tan 59 degrees = 0.060386
    assertEquals(0.060386, hole.pointLength().inches(), 1e-6);
    assertEquals(0.585386, hole.drillTip().inches(), 1e-6);
    assertEquals(0.414614, hole.left().inches(), 1e-6);
    assertEquals(List.of(), hole.concerns());
    assertEquals(3, hole.sources().size());
  }

  private static BlindHole twoBa(double metalMm, TapLead lead, double angle) {
    return holes()
        .blindHole(
            new BlindHoleRequest(
                thread("2 BA"),
                drill("4 mm"),
                Length.ofMillimetres(8),
                Length.ofMillimetres(metalMm),
                lead,
                angle));
  }

  @Test
  void blindHoleByHand() {
    // 8 + 5 x 0.81 + 0.81 = 12.86; 90 degrees: point 2; tip 14.86.
    BlindHole hole = twoBa(20, TapLead.SECOND, 90);
    assertEquals(12.86, hole.shoulder().millimetres(), 1e-6);
    assertEquals(2, hole.pointLength().millimetres(), 1e-6);
    assertEquals(5.14, hole.left().millimetres(), 1e-6);
    assertEquals(8 + 11 * 0.81, twoBa(20, TapLead.TAPER, 90).shoulder().millimetres(), 1e-6);
    assertEquals(Length.ZERO, twoBa(20, TapLead.SECOND, 180).pointLength());
  }

  @Test
  void warnsOfAThinFloorAndRefusesBreakThrough() {
    BlindHole thin = twoBa(16.8, TapLead.SECOND, 90);
    assertEquals(
        List.of(
            "warning: thin floor: 1.94 mm (0.076 in) is left under the point, less than 2.00 mm (0.079 in)"
                + " (0.5 drill diameters; common practice, no source)"),
        thin.concerns());
    assertEquals(false, thin.breaksThrough());
    assertEquals(List.of(), twoBa(16.86, TapLead.SECOND, 90).concerns());
    BlindHole through = twoBa(14.86, TapLead.SECOND, 90);
    assertTrue(through.breaksThrough());
    assertTrue(through.concerns().get(0).startsWith("error: the drill's point breaks through"));
    assertEquals(-2.86, twoBa(12, TapLead.SECOND, 90).left().millimetres(), 1e-6);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -118, 180.5, Double.NaN})
  void refusesAPointAngleThatNoDrillHas(double angle) {
    assertThrows(MeasureException.class, () -> twoBa(20, TapLead.SECOND, angle));
  }

  @Test
  void refusesDepthsThatAreNone() {
    assertThrows(MeasureException.class, () -> twoBa(0, TapLead.SECOND, 118));
    assertThrows(
        MeasureException.class,
        () ->
            new BlindHoleRequest(
                thread("M3"),
                drill("2.5 mm"),
                Length.ZERO,
                Length.ofMillimetres(5),
                TapLead.SECOND,
                118));
  }

  private static Table table(String kind, String header, String rows) throws IOException {
    return TableFile.read(
        "club.csv",
        "org.example.club",
        new StringReader(
            "# kind: %s\n# id: club\n# title: t\n# source: club book\n# standing: measured by the club\n%s%s\n"
                .formatted(kind, header, rows)));
  }

  @Test
  void aClubsTablesGoBeforeTheSuitesOwn() throws IOException {
    List<Table> tables = new ArrayList<>(OurTooling.TABLES.all());
    tables.add(
        table("thread-percent", "", "material,depth,percent_from,percent_to\nbrass,usual,80,80"));
    tables.add(table("clearance-holes", "# series: BA\n", "major_mm,close_mm\n4.70,4.75"));
    tables.add(table("drill-oversize", "", "diameter_mm,oversize_mean_mm\n3,0.02\n6,0.05"));
    tables.add(table("blind-holes", "", "allowance,value,unit\nchip room,2,pitches"));
    HoleChoice holes =
        new HoleChoice(FixedTables.of(tables), OurTooling.threads(), OurTooling.NO_FAULTS);
    assertEquals(80, holes.usualPercent("brass").percent());
    assertEquals(67.5, holes.usualPercent("bronze").percent());
    assertEquals(
        Length.ofMillimetres(4.75),
        holes.clearance(thread("2 BA"), OurTooling.drills().catalogue()).get(0).listed());
    assertEquals(
        Length.ofMillimetres(0.03),
        holes.tapping(thread("2 BA"), 75, List.of(drill("4 mm"))).get(0).oversize().orElseThrow());
    BlindHole hole =
        holes.blindHole(
            new BlindHoleRequest(
                thread("2 BA"),
                drill("4 mm"),
                Length.ofMillimetres(8),
                Length.ofMillimetres(30),
                TapLead.BOTTOMING,
                118));
    assertEquals(1.62, hole.chipRoom().millimetres(), 1e-6);
    assertEquals(1.62, hole.tapLead().millimetres(), 1e-6);
  }

  @Test
  void aListMayRoundAnInchSizeToHundredthsOfAMillimetre() throws IOException {
    List<Table> tables = new ArrayList<>(OurTooling.TABLES.all());
    // 3/16 in is 4.7625 mm.
    tables.add(
        table("clearance-holes", "# series: BSW\n", "major_mm,free_mm\n4.76,5.1\n4.755,5.2"));
    HoleChoice holes =
        new HoleChoice(FixedTables.of(tables), OurTooling.threads(), OurTooling.NO_FAULTS);
    assertTrue(
        holes.clearance(thread("3/16 BSW"), OurTooling.drills().catalogue()).stream()
            .anyMatch(choice -> choice.listed().equals(Length.ofMillimetres(5.1))));
  }

  @Test
  void leavesOutFaultyTablesAndSaysWhy() throws IOException {
    List<String> reported = new ArrayList<>();
    List<Table> tables = new ArrayList<>(OurTooling.TABLES.all());
    tables.add(
        table(
            "thread-percent",
            "",
            "material,depth,percent_from,percent_to\nbrass,usual,0,80\nbrass,mid,60,70\niron,usual,80,70"));
    tables.add(table("clearance-holes", "", "major_mm,close_mm\n4.70,4.75"));
    tables.add(table("clearance-holes", "# series: BA\n", "major_mm,close_mm\n4.70,4.60\n5.3,"));
    tables.add(table("drill-oversize", "", "diameter_mm,oversize_mean_mm\n6,0.02\n3,0.05"));
    tables.add(table("blind-holes", "", "allowance,value,unit\nchips,2,pitches\nchip room,2,mm"));
    HoleChoice holes =
        new HoleChoice(
            FixedTables.of(tables),
            OurTooling.threads(),
            (table, fault) -> reported.add(fault.getMessage()));
    askAll(holes);
    String all = String.join("\n", reported);
    assertEquals(5, reported.size(), all);
    for (String said :
        List.of(
            "column percent_from: 0 is outside above 0.0 to 100.0",
            "depth 'mid' must be deep, usual or thin",
            "percent_from 80.0 is above percent_to 70.0",
            "the header has no line '# series: ...'",
            "hole 4.6 mm does not clear the screw of 4.7 mm",
            "no hole stands under close, medium or free",
            "the diameters must rise from row to row",
            "allowance 'chips' must be one of",
            "unit of chip room must be 'pitches'")) {
      assertTrue(all.contains(said), said + " in " + all);
    }
    assertEquals(67.5, holes.usualPercent("brass").percent());
  }

  /** Each kind of table is read when it is first needed. */
  private static void askAll(HoleChoice holes) {
    DrillSize drill = drill("4 mm");
    holes.usualPercent("brass");
    holes.clearance(thread("2 BA"), List.of(drill));
    holes.tapping(thread("2 BA"), 75, List.of(drill));
    Length depth = Length.ofMillimetres(8);
    holes.blindHole(
        new BlindHoleRequest(
            thread("2 BA"), drill, depth, depth.plus(depth), TapLead.BOTTOMING, 118));
  }
}
