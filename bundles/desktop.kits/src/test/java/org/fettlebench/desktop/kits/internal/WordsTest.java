package org.fettlebench.desktop.kits.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.fettlebench.fits.SeatAnswer;
import org.fettlebench.fits.SeatWords;
import org.fettlebench.kits.FaultyFileException.Fault;
import org.fettlebench.kits.JointReport;
import org.fettlebench.kits.KitReport;
import org.fettlebench.measure.LengthUnit;
import org.junit.jupiter.api.Test;

class WordsTest {
  private static final KitReport REPORT =
      Club.demo().book().look(Club.DEMO, KitBook.Shown.EMPTY).report().orElseThrow();

  private static JointReport joint(String name) {
    return REPORT.joints().stream()
        .filter(joint -> joint.joint().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static SeatAnswer seat(String name) {
    return joint(name).seat().orElseThrow();
  }

  /** 3/8 in boss: half is 4.7625 mm; a 2 BA head sweeps 9.502 mm, so 0.011 mm is to spare. */
  @Test
  void saysTheRoomInBothUnitsTheChosenOneFirst() {
    assertEquals(
        "The hole may be out 0.011 mm (0.4 thou); the method is expected within 0.49 mm"
            + " (0.019 in).",
        SeatWords.room(seat("barrel flange"), LengthUnit.MILLIMETRE));
    assertEquals(
        "The hole may be out 0.4 thou (0.011 mm); the method is expected within 0.019 in"
            + " (0.49 mm).",
        SeatWords.room(seat("barrel flange"), LengthUnit.INCH));
  }

  @Test
  void saysWhatLacksWhenTheHeadFouls() {
    String words = SeatWords.room(seat("packing box"), LengthUnit.MILLIMETRE);
    assertTrue(words.startsWith("Even with the hole just right it lacks 0.078 mm"), words);
  }

  @Test
  void answersNotYetWhileAnythingStandsInTheWay() {
    assertEquals("Not yet", KitAnswer.of(REPORT).word());
  }

  @Test
  void answersYesWhenAllClearsAndNothingIsMissing() {
    assertEquals("Yes", KitAnswer.of(only("column feet")).word());
    assertEquals("Yes, with care", KitAnswer.of(only("barrel flange")).word());
  }

  private static KitReport only(String name) {
    return new KitReport(REPORT.kit(), List.of(joint(name)), List.of());
  }

  @Test
  void leavesTheOutcomeOfACureToItsMark() {
    List<Choice> cures = Choice.cures(joint("barrel flange"));
    assertEquals(joint("barrel flange").cures().size(), cures.size());
    for (Choice cure : cures) {
      assertFalse(cure.sentence().contains("then it"), cure.sentence());
      assertTrue(Character.isUpperCase(cure.sentence().charAt(0)), cure.sentence());
    }
  }

  @Test
  void writesEveryFaultWithItsPlaceValueAndRemedy() {
    Fault one = new Fault("a.kit.toml", 3, 7, "0", "is no count", "write 1 or more");
    Fault two = new Fault("a.kit.toml", 9, 1, "", "the name is missing", "Give it.");
    assertEquals(
        "Line 3, column 7: \u201c0\u201d\n    Is no count.\n    Write 1 or more.\n\n"
            + "Line 9, column 1\n    The name is missing.\n    Give it.",
        FaultsList.words(List.of(one, two)));
    assertEquals("a.kit.toml has 2 faults", FaultsList.heading("a.kit.toml", List.of(one, two)));
  }
}
