package org.fettlebench.threads.internal.identify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadForm;
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

/** The rule of crossing at its edges, the order of pairs, and what each reading counts for. */
@TestInstance(Lifecycle.PER_CLASS)
class CrossingTest {
  private final ThreadRegistry threads = OurThreads.fresh();
  private final IdentifyService service =
      new IdentifyService(threads, threads, FixedTables.of(OurThreads.TABLES.all()));

  private static ScrewThread odd(String name, double majorMm, double pitchMm) {
    Length major = Length.ofMillimetres(majorMm);
    return new ScrewThread(
        "ODD",
        name,
        name,
        ThreadForm.ISO,
        major,
        Length.ofMillimetres(pitchMm),
        Optional.empty(),
        major.minus(Length.ofMillimetres(0.65 * pitchMm)),
        major.minus(Length.ofMillimetres(1.08 * pitchMm)),
        major.minus(Length.ofMillimetres(1.23 * pitchMm)),
        new Source("made up", Standing.PUBLISHED));
  }

  private Optional<CrossPair> withM6(double majorMm, double pitchMm, CrossingRule rule) {
    return service.pairsOf(odd("odd", majorMm, pitchMm), rule).stream()
        .filter(pair -> pair.second().designation().equals("M6"))
        .findFirst();
  }

  /** Diameters within 0.4 and pitches within 0.1 of the finer pitch, both ends within. */
  @ParameterizedTest
  @CsvSource({
    "6.4, 1, true",
    "6.401, 1, false",
    "5.6, 1, true",
    "5.599, 1, false",
    "6, 1.1, true",
    "6, 1.101, false",
    "6.36, 0.91, true",
    "6.365, 0.91, false",
    "6, 0.909, false"
  })
  void sharesOfTheFinerPitch(double majorMm, double pitchMm, boolean crosses) {
    assertEquals(crosses, withM6(majorMm, pitchMm, new CrossingRule(0.4, 0.1)).isPresent());
  }

  /** To 0.002 mm it is the same thread; to a hundredth of the pitch it goes on. */
  @ParameterizedTest
  @CsvSource({
    "6.002, 1, SAME", "6.003, 1, GOES_ON", "6, 1.002, SAME", "6, 1.003, GOES_ON",
    "6, 1.01, GOES_ON", "6, 1.011, BINDS", "6, 0.99, BINDS", "6, 0.9901, GOES_ON"
  })
  void kinds(double majorMm, double pitchMm, CrossPair.Kind kind) {
    CrossPair pair = withM6(majorMm, pitchMm, CrossingRule.USUAL).orElseThrow();
    assertEquals(kind, pair.kind());
    assertEquals(6 - majorMm, pair.diameterDifference().millimetres(), 1e-9);
    assertEquals(1 - pitchMm, pair.pitchDifference().millimetres(), 1e-9);
  }

  /** Nearest first: a difference of pitch weighs ten times that of the diameter. */
  @Test
  void pairsComeNearestFirst() {
    ScrewThread quarter = threads.find("1/4 BSW").orElseThrow();
    List<Double> distances = new ArrayList<>();
    for (CrossPair pair : service.pairsOf(quarter, new CrossingRule(1, 0.3))) {
      double finer =
          Math.min(pair.first().pitch().millimetres(), pair.second().pitch().millimetres());
      distances.add(
          Math.abs(pair.diameterDifference().millimetres()) / finer
              + 10 * Math.abs(pair.pitchDifference().millimetres()) / finer);
    }
    assertTrue(distances.size() > 5, distances.toString());
    assertEquals(distances.stream().sorted(Comparator.naturalOrder()).toList(), distances);
  }

  @Test
  void aThreadIsNoPairWithItself() {
    ScrewThread six = threads.find("M6").orElseThrow();
    for (CrossPair pair : service.pairsOf(six, new CrossingRule(2, 1))) {
      assertTrue(!pair.second().equals(six));
    }
    // Of its own series others stand.
    assertTrue(
        service.pairsOf(six, new CrossingRule(2, 1)).stream()
            .anyMatch(pair -> pair.second().designation().equals("M7")));
  }

  private static Optional<Reading> reading(double mm, double uncertaintyMm) {
    return Optional.of(new Reading(Length.ofMillimetres(mm), Length.ofMillimetres(uncertaintyMm)));
  }

  private Candidate six(Measured measured) {
    return service.identify(measured, 2000).stream()
        .filter(one -> one.thread().designation().equals("M6"))
        .findFirst()
        .orElseThrow();
  }

  /** M6 6g is 5.794 to 5.974: 5.99 is 0.016 above, 5.78 is 0.014 below; three sigma agree. */
  @ParameterizedTest
  @CsvSource({
    "5.99, 0.006, 0.016, true",
    "5.99, 0.005, 0.016, false",
    "5.78, 0.005, -0.014, true",
    "5.78, 0.004, -0.014, false",
    "5.9, 0.004, 0, true"
  })
  void diameterOff(double reading, double uncertainty, double off, boolean agrees) {
    Candidate found =
        six(
            new Measured(
                ThreadSide.EXTERNAL,
                reading(reading, uncertainty),
                Optional.empty(),
                Optional.empty(),
                Length.ZERO));
    assertEquals(off, found.diameterOff().orElseThrow().millimetres(), 1e-9);
    assertEquals(agrees, found.agrees());
    assertEquals(Optional.empty(), found.pitchOff());
    assertEquals(Optional.empty(), found.hexagonOff());
  }

  /** A nut is measured by its bore: M6 6H is 4.917 to 5.153, and 0.05 of wear is allowed above. */
  @Test
  void aNutWearsWider() {
    Measured bore =
        new Measured(
            ThreadSide.INTERNAL,
            reading(5.19, 0.01),
            reading(1, 0.003),
            Optional.empty(),
            Length.ofMillimetres(0.05));
    assertEquals(0, six(bore).diameterOff().orElseThrow().millimetres(), 1e-9);
    Measured fresh =
        new Measured(
            ThreadSide.INTERNAL, bore.diameter(), bore.pitch(), Optional.empty(), Length.ZERO);
    assertEquals(0.037, six(fresh).diameterOff().orElseThrow().millimetres(), 1e-9);
    assertTrue(!six(fresh).agrees());
  }

  /** A pitch of 1.01 with 0.0033 is three uncertainties and a hair off 1 mm. */
  @ParameterizedTest
  @CsvSource({"1.01, 0.0034, true", "1.01, 0.0033, false", "0.99, 0.0034, true"})
  void pitchOff(double reading, double uncertainty, boolean agrees) {
    Candidate found =
        six(
            new Measured(
                ThreadSide.EXTERNAL,
                Optional.empty(),
                reading(reading, uncertainty),
                Optional.empty(),
                Length.ZERO));
    assertEquals(reading - 1, found.pitchOff().orElseThrow().millimetres(), 1e-9);
    assertEquals(agrees, found.agrees());
    assertEquals(Optional.empty(), found.diameterOff());
  }

  @Test
  void sharesAddUp() {
    Measured measured =
        new Measured(
            ThreadSide.EXTERNAL,
            reading(5.88, 0.02),
            reading(1.0, 0.01),
            Optional.empty(),
            Length.ZERO);
    List<Candidate> all = service.identify(measured, 10_000);
    assertEquals(1, all.stream().mapToDouble(Candidate::share).sum(), 1e-9);
    assertEquals(threads.series().stream().mapToInt(one -> one.threads().size()).sum(), all.size());
    assertEquals(all.subList(0, 3), service.identify(measured, 3));
  }
}
