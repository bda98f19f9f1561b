package org.fettlebench.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UsageTest {
  private static final Usage USAGE =
      Usage.of("drill near", "Shows the drills next to a size.", "drill near 5/32")
          .needsMany("SIZE", "a length")
          .may("SYSTEM", "a drill system")
          .option("--count", "N", "how many")
          .flag("--held", "only held ones");

  @Test
  void synopsisShowsWhatMustAndWhatMayFollow() {
    assertEquals("drill near SIZE... [SYSTEM] [--count N] [--held]", USAGE.synopsis());
    assertEquals("drill", USAGE.group());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "Drill near", "drill  near", " drill", "drill_near", "drill near "})
  void refusesWordsThatCannotBeTyped(String words) {
    assertThrows(IllegalArgumentException.class, () -> Usage.of(words, "Purpose.", words));
  }

  @Test
  void refusesAnExampleOfAnotherCommand() {
    assertThrows(
        IllegalArgumentException.class, () -> Usage.of("drill near", "Purpose.", "drill show 22"));
    assertThrows(IllegalArgumentException.class, () -> Usage.of("drill near", " ", "drill near"));
  }

  @Test
  void refusesTwoOperandsThatTakeMany() {
    assertThrows(IllegalArgumentException.class, () -> USAGE.mayMany("MORE", "more"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"count", "-c", "--Count", "--", "--count n"})
  void refusesOptionsThatCannotBeTyped(String name) {
    assertThrows(IllegalArgumentException.class, () -> USAGE.flag(name, "purpose"));
  }
}
