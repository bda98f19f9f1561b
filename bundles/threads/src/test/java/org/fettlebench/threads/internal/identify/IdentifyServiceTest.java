package org.fettlebench.threads.internal.identify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFile;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadSeries;
import org.fettlebench.threads.ThreadSide;
import org.fettlebench.threads.identify.Candidate;
import org.fettlebench.threads.identify.CrossPair;
import org.fettlebench.threads.identify.CrossingRule;
import org.fettlebench.threads.identify.Measured;
import org.fettlebench.threads.identify.Reading;
import org.fettlebench.threads.internal.OurThreads;
import org.fettlebench.threads.internal.ThreadRegistry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@TestInstance(Lifecycle.PER_CLASS)
class IdentifyServiceTest {
  private final ThreadRegistry threads = OurThreads.fresh();

  private final IdentifyService service = new IdentifyService(threads, threads, OurThreads.TABLES);

  private Optional<Reading> reading(double mm, double uncertaintyMm) {
    return Optional.of(new Reading(Length.ofMillimetres(mm), Length.ofMillimetres(uncertaintyMm)));
  }

  private Measured screw(double diameterMm, double pitchMm) {
    return new Measured(
        ThreadSide.EXTERNAL,
        reading(diameterMm, 0.02),
        reading(pitchMm, 0.01),
        Optional.empty(),
        Length.ZERO);
  }

  private String first(Measured measured) {
    return service.identify(measured, 1).get(0).thread().designation();
  }

  /** Sizes as printed limits have them: ISO 965-1, efunda, BS 93 and BS 84 rules. */
  @ParameterizedTest
  @CsvSource({
    "4.60, 0.81, 2 BA",
    "5.88, 1.00, M6",
    "4.92, 0.80, M5",
    "9.44, 1.270, 3/8 BSF",
    "6.27, 0.907, 1/4-28 UNF",
    "1.83, 0.353, #1-72 UNF",
    "13.0, 1.337, G 1/4"
  })
  void namesAScrew(double diameterMm, double pitchMm, String designation) {
    List<Candidate> candidates = service.identify(screw(diameterMm, pitchMm), 5);
    assertEquals(designation, candidates.get(0).thread().designation());
    assertTrue(candidates.get(0).agrees());
    assertTrue(candidates.get(0).share() >= candidates.get(1).share());
    assertTrue(candidates.stream().mapToDouble(Candidate::share).sum() <= 1 + 1e-9);
  }

  /** Every shipped thread, made to the middle of its usual class, is found again or its double. */
  @Test
  void findsEveryThreadAgain() {
    List<String> lost = new ArrayList<>();
    int tried = 0;
    for (ThreadSeries series : threads.series()) {
      for (int i = 0; i < series.threads().size(); i += 9) {
        ScrewThread thread = series.threads().get(i);
        tried++;
        if (!among(thread)) {
          lost.add(thread.designation());
        }
      }
    }
    assertEquals(List.of(), lost);
    assertTrue(tried > 40, "tried " + tried);
  }

  private boolean among(ScrewThread thread) {
    var limits = threads.limits(thread, threads.classes(thread).get(0)).get(0).major();
    double middle =
        (limits.least().orElseThrow().millimetres() + limits.most().orElseThrow().millimetres())
            / 2;
    Measured measured =
        new Measured(
            ThreadSide.EXTERNAL,
            reading(middle, 0.005),
            reading(thread.pitch().millimetres(), 0.002),
            Optional.empty(),
            Length.ZERO);
    return service.identify(measured, 4).stream()
        .anyMatch(found -> found.thread().equals(thread) && found.agrees());
  }

  @Test
  void namesATappedHoleByItsBore() {
    Measured nut =
        new Measured(
            ThreadSide.INTERNAL,
            reading(5.05, 0.03),
            reading(1.0, 0.01),
            Optional.empty(),
            Length.ZERO);
    assertEquals("M6", first(nut));
  }

  @Test
  void allowsForWear() {
    Measured fresh = screw(5.60, 1.0);
    Measured worn =
        new Measured(
            ThreadSide.EXTERNAL,
            fresh.diameter(),
            fresh.pitch(),
            Optional.empty(),
            Length.ofMillimetres(0.2));
    assertFalse(m6(fresh).agrees());
    assertTrue(m6(worn).agrees());
    assertTrue(m6(worn).share() > m6(fresh).share());
  }

  private Candidate m6(Measured measured) {
    return service.identify(measured, 1000).stream()
        .filter(one -> one.thread().designation().equals("M6"))
        .findFirst()
        .orElseThrow();
  }

