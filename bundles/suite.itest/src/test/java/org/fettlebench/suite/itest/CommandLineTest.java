package org.fettlebench.suite.itest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command line without a window and without a screen. */
class CommandLineTest {
  @TempDir Path dir;
  private Suite suite;

  @BeforeEach
  void make() {
    suite = new Suite(dir.resolve("club data"));
  }

  @Test
  void tellsWhatItKnows() {
    Suite.Finished help = suite.call("--help");
    assertEquals(0, help.status(), help.toString());
    for (String word :
        List.of("kit check", "stock receive", "thread show", "drill near", "hole plan")) {
      assertTrue(help.out().contains(word), word + " is not in " + help.out());
    }
    assertEquals("", help.err());
  }

  @Test
  void answersMachinesWithNothingButJson() {
    Suite.Finished shown = suite.call("thread", "show", "2 BA", "--json");
    assertEquals(0, shown.status(), shown.toString());
    assertEquals("", shown.err());
    // 2 BA: 4.7 mm, BS 93.
    assertEquals(4.7, ((Number) shown.list("threads").get(0).get("majorMm")).doubleValue(), 0.0005);
  }

  @Test
  void badUseIsStatusTwo() {
    Suite.Finished unknown = suite.call("thread", "show", "no such thread");
    assertEquals(2, unknown.status(), unknown.toString());
    assertTrue(unknown.err().contains("no such thread"), unknown.toString());
    assertEquals(2, suite.call("no-such-word").status());
  }

  @Test
  void theDemoIsCheckedAndSomethingIsWanting() {
    Suite.Finished checked = suite.call("demo", "check", "--json");
    assertEquals(1, checked.status(), checked.toString());
    assertTrue(checked.json().size() > 1, checked.out());
  }
}
