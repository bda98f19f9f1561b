package org.fettlebench.desktop.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.fettlebench.desktop.Page;
import org.fettlebench.modules.Faults;
import org.fettlebench.testkit.ScreenRobot;
import org.junit.jupiter.api.Assumptions;

/** A window with a robot before it; leaves a picture when the test fails. */
final class TrialWindow {
  final PageRegistry registry = new PageRegistry();
  final List<String> faults = new ArrayList<>();
  final Display display = Display.getDefault();
  final ScreenRobot robot = new ScreenRobot(display);
  final Memory memory;
  final MainWindow window;

  /** What a test does with the window. */
  interface Deed {
    void run(TrialWindow trial) throws Exception;
  }

  private TrialWindow(Path data, List<Page> pages) {
    memory = new Memory(data.resolve("desktop.properties"));
    memory.put("theme", memory.get("theme", "light"));
    pages.forEach(registry::add);
    Map<String, String> properties = Map.of("fettlebench.data", data.toString());
    Faults keep = (page, doing, cause) -> faults.add(doing + ": " + cause.getMessage());
    window = new MainWindow(display, Wishes.from(properties::get), memory, keep);
  }

  static void run(String name, Path data, List<Page> pages, Deed deed) throws Exception {
    boolean screen = !SWT.getPlatform().equals("gtk") || System.getenv("DISPLAY") != null;
    Assumptions.assumeTrue(screen, "no DISPLAY is set, so there is no window to test");
    TrialWindow trial = new TrialWindow(data, pages);
    trial.window.open(trial.registry);
    trial.window.shell().forceActive();
    trial.robot.pumpUntil("the window is active", trial::active);
    try {
      deed.run(trial);
    } catch (Exception | Error failure) {
      trial.robot.snapshot(trial.window.shell(), Path.of("target", name + ".png"));
      throw failure;
    } finally {
      trial.window.shell().close();
      trial.window.end(trial.registry);
      trial.display.setRuntimeExceptionHandler(
          failure -> {
            throw failure;
          });
      trial.display.setErrorHandler(
          failure -> {
            throw failure;
          });
    }
  }

  private boolean active() {
    return display.getActiveShell() == window.shell();
  }
}
