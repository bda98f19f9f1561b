package org.fettlebench.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.fettlebench.launcher.fake.FakeSuite;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Calls on the command line in processes of their own, with no screen. */
@Timeout(90)
class CommandProcessTest {
  @TempDir Path dir;
  private Path data;
  private FakeDistribution suite;

  @BeforeEach
  void make() throws IOException {
    data = dir.resolve("club data");
    suite = FakeDistribution.make(dir.resolve("the suite"));
  }

  private Finished call(String... words) throws IOException {
    ProcessBuilder builder = suite.launcher(data, words).directory(dir.toFile());
    builder.environment().remove("DISPLAY");
    builder.environment().remove("WAYLAND_DISPLAY");
    return Finished.of(builder, "a line of input");
  }

  @Test
  void answersWithoutAScreenAndWithNothingElseOnTheOutput() throws IOException {
    Finished finished = call("say", "½ in", "");
    assertEquals(new Finished(2, "[½ in, ] in " + dir.toRealPath() + "\n", ""), finished);
    String log = Files.readString(data.resolve("log/fettlebench.log"));
    assertTrue(log.contains("stray words"), log);
    assertTrue(Files.exists(data.resolve("stopped")), "the framework was not stopped");
  }

  @Test
  void readsTheInput() throws IOException {
    assertEquals(new Finished(0, "a line of input", ""), call("copy"));
  }

  @Test
  void theSecondStartUsesTheCacheAndAChangedSuiteRenewsIt() throws IOException {
    assertEquals(1, call("say", "x").status());
    Path stamp = data.resolve("cache/suite.stamp");
    String before = Files.readString(stamp);
    assertEquals(1, call("say", "x").status());
    assertEquals(before, Files.readString(stamp));
    suite.list("11 fake.jar");
    assertEquals(1, call("say", "x").status());
    assertFalse(before.equals(Files.readString(stamp)));
  }

  @Test
  void aBundleThatIsMissingIsNamed() throws IOException {
    suite.list("10 fake.jar", "10 gone.jar");
    Finished finished = call("say");
    assertEquals(Main.CANNOT_RUN, finished.status());
    assertTrue(finished.err().contains("gone.jar"), finished.err());
    assertEquals("", finished.out());
  }

  @Test
  void aModuleThatCannotStartIsToldAndHarmsNothing() throws IOException {
    Path modules = Files.createDirectories(data.resolve("modules"));
    FakeDistribution.jar(modules.resolve("bad.jar"), "bad.module", "no.such.Activator");
    Files.writeString(modules.resolve("torn.jar"), "no jar at all");
    Finished finished = call("say");
    assertEquals(0, finished.status());
    assertTrue(
        finished.err().contains("The module bad.module does not work; \"module list\" says why."),
        finished.err());
    assertTrue(finished.err().contains("torn.jar"), finished.err());
    assertEquals("[] in " + dir.toRealPath() + "\n", finished.out());
  }

  @Test
  void aModuleIsLetInAndRemovedWithItsJar() throws IOException {
    Path modules = Files.createDirectories(data.resolve("modules"));
    Path jar = modules.resolve("club.jar");
    suite.list();
    assertEquals(Main.CANNOT_RUN, call("say").status());
    FakeDistribution.jar(jar, "club.module", FakeSuite.class.getName());
    assertEquals(0, call("say").status());
    assertEquals(0, call("say").status());
    Files.delete(jar);
    assertEquals(Main.CANNOT_RUN, call("say").status());
  }

  @Test
  void anotherCallIsWaitedForAndThenNamed() throws Exception {
    Process holder = suite.launcher(data, "wait").start();
    try {
      Eventually.exists(data.resolve("waiting"));
      Finished finished = call("say");
      assertEquals(Main.CANNOT_RUN, finished.status());
      assertTrue(finished.err().contains("process " + holder.pid()), finished.err());
    } finally {
      holder.destroy();
    }
    assertTrue(holder.waitFor(20, TimeUnit.SECONDS), "asked to end, it goes on");
    assertTrue(Files.exists(data.resolve("stopped")), "asked to end, it did not stop cleanly");
    assertEquals(0, call("say").status());
  }

  @Test
  void badUseIsTold() throws IOException {
    Finished finished = call("say", "--data", "twice");
    assertEquals(Main.BAD_USE, finished.status());
    assertTrue(finished.err().contains("twice"), finished.err());
  }

  @Test
  void aWindowWithoutAScreenIsRefusedInWords() throws IOException {
    Finished finished = call("desktop");
    assertEquals(Main.CANNOT_RUN, finished.status());
    assertTrue(finished.err().contains("no screen"), finished.err());
    assertTrue(finished.err().contains("command line"), finished.err());
  }
}