  /** 0 BA and M6 share 1 mm pitch; 0 BA has 0.413 in across flats, M6 10 mm. */
  @Test
  void theHexagonParts0BaFromM6() throws IOException {
    List<Table> tables = new ArrayList<>(OurThreads.TABLES.all());
    tables.add(heads("a", "BA", "0,6,10.49"));
    tables.add(heads("b", "M", "M6,6,10"));
    IdentifyService service = new IdentifyService(threads, threads, FixedTables.of(tables));
    assertEquals("0 BA", first(service, 10.45));
    assertEquals("M6", first(service, 9.85));
  }

  private String first(IdentifyService service, double hexagonMm) {
    Measured measured =
        new Measured(
            ThreadSide.EXTERNAL,
            reading(5.88, 0.03),
            reading(1.0, 0.01),
            reading(hexagonMm, 0.05),
            Length.ZERO);
    return service.identify(measured, 1).get(0).thread().designation();
  }

  private Table heads(String id, String series, String row) throws IOException {
    String text =
        "# kind: heads\n# id: %s\n# title: t\n# source: s\n# standing: from memory\n# style: hexagon\n"
                .formatted(id)
            + "# series: "
            + series
            + "\nsize,major_mm,across_flats_mm\n"
            + row
            + "\n";
    return TableFile.read(id, "test", new StringReader(text));
  }

  @ParameterizedTest
  @CsvSource({
    "0 BA, M6, GOES_ON",
    "1/4 BSW, 1/4-20 UNC, GOES_ON",
    "1/8 BSW, 1/8 x 40 ME, SAME",
    "2 BA, #10-32 UNF, BINDS",
    "1/4 BSF, 1/4-28 UNF, BINDS"
  })
  void pairsThatPeopleCross(String one, String other, CrossPair.Kind kind) {
    ScrewThread thread = threads.find(one).orElseThrow();
    CrossPair pair =
        service.pairsOf(thread, CrossingRule.USUAL).stream()
            .filter(found -> found.second().designation().equals(other))
            .findFirst()
            .orElseThrow();
    assertEquals(kind, pair.kind());
    assertEquals(thread, pair.first());
  }

  @Test
  void pairsOfSomeSeriesAreTheSameBothWays() {
    List<CrossPair> pairs = service.pairs(List.of("BA", "M"), CrossingRule.USUAL);
    assertTrue(pairs.size() > 3, "pairs " + pairs.size());
    for (CrossPair pair : pairs) {
      assertTrue(
          service.pairsOf(pair.second(), CrossingRule.USUAL).stream()
              .anyMatch(found -> found.second().equals(pair.first())));
      assertTrue(List.of("BA", "M").contains(pair.first().series()));
    }
    ScrewThread m6 = threads.find("M6").orElseThrow();
    assertTrue(
        service.pairsOf(m6, CrossingRule.USUAL).stream()
            .noneMatch(pair -> pair.second().designation().equals("M6 x 0.75")));
  }

  /** Tables of the normal distribution: 0.5, 0.841345, 0.977250, 0.998650. */
  @ParameterizedTest
  @CsvSource({"0, 0.5", "1, 0.841345", "2, 0.977250", "3, 0.998650", "-1, 0.158655"})
  void normalDistribution(double x, double printed) {
    assertEquals(printed, Likelihood.cumulative(x), 5.5e-7);
  }

  @Test
  void likelihoodFallsSteadilyFarAway() {
    double before = Likelihood.ofRange(1.0, 0.9, 1.1, 0.01);
    for (double reading = 1.1; reading < 3; reading += 0.003) {
      double now = Likelihood.ofRange(reading, 0.9, 1.1, 0.01);
      assertTrue(now < before && now > -1e6, reading + ": " + now + " after " + before);
      before = now;
    }
    assertEquals(Math.log(1 / 0.2), Likelihood.ofRange(1.0, 0.9, 1.1, 0.01), 1e-6);
  }

  @Test
  void refusesWhatCannotBe() {
    assertThrows(MeasureException.class, () -> reading(0, 0.01));
    assertThrows(MeasureException.class, () -> reading(5, 0));
    assertThrows(MeasureException.class, () -> reading(5, 5));
    assertThrows(
        MeasureException.class,
        () ->
            new Measured(
                ThreadSide.EXTERNAL,
                Optional.empty(),
                Optional.empty(),
                reading(5, 1),
                Length.ZERO));
    assertThrows(MeasureException.class, () -> new CrossingRule(Double.NaN, 0.1));
    assertThrows(MeasureException.class, () -> new CrossingRule(0.1, 0));
    assertThrows(IllegalArgumentException.class, () -> service.identify(screw(6, 1), 0));
  }
}
