package org.fettlebench.sample.club;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.fettlebench.kits.Fastener;
import org.fettlebench.kits.Finding;
import org.fettlebench.kits.Holdings;
import org.fettlebench.kits.Joint;
import org.fettlebench.kits.JointCase;
import org.fettlebench.kits.Kit;
import org.fettlebench.measure.Length;
import org.fettlebench.tables.Source;
import org.fettlebench.tables.Standing;
import org.fettlebench.threads.ScrewThread;
import org.fettlebench.threads.ThreadForm;
import org.fettlebench.tooling.TapLead;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NoSmallScrewsInIronTest {
  // Major and effective diameters of BS 93.
  @ParameterizedTest
  @CsvSource({
    "9, 1.9, 0.39, 1.665, cast iron, 1",
    "9, 1.9, 0.39, 1.665, Iron, 1",
    "9, 1.9, 0.39, 1.665, brass, 0",
    "8, 2.2, 0.43, 1.94, cast iron, 0",
    "7, 2.5, 0.48, 2.21, cast iron, 0"
  })
  void asksForCareBelow8BaInIron(
      String size, double major, double pitch, double effective, String material, int findings) {
    double minor = 2 * effective - major;
    ScrewThread thread =
        new ScrewThread(
            "BA",
            size,
            size + " BA",
            ThreadForm.BRITISH_ASSOCIATION,
            Length.ofMillimetres(major),
            Length.ofMillimetres(pitch),
            Optional.empty(),
            Length.ofMillimetres(effective),
            Length.ofMillimetres(minor),
            Length.ofMillimetres(minor),
            new Source("BS 93", Standing.PUBLISHED));
    List<Finding> found = new NoSmallScrewsInIron().look(joint(thread, material));
    assertEquals(findings, found.size());
    found.forEach(finding -> assertEquals(Finding.Weight.CAUTION, finding.weight()));
  }

  private static JointCase joint(ScrewThread thread, String material) {
    Joint joint =
        new Joint(
            "Cover",
            "Pump body",
            4,
            new Fastener(thread.designation(), "hexagon", Optional.empty(), "steel"),
            Optional.empty(),
            Optional.of(
                new Joint.TappedHole(
                    material,
                    Length.ofMillimetres(5),
                    Optional.empty(),
                    TapLead.SECOND,
                    Optional.empty(),
                    Optional.empty())),
            Optional.empty(),
            Optional.empty(),
            false,
            "",
            0);
    return new JointCase(
        new Kit("Pump", Optional.empty(), 0.95, List.of(joint), List.of()),
        joint,
        thread,
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        new Holdings(List.of()));
  }
}
