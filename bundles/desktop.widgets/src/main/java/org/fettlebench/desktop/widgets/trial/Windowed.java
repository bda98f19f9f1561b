package org.fettlebench.desktop.widgets.trial;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.junit.jupiter.api.Assumptions;

/** Runs a test with a window of its own; leaves a picture of it when the test fails. */
public final class Windowed {
  private Windowed() {}

  /** Runs a test in the light theme at usual size. */
  public static void run(String name, Consumer<TrialDesk> test) {
    run(name, false, 1, test);
  }

  /**
   * Runs a test; it is skipped where there is no screen.
   *
   * @param name of the picture left in {@link #folder} when it fails
   * @param dark whether ink is light on a dark ground
   * @param scale 1.0 to 2.0
   */
  public static void run(String name, boolean dark, double scale, Consumer<TrialDesk> test) {
    boolean screen = !SWT.getPlatform().equals("gtk") || System.getenv("DISPLAY") != null;
    Assumptions.assumeTrue(screen, "no DISPLAY is set, so there is no window to test");
    Display display = Display.getDefault();
    try (TrialDesk desk = new TrialDesk(display, dark, scale)) {
      try {
        test.accept(desk);
      } catch (RuntimeException | Error failure) {
        desk.picture(folder().resolve(name + ".png"));
        throw failure;
      }
    }
  }

  /** Returns the folder for pictures, made if need be. */
  public static Path folder() {
    try {
      return Files.createDirectories(Path.of("target", "pictures"));
    } catch (java.io.IOException failure) {
      throw new java.io.UncheckedIOException(failure);
    }
  }

  /** Sends a key to a control, as the keyboard would. */
  public static void key(Control control, int keyCode, char character, int stateMask) {
    Event event = new Event();
    event.keyCode = keyCode;
    event.character = character;
    event.stateMask = stateMask;
    event.doit = true;
    control.notifyListeners(SWT.KeyDown, event);
  }
}
