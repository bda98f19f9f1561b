package org.fettlebench.kits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.fettlebench.kits.FaultyFileException.Fault;
import org.fettlebench.kits.Finding.Weight;
import org.fettlebench.measure.Length;
import org.fettlebench.tooling.ClearanceFit;
import org.fettlebench.tooling.TapLead;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RecordsTest {
  private static final Fastener SCREW =
      new Fastener("2 BA", "hexagon", Optional.of(Length.ofInchFraction(1, 2)), "steel");

  private static Joint joint(String name, int count) {
    return new Joint(
        name,
        "",
        count,
        SCREW,
        Optional.of(
            new Joint.ClearanceHole(ClearanceFit.CLOSE, Optional.empty(), Optional.empty())),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        false,
        "",
        0);
  }

  private static void refused(String said, Runnable made) {
    assertEquals(said, assertThrows(IllegalArgumentException.class, made::run).getMessage());
  }

  @Test
  void aFastenerSaysWhatItIs() {
    assertEquals("2 BA hexagon x 1/2 in, steel", SCREW.title());
    assertEquals("M4 hexagon nut", new Fastener("M4", "hexagon-nut", Optional.empty(), "").title());
    assertEquals(
        "M4 socket cap x 12.5 mm",
        new Fastener("M4", "socket-cap", Optional.of(Length.ofMillimetres(12.5)), "").title());
  }

  @Test
  void whatCannotBeIsRefused() {
    refused("count of joint gland 0 is below 1", () -> joint("gland", 0));
    refused("name of a joint is blank: give it a name", () -> joint(" ", 1));
    refused(
        "length of a fastener 0 mm is not above 0 mm",
        () -> new Fastener("2 BA", "hexagon", Optional.of(Length.ZERO), ""));
    refused("number counted -1 is below 0", () -> new Kit.BagLine(SCREW, 4, Optional.of(-1)));
    refused(
        "two joints are called gland",
        () ->
            new Kit(
                "Trial",
                Optional.empty(),
                0.95,
                List.of(joint("gland", 1), joint("gland", 2)),
                List.of()));
    refused(
        "figure allowanceMm is NaN, no finite number",
        () -> new Finding.Figure("allowanceMm", Double.NaN));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1, -0.5, 95, Double.NaN, Double.POSITIVE_INFINITY})
  void aConfidenceThatIsNoChanceIsRefused(double confidence) {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new Kit("Trial", Optional.empty(), confidence, List.of(joint("gland", 1)), List.of()));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 100.5, -5, Double.NaN, Double.POSITIVE_INFINITY})
  void aPercentOutOfRangeIsRefused(double percent) {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new Joint.TappedHole(
                "brass",
                Length.ofMillimetres(6),
                Optional.empty(),
                TapLead.SECOND,
                Optional.of(percent),
                Optional.empty()));
  }

  @Test
  void whatWasCountedIsReliedOn() {
    assertEquals(4, new Kit.BagLine(SCREW, 4, Optional.empty()).there());
    assertEquals(3, new Kit.BagLine(SCREW, 4, Optional.of(3)).there());
  }

  @Test
  void faultsAndFindingsSpeakInOneLine() {
    assertEquals(
        "a.kit.toml:3:9: \"2 BX\" is no thread. Did you mean 2 BA?",
        new Fault("a.kit.toml", 3, 9, "2 BX", "is no thread", "Did you mean 2 BA?").toString());
    assertEquals(
        "It is tight. [from memory]",
        Finding.of(Weight.CAUTION, "seat", "It is tight.").standing("from memory").spoken());
  }
}
