package org.fettlebench.kits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.gamma.Erf;
import org.fettlebench.club.HoleError;
import org.fettlebench.club.MeasuredError;
import org.fettlebench.fits.HoleMethod;
import org.fettlebench.holes.chance.MethodEstimate;
import org.fettlebench.holes.internal.chance.EstimateService;
import org.fettlebench.kits.ClubMethods;
import org.fettlebench.kits.ErrorFiles;
import org.fettlebench.kits.FaultyFileException;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.Holdings;
import org.fettlebench.kits.Kit;
import org.fettlebench.kits.KitReport;
import org.fettlebench.measure.Length;
import org.junit.jupiter.api.Test;

/** What the club measured, through lists, estimates and the kit check. */
class MeasuredErrorsTest {
  private static final ClubMethods METHODS =
      new ClubMethodsService(Bench.TRADE.methods(), new EstimateService());
  private static final ErrorFiles FILES = new ErrorFilesService(Bench.TRADE.methods());
  private static final String KIT =
      """
      [kit]
      name = "One"

      [[seat]]
      name = "boss"
      outline = [["0 mm", "0 mm"], ["12 mm", "0 mm"], ["12 mm", "10.2 mm"], ["0 mm", "10.2 mm"]]
      centre = ["6 mm", "5.1 mm"]

      [[joint]]
      name = "gland"
      count = 2
      fastener = "2 BA hexagon x 1/2 in steel"
      clearance = { fit = "medium" }
      seat = "boss"
      method = "scribe-and-dot"
      """;

  private static MeasuredError entry(String method, String member, double x, double y) {
    HoleError error =
        new HoleError(
            method,
            Length.ofMillimetres(x),
            Length.ofMillimetres(y),
            LocalDate.of(2030, 2, 28),
            member,
            "",
            "");
    return new MeasuredError(1, error, Instant.EPOCH, Optional.empty());
  }

