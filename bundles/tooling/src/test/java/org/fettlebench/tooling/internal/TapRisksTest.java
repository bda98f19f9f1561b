package org.fettlebench.tooling.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tooling.DrillSize;
import org.fettlebench.tooling.risk.TapCure;
import org.fettlebench.tooling.risk.TapJob;
import org.fettlebench.tooling.risk.TapRisk;
import org.fettlebench.tooling.risk.TapSort;
import org.fettlebench.tooling.risk.TapVerdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tap risk against torques worked by hand from the published formula, and by its laws. */
@ExtendWith(OurTooling.Fresh.class)
class TapRisksTest {
  private static TapJob job(
      String thread, String hole, String material, double depthMm, boolean through, TapSort tap) {
    return new TapJob(
        OurTooling.thread(thread),
        OurTooling.drill(hole).diameter(),
        OurTooling.material(material),
        Length.ofMillimetres(depthMm),
        through,
        tap,
        Optional.empty());
  }

  private static TapRisk risk(TapJob job) {
    return OurTooling.risks().of(job, List.of());
  }

  /** Worked outside the code, with the tables' resistances and coefficients: see the file. */
  @ParameterizedTest
  @CsvFileSource(resources = "/expected/tap-torques.csv", numLinesToSkip = 2)
  void torqueByThePublishedFormula(
      String thread, double holeMm, String material, String tap, double torqueNm) {
    TapJob job =
        new TapJob(
            OurTooling.thread(thread),
            Length.ofMillimetres(holeMm),
            OurTooling.material(material),
            OurTooling.thread(thread).major(),
            false,
            TapSort.ofWord(tap).orElseThrow(),
            Optional.empty());

    assertEquals(torqueNm, risk(job).cuttingTorqueNm(), 0.0005);
  }

  @Test
  void coreBreaksAsARoundBarInTorsion() {
    // M6, 3 flutes: core 0.415 x 6 = 2.49 mm; π/16 x 2.49³ x 1700 MPa = 5.1534 N m.
    TapRisk risk = risk(job("M6", "5 mm", "mild steel", 6, false, TapSort.SECOND));

    assertEquals(3, risk.flutes());
    assertEquals(2.49, risk.core().millimetres(), 1e-6);
    assertEquals(5.1534, risk.breakingTorqueNm(), 5e-4);
    assertEquals(risk.cuttingTorqueNm() / risk.breakingTorqueNm(), risk.ratio(), 1e-12);
    assertEquals(76.98, risk.percentOfThread(), 0.01);
    assertEquals(4, risk(job("M8", "6.8 mm", "ms", 8, false, TapSort.SECOND)).flutes());
  }

  @Test
  void endsOfTheAssumptions() {
    // Hardest: 3700 MPa, core 0.38, 1400 MPa; kindest: 3600 MPa, core 0.45, 2000 MPa.
    TapRisk risk = risk(job("M6", "5 mm", "mild steel", 6, false, TapSort.SECOND));
    double torque = risk.cuttingTorqueNm() / 3650;

    assertEquals(
        3700 * torque / (Math.PI / 16 * Math.pow(0.38 * 6, 3) * 1.4), risk.ratioMost(), 1e-9);
    assertEquals(
        3600 * torque / (Math.PI / 16 * Math.pow(0.45 * 6, 3) * 2.0), risk.ratioLeast(), 1e-9);
    assertEquals(TapVerdict.BELOW, risk.verdict());
  }

  @Test
  void toolSteelDeepAndTightMayBreakATap() {
    TapRisk tight = risk(job("M3", "2.4 mm", "silver steel", 6, false, TapSort.BOTTOMING));
    assertEquals(TapVerdict.MAY_BREAK, tight.verdict());
    TapRisk deep = risk(job("M3", "2.4 mm", "silver steel", 15, false, TapSort.BOTTOMING));
    assertEquals(TapVerdict.WILL_LIKELY_BREAK, deep.verdict());
    assertTrue(deep.ratio() >= 1);
  }

  @ParameterizedTest
  @CsvSource({"0.5, 0.19", "2.5, 0.75", "4.9, 0.9996", "5, 1", "6, 1"})
  void thinMetalIsCutByAPartOfTheLead(double thicknessMm, double part) {
    // Second tap: a lead of 5 pitches, 5 mm for M6; 1 - (1 - t/L)².
    double whole = risk(job("M6", "5 mm", "ms", 6, true, TapSort.SECOND)).cuttingTorqueNm();

    TapRisk thin = risk(job("M6", "5 mm", "ms", thicknessMm, true, TapSort.SECOND));

    assertEquals(part, thin.cuttingTorqueNm() / whole, 1e-9);
    // In a blind hole the whole lead goes in, however short the thread.
    assertEquals(
        whole,
        risk(job("M6", "5 mm", "ms", thicknessMm, false, TapSort.SECOND)).cuttingTorqueNm(),
        1e-12);
  }

  @Test
  void depthBeyondOneAndAHalfDiametersAdds() {
    double usual = risk(job("M6", "5 mm", "ms", 9, false, TapSort.SECOND)).cuttingTorqueNm();
    TapRisk deep = risk(job("M6", "5 mm", "ms", 15, false, TapSort.SECOND));

    // One diameter beyond: 0 to 50 per cent, the middle a quarter.
    assertEquals(1.25, deep.cuttingTorqueNm() / usual, 1e-9);
    assertTrue(
        deep.assumed().stream()
            .anyMatch(
                assumed ->
                    assumed.what().startsWith("extra torque")
                        && assumed.figure().equals("0 to 50 per cent")
                        && assumed.source().standing().words().startsWith("common practice")));
  }

