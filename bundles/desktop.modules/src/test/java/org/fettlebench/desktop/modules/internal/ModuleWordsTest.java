package org.fettlebench.desktop.modules.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.fettlebench.desktop.widgets.VerdictMark;
import org.fettlebench.modules.Module;
import org.junit.jupiter.api.Test;

class ModuleWordsTest {
  private final Module well = Trial.module("Club series", true, "working", List.of());
  private final Module faulty =
      Trial.module("Club rule", true, "working", List.of(Trial.fault("checking Gland", "oops")));
  private final Module ill =
      Trial.module("Club page", false, "lacks org.fettlebench.desktop", List.of());
  private final Module out = Trial.module("Old page", false, "left out", List.of());

  private final Module aside =
      Trial.module("Club series", false, "put aside: version 2.0.0 is here too", List.of());

  @Test
  void eachStateHasItsWordAndItsShape() {
    assertEquals("works", ModuleWords.word(well));
    assertEquals("works, with faults", ModuleWords.word(faulty));
    assertEquals("does not work", ModuleWords.word(ill));
    assertEquals("left out", ModuleWords.word(out));
    assertEquals("put aside", ModuleWords.word(aside));
    assertEquals(VerdictMark.STRUCK, ModuleWords.mark(ill));
    assertEquals(VerdictMark.OPEN, ModuleWords.mark(out));
  }

  @Test
  void theWorstIsSaidFirst() {
    assertEquals("Everything works, with 1 module added", ModuleWords.summary(List.of(well)));
    assertEquals(
        "1 module works but has gone wrong at something",
        ModuleWords.summary(List.of(well, faulty, out, aside)));
    assertEquals("One does not work: Club page", ModuleWords.summary(List.of(well, faulty, ill)));
    assertEquals("2 do not work", ModuleWords.summary(List.of(ill, ill)));
    assertEquals("Everything works, no module added", ModuleWords.summary(List.of()));
  }

  @Test
  void whatAModuleAddsIsCountedByKind() {
    Module module =
        Trial.adding(
            "thread series: Club 36 tpi",
            "thread series: Club 60 tpi",
            "page: Club evening",
            "command: club",
            "command: tea");
    assertEquals("thread series \u00d72, page, command \u00d72", ModuleWords.adds(module));
  }
}
