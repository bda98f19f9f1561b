package org.fettlebench.demo.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import org.fettlebench.club.Goods;
import org.fettlebench.fits.Verdict;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.Holdings;
import org.fettlebench.kits.JointReport;
import org.fettlebench.kits.JointReport.Fetch.State;
import org.fettlebench.kits.JointReport.Supply;
import org.fettlebench.kits.Kit;
import org.fettlebench.kits.KitReport;
import org.fettlebench.testkit.trade.RealTrade;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.BundleContext;

class DemoClubTest {
  private static final PaperClub CLUB = new PaperClub();
  private static Kit kit;
  private static KitReport report;

  @BeforeAll
  static void load() {
    demo(CLUB).load();
    kit = RealTrade.KIT_FILES.readKit("demo", CLUB.kits.get(DemoClubService.KIT_NAME));
    report = RealTrade.KIT_CHECK.check(kit, new Holdings(CLUB.lines));
  }

  private static DemoClubService demo(PaperClub club) {
    return new DemoClubService(
        RealTrade.KIT_FILES,
        RealTrade.STOCK_FILES,
        club.stock,
        club.shelf,
        Clock.fixed(Instant.parse("2026-01-10T12:00:00Z"), ZoneOffset.UTC));
  }

  private static DemoClubService started(PaperClub club, String open) {
    BundleContext context = mock(BundleContext.class);
    when(context.getProperty("fettlebench.open")).thenReturn(open);
    return new DemoClubService(
        RealTrade.KIT_FILES, RealTrade.STOCK_FILES, club.stock, club.shelf, context);
  }

  @Test
  void itIsLargeEnough() {
    assertEquals(DemoClubService.KIT_NAME, kit.name());
    assertTrue(kit.joints().size() >= 25, "joints: " + kit.joints().size());
    assertTrue(CLUB.lines.size() >= 300, "stock lines: " + CLUB.lines.size());
    Set<String> series =
        kit.joints().stream()
            .map(joint -> joint.fastener().thread())
            .map(thread -> thread.startsWith("M") ? "M" : thread.replaceAll(".* ", ""))
            .collect(Collectors.toSet());
    assertTrue(series.containsAll(Set.of("BA", "ME", "BSF", "BSW", "M", "UNF")), series.toString());
  }

  @Test
  void everyVerdictAndEverySupplyIsThere() {
    Arrays.stream(Verdict.values())
        .forEach(verdict -> assertTrue(report.count(verdict) > 0, verdict.word()));
    Arrays.stream(Supply.values())
        .forEach(supply -> assertTrue(report.count(supply) > 0, supply.words()));
    assertTrue(report.unmeasured() > 0);
    // Most of a kit is right, or nobody would build it.
    assertTrue(report.count(Verdict.CLEARS) > report.count(Verdict.FOULS));
  }

  @Test
  void everyStateOfAToolIsThere() {
    Set<State> states =
        report.joints().stream()
            .flatMap(joint -> joint.fetch().stream())
            .map(JointReport.Fetch::state)
            .collect(Collectors.toSet());
    assertEquals(Set.of(State.values()), states);
    long drills =
        CLUB.lines.stream().filter(line -> line.goods().kind() == Goods.Kind.DRILL).count();
    assertTrue(drills > 100, "drills: " + drills);
  }

  @Test
  void aBlindHoleWouldBreakThroughAndPressureIsHeld() {
    assertTrue(
        report.joints().stream()
            .flatMap(joint -> joint.findings().stream())
            .anyMatch(
                finding ->
                    finding.rule().equals("blind hole")
                        && finding.weight() == Finding.Weight.FAULT));
    assertTrue(kit.joints().stream().anyMatch(joint -> joint.holdsPressure()));
    assertEquals(3, report.cautions().size());
  }

  @Test
  void everyTableHasWhatTheKitNeeds() {
    assertTrue(
        report.joints().stream()
            .filter(joint -> joint.joint().seat().isPresent())
            .allMatch(joint -> joint.seat().isPresent()));
  }

  @Test
  void loadingTwiceChangesNothing() {
    PaperClub club = new PaperClub();
    DemoClubService demo = demo(club);
    assertFalse(demo.loaded());
    demo.load();
    assertTrue(demo.loaded());
    int lines = club.lines.size();
    demo.load();
    club.kits.clear();
    demo.load();
    assertEquals(lines, club.lines.size());
    assertEquals(1, club.receivings);
    assertTrue(
        club.lines.stream()
            .anyMatch(line -> line.holder().equals("Member 12 until 24 January 2026")));
  }

  @Test
  void aStoreThatIsThereIsLookedIntoOnlyAfterTheStart(@TempDir Path data) throws IOException {
    Files.createDirectory(data.resolve("store"));
    BundleContext context = mock(BundleContext.class);
    when(context.getProperty("fettlebench.open")).thenReturn("demo");
    when(context.getProperty("fettlebench.data")).thenReturn(data.toString());
    PaperClub club = new PaperClub();
    DemoClubService demo =
        new DemoClubService(
            RealTrade.KIT_FILES, RealTrade.STOCK_FILES, club.stock, club.shelf, context);
    assertFalse(demo.loaded());
    demo.modulesChanged();
    assertTrue(demo.loaded());
  }

  @Test
  void itIsLoadedAtTheStartOnlyWhenAskedAndNothingIsHeld() {
    PaperClub asked = new PaperClub();
    assertTrue(started(asked, "demo").loaded());
    PaperClub notAsked = new PaperClub();
    assertFalse(started(notAsked, null).loaded());
    PaperClub held = new PaperClub();
    held.kits.put("a kit of their own", "");
    assertFalse(started(held, "demo").loaded());
    assertTrue(held.lines.isEmpty());
  }
}
