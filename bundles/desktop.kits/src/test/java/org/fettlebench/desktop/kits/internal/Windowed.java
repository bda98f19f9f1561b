package org.fettlebench.desktop.kits.internal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.fettlebench.desktop.widgets.trial.TrialDesk;
import org.junit.jupiter.api.Assumptions;

/** Runs a test with a window of its own; leaves a picture of it when the test fails. */
final class Windowed {
  private Windowed() {}

  static void run(String name, Consumer<TrialDesk> test) {
    run(name, false, 1, test);
  }

  static void run(String name, boolean dark, double scale, Consumer<TrialDesk> test) {
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

  static Path folder() {
    try {
      return Files.createDirectories(Path.of("target", "pictures"));
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
