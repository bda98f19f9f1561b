package org.fettlebench.sample.club;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.fettlebench.testkit.FelixHarness;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleException;

/** The module comes and goes while the suite's own window is open, in a real framework. */
class OpenWindowTest {
  private static final String TOOLKIT =
      "org.eclipse.swt,org.eclipse.swt.accessibility,org.eclipse.swt.custom,org.eclipse.swt.dnd,"
          + "org.eclipse.swt.events,org.eclipse.swt.graphics,org.eclipse.swt.layout,"
          + "org.eclipse.swt.printing,org.eclipse.swt.widgets";
  private static final int LOOK_AGAIN_MS = 20;
  private static final int LOOKS = 1000;

  @TempDir Path data;
  private final List<String> seen = new ArrayList<>();
  private Display display;

  @Test
  @Timeout(120)
  void itsPageAppearsInTheOpenWindowAndGoes() throws Exception {
    boolean screen = !SWT.getPlatform().equals("gtk") || System.getenv("DISPLAY") != null;
    Assumptions.assumeTrue(screen, "no DISPLAY is set, so there is no window to test");
    Files.createDirectories(data.resolve("modules"));
    display = Display.getDefault();
    try (FelixHarness felix = suite()) {
      final Bundle club = felix.bundle("org.fettlebench.sample.club").orElseThrow();
      Runnable close = () -> step("gone", () -> shell().close());
      Runnable stop = () -> step("there", () -> stop(club, close));
      when(false, () -> step("open without it", () -> start(club, stop)));
      Callable<?> window = felix.await(Callable.class, "(fettlebench.main=desktop)");
      assertEquals(0, window.call());
    }
    assertEquals(List.of("open without it", "there", "gone"), seen);
  }

  private FelixHarness suite() {
    FelixHarness felix =
        FelixHarness.sharing()
            .packages(TOOLKIT)
            .property("fettlebench.data", data.toString())
            .start();
    felix.install("org.fettlebench.sample.club");
    felix.start(
        "org.fettlebench.measure",
        "org.fettlebench.drawing",
        "org.fettlebench.tables.api",
        "org.fettlebench.threads.api",
        "org.fettlebench.tooling.api",
        "org.fettlebench.fasteners.api",
        "org.fettlebench.fits.api",
        "org.fettlebench.holes.api",
        "org.fettlebench.castings.api",
        "org.fettlebench.club.api",
        "org.fettlebench.kits.api",
        "org.fettlebench.command.api",
        "org.fettlebench.modules.api",
        "org.fettlebench.modules",
        "org.fettlebench.desktop.api",
        "org.fettlebench.desktop.widgets",
        "org.fettlebench.desktop");
    return felix;
  }

  private void start(Bundle club, Runnable next) throws BundleException {
    club.start();
    when(true, next);
  }

  private void stop(Bundle club, Runnable next) throws BundleException {
    club.stop();
    when(false, next);
  }

  /** What a step does. */
  private interface Deed {
    void run() throws Exception;
  }

  private void step(String name, Deed deed) {
    seen.add(name);
    try {
      deed.run();
    } catch (Exception failure) {
      throw new AssertionError(name, failure);
    }
  }

  /** Goes on, from within the window's own turn, as soon as the page is listed or not. */
  private void when(boolean listed, Runnable next) {
    look(listed, next, LOOKS);
  }

  private void look(boolean listed, Runnable next, int left) {
    if (isOpen() && isListed() == listed) {
      next.run();
    } else if (left > 0) {
      display.timerExec(LOOK_AGAIN_MS, () -> look(listed, next, left - 1));
    } else {
      shell().close();
    }
  }

  private boolean isOpen() {
    return Arrays.stream(display.getShells()).anyMatch(shell -> shell.getMenuBar() != null);
  }

  private Shell shell() {
    return Arrays.stream(display.getShells())
        .filter(shell -> shell.getMenuBar() != null)
        .findFirst()
        .orElseThrow();
  }

  private boolean isListed() {
    return isOpen()
        && names(shell().getMenuBar()).stream().anyMatch(n -> n.startsWith("Club night"));
  }

  private static List<String> names(Menu menu) {
    List<String> names = new ArrayList<>();
    for (MenuItem item : menu.getItems()) {
      names.add(item.getText());
      if (item.getMenu() != null) {
        names.addAll(names(item.getMenu()));
      }
    }
    return names;
  }
}