  /** Holes out by the same distance to all four sides in turn: a spread without an offset. */
  private static List<MeasuredError> holes(String member, int count, double out) {
    List<MeasuredError> entries = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double angle = i * Math.PI / 2;
      entries.add(entry("scribe-and-dot", member, out * Math.cos(angle), out * Math.sin(angle)));
    }
    return entries;
  }

  private static Finding seat(List<MeasuredError> errors) {
    Kit kit = Bench.FILES.readKit("a.kit.toml", KIT);
    KitReport report =
        Bench.check((contribution, doing, cause) -> {}).check(kit, new Holdings(List.of(), errors));
    return report.joints().get(0).findings().stream()
        .filter(finding -> finding.rule().equals(SeatRule.NAME))
        .findFirst()
        .orElseThrow();
  }

  private static double figure(Finding finding, String name) {
    return finding.figures().stream()
        .filter(figure -> figure.name().equals(name))
        .findFirst()
        .orElseThrow()
        .value();
  }

  @Test
  void theKitCheckTakesTheClubsOwnEstimateAndSaysSo() {
    Finding before = seat(List.of());
    Finding after = seat(holes("Ann", 40, 0.05));

    assertTrue(before.sentence().contains("common practice, no source"), before.sentence());
    assertTrue(after.sentence().contains("(measured by the club, 40 holes)"), after.sentence());
    // (10 x 0.15^2 + 40 x 0.05^2 / 2) / 50 = 0.0055.
    double sigma = Math.sqrt(0.0055);
    assertEquals(sigma * Math.sqrt(-2 * Math.log(0.05)), figure(after, "expectedErrorMm"), 1e-9);
    assertEquals(0.15 * Math.sqrt(-2 * Math.log(0.05)), figure(before, "expectedErrorMm"), 1e-9);
    assertTrue(figure(after, "chancePercent") > figure(before, "chancePercent"));
    assertTrue(
        before.sentence().contains("The chance that the hole lands where the head sits is "),
        before.sentence());
  }

  @Test
  void theChanceIsThatOfTheStripTheHeadLeaves() {
    // Round about the head the flat is 12 mm by 10.2 mm: the centre may lie 0.9 mm farther from the
    // middle along it than across it.
    Finding before = seat(List.of());
    double across = figure(before, "allowanceMm");

    assertEquals(rectangle(0.15, across), figure(before, "chancePercent"), 0.001);
    // (10 x 0.0225 + 990 x 1.125) / 1000 = 1.113975.
    Finding rough = seat(holes("Ann", 990, 1.5));
    assertEquals(rectangle(Math.sqrt(1.113975), across), figure(rough, "chancePercent"), 0.001);
  }

  private static double rectangle(double sigma, double across) {
    return 100 * error(across / sigma) * error((across + 0.9) / sigma);
  }

  private static double error(double sigmas) {
    return Erf.value(sigmas / Math.sqrt(2));
  }

  @Test
  void aMemberStartsFromWhatTheOthersMeasured() {
    List<MeasuredError> book = new ArrayList<>(holes("Ann", 90, 0.1));
    book.addAll(holes("Bob", 4, 0.3));
    MethodEstimate all = find(METHODS.estimates(book, asked(Optional.empty())));
    MethodEstimate bob = find(METHODS.estimates(book, asked(Optional.of("Bob"))));
    MethodEstimate nobody = find(METHODS.estimates(book, asked(Optional.of("Eve"))));
    double others = (10 * 0.0225 + 90 * 0.01 / 2) / 100;

    assertEquals(94, all.holes());
    assertEquals(4, bob.holes());
    assertEquals(Math.sqrt(others), bob.before().sigmaPerAxisMm(), 1e-12);
    assertEquals(Math.sqrt((10 * others + 4 * 0.09 / 2) / 14), bob.x().sigmaMm(), 1e-12);
    assertEquals("measured by Bob, 4 holes", bob.now().source().citation());
    assertEquals(0, nobody.holes());
    assertEquals("measured by others, 94 holes", nobody.now().source().citation());
  }

  private static ClubMethods.Asked asked(Optional<String> member) {
    return new ClubMethods.Asked(member, Optional.empty(), 10);
  }

  private static MethodEstimate find(List<MethodEstimate> estimates) {
    return estimates.stream()
        .filter(each -> each.before().id().equals("scribe-and-dot"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void whatIsStruckOutOrOfAnotherMethodDoesNotCount() {
    MeasuredError struck =
        new MeasuredError(
            1,
            entry("scribe-and-dot", "Ann", 5, 5).error(),
            Instant.EPOCH,
            Optional.of(new MeasuredError.Strike(Instant.EPOCH, "", "wrong edge")));
    MethodEstimate estimate =
        METHODS.find("scribe-and-dot", List.of(struck, entry("jig", "Ann", 1, 1))).orElseThrow();

    assertEquals(0, estimate.holes());
    HoleMethod tabled = Bench.TRADE.methods().find("scribe-and-dot").orElseThrow();
    assertEquals(tabled, estimate.now());
    assertEquals(Optional.empty(), METHODS.find("guess", List.of()));
  }

  @Test
  void aListReadsBackAsItWasWritten() {
    HoleError inch =
        new HoleError(
            "jig",
            Length.ofInchFraction(-1, 64),
            Length.ZERO,
            LocalDate.of(1999, 12, 31),
            "Turner, Ann",
            "mill \"2\"",
            "");
    List<MeasuredError> entries = new ArrayList<>(holes("Ann", 3, 0.123456));
    entries.add(new MeasuredError(4, inch, Instant.EPOCH, Optional.empty()));

    assertEquals(
        entries.stream().map(MeasuredError::error).toList(),
        FILES.read("errors.csv", FILES.write(entries)));
  }

  @Test
  void everyFaultOfAListIsNamedWithItsPlace() {
    String list =
        """
        date,method,x,y,colour
        28.2.2030,scribe-and-dot,0.1 mm,0.1 mm,
        2030-02-28,guess,0.1 mm,left,
        2030-02-28,jig,30 mm,0 mm,
        2030-02-28,jig,0.1 mm,0 mm,red,blue
        """;
    List<FaultyFileException.Fault> faults =
        assertThrows(FaultyFileException.class, () -> FILES.read("errors.csv", list)).faults();

    assertEquals(
        List.of(
            "1: is no column of a list of measured errors",
            "2: is no date",
            "3: is no known way of placing a hole",
            "3: is no error along y",
            "4: the error along x, 30.0 mm, is more than 25 mm; look at the unit and at what was"
                + " aimed at",
            "5: stands beyond the last column"),
        faults.stream().map(fault -> fault.line() + ": " + fault.wrong()).toList());
    assertThrows(FaultyFileException.class, () -> FILES.read("errors.csv", ""));
  }
}