  @Test
  void curesAreWorkedOutAnewAndComeLowestFirst() {
    List<DrillSize> held =
        List.of(OurTooling.drill("5 mm"), OurTooling.drill("5.1 mm"), OurTooling.drill("5.8 mm"));
    TapJob job = job("M6", "5 mm", "EN1A", 15, true, TapSort.SECOND);

    TapRisk risk = OurTooling.risks().of(job, held);

    List<String> words = risk.cures().stream().map(TapCure::words).toList();
    assertTrue(words.contains("drill 5.1 mm: 69 per cent of thread"), words.toString());
    assertFalse(words.toString().contains("5.8"), "15 per cent of thread is no thread: " + words);
    assertTrue(words.contains("use a spiral pointed tap"), words.toString());
    assertTrue(
        words.stream().anyMatch(cure -> cure.startsWith("tap 9.00 mm (0.354 in) deep")),
        words.toString());
    double before = 0;
    for (TapCure cure : risk.cures()) {
      assertTrue(cure.ratio() < risk.ratio() && cure.ratio() >= before, cure.toString());
      assertEquals(OurTooling.risks().of(cure.job(), held).ratio(), cure.ratio(), 1e-12);
      before = cure.ratio();
    }
  }

  @Test
  void withoutADrillItSaysWhatAnEasierThreadWouldBring() {
    List<String> words =
        risk(job("M6", "5 mm", "stainless", 6, false, TapSort.BOTTOMING)).cures().stream()
            .map(TapCure::words)
            .toList();

    assertTrue(
        words.stream().anyMatch(cure -> cure.contains("would leave 60 per cent of thread")),
        words.toString());
    assertTrue(
        words.stream().anyMatch(cure -> cure.contains("second tap first")), words.toString());
    // A spiral point is of no use in a blind hole.
    assertFalse(words.toString().contains("pointed"), words.toString());
    assertTrue(words.toString().contains("make the part of"), words.toString());
  }

  @Test
  void everyFigureHasItsSourceAndAnEmptyPromiseIsNeverMade() {
    TapRisk risk = risk(job("2 BA", "5/32", "LG2", 8, false, TapSort.TAPER));

    assertTrue(risk.assumed().get(0).what().contains("gunmetal, taken as bronze"));
    assertEquals("2300 to 3500 MPa", risk.assumed().get(0).figure());
    assertTrue(risk.assumed().size() >= 5);
    assertTrue(risk.notes().get(0).startsWith("a guide only"));
    assertTrue(
        risk(job("M6", "4.5 mm", "ms", 6, false, TapSort.SPIRAL_POINT)).notes().stream()
            .anyMatch(note -> note.contains("they pack")));
    assertTrue(
        risk(job("M6", "4.5 mm", "ms", 6, false, TapSort.SECOND)).notes().stream()
            .anyMatch(note -> note.contains("more than 100 per cent")));
  }

  @Test
  void materialWithoutAFigureIsRefusedWithThoseThatHaveOne() {
    MeasureException refused =
        assertThrows(
            MeasureException.class,
            () -> risk(job("M6", "5 mm", "titanium", 6, false, TapSort.SECOND)));

    assertTrue(refused.getMessage().contains("brass"), refused.getMessage());
    assertTrue(OurTooling.risks().materials().contains(OurTooling.material("gunmetal")));
    assertFalse(OurTooling.risks().materials().contains(OurTooling.material("titanium")));
  }

  @ParameterizedTest
  @ValueSource(ints = {-1, 0, 1, 7})
  void noTapHasThatManyFlutes(int flutes) {
    TapJob job = job("M6", "5 mm", "ms", 6, false, TapSort.SECOND);
    assertThrows(
        MeasureException.class,
        () ->
            new TapJob(
                job.thread(),
                job.hole(),
                job.material(),
                job.depth(),
                false,
                job.tap(),
                Optional.of(flutes)));
  }

  @Test
  void impossibleHolesAndDepths() {
    TapJob job = job("M6", "5 mm", "ms", 6, false, TapSort.SECOND);
    assertThrows(MeasureException.class, () -> job.withHole(Length.ofMillimetres(6)));
    assertThrows(MeasureException.class, () -> job.withHole(Length.ZERO));
    assertThrows(MeasureException.class, () -> job.withDepth(Length.ZERO));
  }

  /** Over a seeded stream of jobs: more metal, harder metal, deeper holes never lower the ratio. */
  @Test
  void laws() {
    Random random = new Random(7);
    List<String> threads = List.of("M2", "M6", "M10x1", "2 BA", "10 BA", "1/4 x 40 ME", "1/4 BSW");
    for (int i = 0; i < 500; i++) {
      var thread = OurTooling.thread(threads.get(random.nextInt(threads.size())));
      double percent = 30 + 60 * random.nextDouble();
      TapJob job =
          new TapJob(
              thread,
              thread.holeFor(percent),
              OurTooling.material("mild steel"),
              Length.ofMillimetres(0.2 + 30 * random.nextDouble()),
              random.nextBoolean(),
              TapSort.values()[random.nextInt(5)],
              Optional.of(2 + random.nextInt(5)));
      TapRisk risk = risk(job);
      assertTrue(risk.ratioLeast() <= risk.ratio() && risk.ratio() <= risk.ratioMost());
      assertTrue(risk(job.withHole(thread.holeFor(percent + 5))).ratio() > risk.ratio());
      assertTrue(risk(job.withDepth(job.depth().times(2))).ratio() >= risk.ratio());
      assertTrue(risk(job.withMaterial(OurTooling.material("tool steel"))).ratio() > risk.ratio());
    }
  }
}
