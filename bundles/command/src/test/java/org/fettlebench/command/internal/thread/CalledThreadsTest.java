package org.fettlebench.command.internal.thread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.fettlebench.command.internal.AllCommands;
import org.fettlebench.command.internal.FreshClub;
import org.fettlebench.command.internal.Session;
import org.fettlebench.command.internal.Session.Answer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every command that takes a thread understands the same writing and refuses alike. */
class CalledThreadsTest {
  @TempDir static Path folder;
  private static FreshClub club;
  private static Session session;

  @BeforeAll
  static void open() {
    club = new FreshClub(folder);
    session = new Session(AllCommands.of(club, folder));
  }

  @AfterAll
  static void close() {
    club.close();
  }

  private Answer type(String line) {
    return session.type(line.split(" "));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "thread show %s",
        "thread limits %s",
        "thread strength %s",
        "thread wires %s",
        "thread pairs %s",
        "hole plan %s",
        "tap risk %s --material brass --depth 5mm",
        "head show %s",
        "head sink %s",
        "head scale %s --scale 1:8",
        "joint edge %s",
        "joint length %s --passed 5mm --blind 8mm",
        "drill speed %s --operation tap --material brass"
      })
  void namesTheNearestOrSaysWhichKindItIs(String command) {
    Answer slip = type(command.formatted("2BX"));
    assertEquals(2, slip.status());
    assertTrue(slip.err().contains("no thread series has \"2BX\"; near it are 2 BA"), slip.err());
    Answer taper = type(command.formatted("Rc1/4"));
    assertEquals(2, taper.status());
    assertTrue(taper.err().contains("taper pipe threads (ISO 7-1"), taper.err());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "thread show M6-LH",
        "thread limits M6-LH",
        "thread strength M6-LH",
        "thread wires M6-LH",
        "hole plan M6-LH",
        "tap risk M6-LH --material brass --depth 5mm",
        "head show M6-LH"
      })
  void keepsTheHand(String command) throws IOException {
    Answer told = type(command);
    assertTrue(told.out().contains("note: left-hand"), told.out() + told.err());
    assertTrue(type(command + " --json").out().contains("\"leftHand\" : true"));
    assertFalse(type(command.replace("-LH", "")).out().contains("left-hand"));
  }

  @Test
  void showsLengthAndClass() throws IOException {
    Answer told = type("thread show 1/4-20UNC-2A x 1 1/2 LH --json");
    Map<?, ?> thread = (Map<?, ?>) ((List<?>) JSON.std.mapFrom(told.out()).get("threads")).get(0);
    assertEquals("1/4-20 UNC", thread.get("designation"));
    assertEquals("2A", thread.get("threadClass"));
    assertEquals(true, thread.get("leftHand"));
    assertEquals("38.1", thread.get("lengthMm").toString());
  }

  @Test
  void asksForTheThreadAloneWhereAHandSaysNothing() {
    Answer told = type("thread pairs M6-LH");
    assertEquals(2, told.status());
    assertTrue(told.err().contains("here it is M6 alone"), told.err());
  }

  @Test
  void theVersionIsWhatAboutTells() {
    assertEquals(type("about").out(), type("--version").out());
  }
}
