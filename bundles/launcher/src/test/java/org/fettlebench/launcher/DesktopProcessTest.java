package org.fettlebench.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A window that holds the data, and calls that are handed to it. */
@Timeout(90)
class DesktopProcessTest {
  @TempDir Path dir;
  private Path data;
  private FakeDistribution suite;
  private Process window;

  @BeforeEach
  void open() throws IOException {
    assumeTrue(Surroundings.here().hasScreen(), "these tests want a screen; verify makes one");
    data = dir.resolve("club data");
    suite = FakeDistribution.make(dir.resolve("suite"));
    window = suite.launcher(data, "desktop").start();
    Eventually.exists(data.resolve("shown"));
  }

  @AfterEach
  void close() throws InterruptedException {
    if (window != null) {
      window.destroyForcibly().waitFor();
    }
  }

  private Finished call(String... words) throws IOException {
    return Finished.of(suite.launcher(data, words).directory(dir.toFile()), "typed");
  }

  private void ended() throws InterruptedException {
    assertTrue(window.waitFor(20, TimeUnit.SECONDS), "the window's process goes on");
  }

  @Test
  void callsAreHandedOver() throws IOException {
    assertEquals(new Finished(1, "[½] in " + dir.toRealPath() + "\n", ""), call("say", "½"));
    assertEquals(new Finished(0, "typed", ""), call("copy"));
    assertEquals("not known\n", call("something else").err());
  }

  @Test
  void aSecondWindowBringsTheFirstToTheFront() throws IOException {
    Finished second = call("desktop");
    assertEquals(0, second.status());
    assertTrue(second.out().contains("brought to the front"), second.out());
    assertTrue(Files.exists(data.resolve("fronted")));
  }

  @Test
  void closingTheWindowEndsCleanly() throws Exception {
    assertEquals(0, call("close").status());
    ended();
    assertEquals(0, window.exitValue());
    assertTrue(Files.exists(data.resolve("stopped")));
    assertTrue(Files.notExists(data.resolve("run/socket")));
  }

  @Test
  void askedToEndItEndsCleanly() throws Exception {
    window.destroy(); // SIGTERM
    ended();
    assertTrue(Files.exists(data.resolve("stopped")));
    assertEquals(0, call("say").status());
  }

  @Test
  void afterAKillTheNextStartFindsTheDataFree() throws Exception {
    window.destroyForcibly().waitFor();
    assertEquals(0, call("say").status());
    Files.delete(data.resolve("shown"));
    window = suite.launcher(data, "desktop").start();
    Eventually.exists(data.resolve("shown"));
    assertEquals(0, call("say").status());
  }
}
