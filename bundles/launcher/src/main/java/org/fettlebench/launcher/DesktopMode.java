package org.fettlebench.launcher;

import java.time.Duration;
import org.slf4j.LoggerFactory;

/** Opens the window, or brings the one to the front that holds the data already. */
final class DesktopMode {
  private static final Duration PATIENCE = Duration.ofSeconds(10);

  private final DataDirectory data;
  private final Distribution suite;

  DesktopMode(DataDirectory data, Distribution suite) {
    this.data = data;
    this.suite = suite;
  }

  /** Must be called on the program's first thread: some platforms have windows only there. */
  int run(SuiteCalls.Call call) {
    Holding.Got got = new Holding(data, PATIENCE).get(SuiteLock.DESKTOP);
    if (got.suite().isPresent()) {
      return front(got.suite().get(), call);
    }
    return got.lock().orElseThrow().during(() -> open(call));
  }

  private int front(CallClient client, SuiteCalls.Call call) {
    try (client) {
      int status = client.front(call);
      call.out()
          .println(
              status == 0
                  ? "The suite is open already; its window has been brought to the front."
                  : "The suite is open already (data in %s).".formatted(data.path()));
      return status;
    }
  }

  private int open(SuiteCalls.Call call) {
    if (!Surroundings.here().hasScreen()) {
      throw new LaunchException(
          "There is no screen here (neither DISPLAY nor WAYLAND_DISPLAY is set)."
              + " The command line works without one: fettlebench --help");
    }
    RunningSuite running = new RunningSuite();
    new Thread(() -> running.start(data, suite), "boot").start();
    Shutdown.onSignal(running::close);
    try {
      return show(running, call);
    } finally {
      running.close();
    }
  }

  private int show(RunningSuite running, SuiteCalls.Call call) {
    Screen screen = Screen.open();
    try {
      if (Milestones.wanted()) {
        screen.measure();
      }
      return running.desktop().call();
    } catch (Exception | LinkageError e) {
      String said = said(running, e);
      call.err().println(said);
      if (!Milestones.wanted()) {
        screen.complain(said);
      }
      return Main.CANNOT_RUN;
    } finally {
      screen.close();
    }
  }

  private String said(RunningSuite running, Throwable cause) {
    running.awaitStart(); // until then, the log may not be open
    LoggerFactory.getLogger(DesktopMode.class).error("The window could not be shown", cause);
    String what = cause instanceof LaunchException ? cause.getMessage() : cause.toString();
    return what + "\nMore stands in the log: " + data.log();
  }
}
