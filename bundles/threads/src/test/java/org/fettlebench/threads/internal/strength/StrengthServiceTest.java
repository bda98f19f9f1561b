package org.fettlebench.threads.internal.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.MeasureException;
import org.fettlebench.tables.FixedTables;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.fettlebench.tables.Table;
import org.fettlebench.tables.TableFile;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadSeries;
import org.fettlebench.threads.internal.OurThreads;
import org.fettlebench.threads.internal.ThreadRegistry;
import org.fettlebench.threads.strength.GivesWay;
import org.fettlebench.threads.strength.JointStrength;
import org.fettlebench.threads.strength.Material;
import org.fettlebench.threads.strength.ThreadedJoint;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What gives way first, worked by hand, and how strength follows size. */
@TestInstance(Lifecycle.PER_CLASS)
class StrengthServiceTest {
  private final ThreadRegistry threads = OurThreads.fresh();

  private final StrengthService service = new StrengthService(threads);

  private Material material(double tensileMpa) {
    return new Material(
        "m",
        "m",
        tensileMpa,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        new Source("test", Standing.MEASURED));
  }

  private ThreadedJoint joint(String thread, double screw, double nut, double engagedMm) {
    return new ThreadedJoint(
        threads.find(thread).orElseThrow(),
        Optional.empty(),
        material(screw),
        material(nut),
        Length.ofMillimetres(engagedMm),
        Optional.empty());
  }

  /**
   * M6 6g in 6H: screw pi x 5.153 x (0.5 + 0.57735 x (5.212 - 5.153)) = 8.6456 mm2 a mm; nut pi x
   * 5.794 x (0.5 + 0.57735 x (5.794 - 5.500)) = 12.1908 mm2 a mm.
   */
  @ParameterizedTest
  @CsvSource({
    "400, 400, 6, SCREW_BREAKS, 4.6549",
    "400, 400, 3, SCREW_THREAD_STRIPS, 4.6549",
    "800, 300, 6, NUT_THREAD_STRIPS, 8.8031"
  })
  void whatGivesWayFirst(
      double screw, double nut, double engagedMm, GivesWay expected, double leastMm) {
    JointStrength strength = service.of(joint("M6", screw, nut, engagedMm));
    assertEquals(8.6456 * engagedMm, strength.screwShearAreaMm2(), 1e-3 * engagedMm);
    assertEquals(12.1908 * engagedMm, strength.nutShearAreaMm2(), 1e-3 * engagedMm);
    assertEquals(expected, strength.givesWay());
    assertEquals(leastMm, strength.leastEngagement().millimetres(), 2e-3);
  }

  /** With equal materials the least engagement is the handbook's 2 At / (pi K (...)). */
  @Test
  void neverStripsFromTheLeastEngagementOn() {
    for (ThreadSeries series : threads.series()) {
      for (ScrewThread thread : series.threads()) {
        double least =
            service.of(joint(thread.designation(), 500, 400, 10)).leastEngagement().millimetres();
        String name = thread.designation() + " " + least;
        assertEquals(
            GivesWay.SCREW_BREAKS,
            service.of(joint(thread.designation(), 500, 400, least + 1e-5)).givesWay(),
            name);
        assertTrue(
            service.of(joint(thread.designation(), 500, 400, least - 1e-4)).givesWay()
                != GivesWay.SCREW_BREAKS,
            name);
      }
    }
  }

  /** 2 BA: mean of 4.215 and 3.73 mm is 3.9725 mm, 12.394 mm2. */
  @Test
  void countsTheMeanDiameterWhereNoStandardHasAnArea() {
    var area = service.stressArea(threads.find("2 BA").orElseThrow());
    assertEquals(12.394, area.mm2(), 5e-4);
    assertEquals(Standing.COMMON_PRACTICE, area.source().standing());
  }

  @Test
  void takesTheHoleThatIsThere() {
    ThreadedJoint usual = joint("M6", 500, 500, 6);
    ThreadedJoint large =
        new ThreadedJoint(
            usual.thread(),
            Optional.of("6H"),
            usual.screw(),
            usual.nut(),
            usual.engagement(),
            Optional.of(Length.ofMillimetres(5.3)));
    assertTrue(service.of(large).screwThreadStripsN() < service.of(usual).screwThreadStripsN());
    assertEquals(service.of(large).nutThreadStripsN(), service.of(usual).nutThreadStripsN(), 1e-9);
  }

  @Test
  void refusesWhatCannotBe() {
    ThreadedJoint joint = joint("M6", 500, 500, 6);
    assertThrows(MeasureException.class, () -> joint("M6", 500, 500, 0));
    assertThrows(MeasureException.class, () -> joint("M6", Double.NaN, 500, 6));
    assertThrows(MeasureException.class, () -> joint("M6", 0, 500, 6));
    assertThrows(
        MeasureException.class,
        () ->
            new ThreadedJoint(
                joint.thread(),
                Optional.empty(),
                joint.screw(),
                joint.nut(),
                joint.engagement(),
                Optional.of(Length.ofMillimetres(6))));
    ThreadedJoint stripped =
        new ThreadedJoint(
            joint.thread(),
            Optional.empty(),
            joint.screw(),
            joint.nut(),
            joint.engagement(),
            Optional.of(Length.ofMillimetres(5.9)));
    assertTrue(
        assertThrows(MeasureException.class, () -> service.of(stripped))
            .getMessage()
            .contains("5.900 mm is too large"));
    ScrewThread thread = joint.thread();
    assertThrows(MeasureException.class, () -> service.torqueNm(thread, 0, 0.15));
    assertThrows(MeasureException.class, () -> service.torqueNm(thread, 1000, Double.NaN));
  }

  @Test
  void leavesAFaultyTableOutAndFindsByAnyWriting() throws Exception {
    String head =
        "# kind: materials\n# id: %s\n# title: t\n# source: s\n# standing: from memory\n"
            + "id,name,tensile_mpa,tensile_ksi\n";
    Table good = table(head.formatted("good") + "club-brass,Our brass rod,300,\nimp,Iron,,20\n");
    Table bad = table(head.formatted("bad") + "a,A,0,\nb,B,,\n");
    List<String> faults = new ArrayList<>();
    MaterialRegistry materials =
        new MaterialRegistry(
            FixedTables.of(List.of(good, bad)), (table, fault) -> faults.add(fault.getMessage()));
    assertEquals("club-brass", materials.find("CLUB Brass").orElseThrow().id());
    assertEquals(1, faults.size());
    assertTrue(faults.get(0).contains("line 7") && faults.get(0).contains("line 8"), faults.get(0));
    assertEquals("club-brass", materials.find("our brass rod").orElseThrow().id());
    assertEquals(List.of("imp"), materials.near("iron").stream().map(Material::id).toList());
    assertEquals(137.895, materials.find("imp").orElseThrow().tensileMpa(), 5e-4);
    assertEquals(68.948, materials.find("imp").orElseThrow().threadShearMpa(), 5e-4);
    assertEquals(Optional.empty(), materials.find("unobtainium"));
  }

  private Table table(String text) throws java.io.IOException {
    return TableFile.read("test", "club", new java.io.StringReader(text));
  }
}
