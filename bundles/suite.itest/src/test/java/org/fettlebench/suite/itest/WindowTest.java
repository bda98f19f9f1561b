package org.fettlebench.suite.itest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The window, and the command line through it. */
@Timeout(240)
class WindowTest {
  private static final String GOODS = "2 BA hexagon x 1/2 in steel";

  @TempDir Path dir;
  private Suite suite;
  private Process window;

  @BeforeEach
  void open() {
    assumeTrue(System.getenv("DISPLAY") != null, "wants a screen; verify makes one");
    suite = new Suite(dir.resolve("club data"));
    window = suite.openWindow();
  }

  @AfterEach
  void close() throws InterruptedException {
    if (window != null) {
      window.destroyForcibly().waitFor();
    }
  }

  @Test
  void everyModuleOfTheSuiteWorks() {
    Suite.Finished listed = suite.call("module", "list", "--all", "--json");
    assertEquals(0, listed.status(), listed.toString());
    List<Map<String, Object>> modules = listed.list("modules");
    assertTrue(modules.size() > 25, listed.out());
    assertEquals(
        List.of(),
        modules.stream()
            .filter(module -> !module.get("working").equals(true))
            .map(module -> module.get("symbolicName") + ": " + module.get("state"))
            .toList());
    for (String page : List.of("page: Kit check", "page: Stock", "page: Modules")) {
      assertTrue(listed.out().contains(page), page + " is not in " + listed.out());
    }
  }

  @Test
  void aSecondWindowBringsTheFirstToTheFront() {
    Suite.Finished second = Suite.finish(suite.builder("desktop"));
    assertEquals(0, second.status(), second.toString());
    assertTrue(second.out().contains("brought to the front"), second.toString());
    assertTrue(window.isAlive());
  }

  @Test
  void askedToEndItEndsCleanlyAndSoon() throws InterruptedException {
    assertEquals(0, suite.call("stock", "list").status());
    window.destroy(); // SIGTERM
    assertTrue(window.waitFor(20, TimeUnit.SECONDS), "the window's process goes on");
    assertTrue(Files.notExists(suite.data().resolve("run/socket")));
    assertEquals(0, suite.call("stock", "list").status());
  }

  @Test
  void acknowledgedMovementsAreThereAfterAKill() throws InterruptedException {
    AtomicInteger acknowledged = new AtomicInteger();
    Thread receiving = new Thread(() -> receiveUntilCutOff(acknowledged));
    receiving.start();
    Suite.eventually(() -> "movements are acknowledged", () -> acknowledged.get() >= 5);
    window.destroyForcibly().waitFor(); // SIGKILL, in the middle of a call
    receiving.join();
    int there = quantity();
    // The call that was cut off may have been booked without having been acknowledged.
    assertTrue(
        there == acknowledged.get() || there == acknowledged.get() + 1,
        there + " in stock, " + acknowledged + " acknowledged");
    window = suite.openWindow();
    assertEquals(there, quantity());
  }

  private void receiveUntilCutOff(AtomicInteger acknowledged) {
    while (window.isAlive() && receive().status() == 0) {
      acknowledged.incrementAndGet();
    }
  }

  private Suite.Finished receive() {
    return suite.call("stock", "receive", GOODS, "1", "--place", "Cabinet / Drawer 3");
  }

  private int quantity() {
    return suite.call("stock", "list", "--json").list("lines").stream()
        .mapToInt(line -> ((Number) line.get("quantity")).intValue())
        .sum();
  }
}
